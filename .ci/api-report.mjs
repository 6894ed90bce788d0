/**
 * Writes the signatures of everything that @warmside/core gives to the world into packages/core/api.md, so that a change
 * of the public surface shows in review. `--print` writes them to standard output instead (a test compares).
 */
import { spawnSync } from "node:child_process";
import { existsSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript-5";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, "packages/core/dist");
compile();
const report = reportOn(...["index", "calculation", "formulas", "field"].map((entry) => join(folder, `${entry}.d.ts`)));
if (process.argv.includes("--print")) process.stdout.write(report);
else writeFileSync(join(root, "packages/core/api.md"), report);

/** Declarations as the package carries them, made by the workspace's own compiler. */
function compile() {
  const force = existsSync(join(folder, "index.d.ts")) ? [] : ["--force"];
  const words = [join(root, "node_modules/typescript/bin/tsc"), "-b", ...force, join(root, "packages/core")];
  const done = spawnSync(process.execPath, words, { encoding: "utf8" });
  if (done.status !== 0) throw new Error(`the core does not compile:\n${done.stdout}${done.stderr}`);
}

function reportOn(whole, calculation, formulas, field) {
  const options = { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext, types: [] };
  const program = ts.createProgram([whole, calculation, formulas, field], options);
  const checker = program.getTypeChecker();
  const exportsOf = (file) =>
    checker
      .getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(file)))
      .map((symbol) => behind(symbol, checker))
      .sort(byName);
  const inWhole = exportsOf(whole);
  const inCalculation = exportsOf(calculation);
  const inFormulas = exportsOf(formulas);
  const inField = exportsOf(field);
  const known = [...new Set([...inWhole, ...inCalculation, ...inFormulas, ...inField])];
  const named = typesNamedBy(known, checker).sort(byName);
  return `# Public names of @warmside/core

Written by \`node .ci/api-report.mjs\` from the compiler's declarations; a test compares it with the sources. A change here is
a change for everyone who builds on the package: review it as such, and tell it in the changelog.

## @warmside/core

${inFence(inWhole, checker)}

## @warmside/core/calculation

The same declarations under the same names: ${inCalculation.map(({ name }) => `\`${name}\``).join(", ")}.
${onlyIn(inCalculation, inWhole, checker)}
## @warmside/core/formulas

${inFence(inFormulas, checker)}

## @warmside/core/field

${inFence(inField, checker)}

## Types that these name without giving them a public name

${inFence(named, checker)}
`;
}

/** The declaration behind a re-exported name. */
function behind(symbol, checker) {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

function onlyIn(some, others, checker) {
  const only = some.filter((symbol) => !others.includes(symbol));
  return only.length === 0 ? "" : `\nOnly here:\n\n${inFence(only, checker)}\n`;
}

/** All types of the package that the declarations refer to, directly or indirectly. */
function typesNamedBy(symbols, checker) {
  const seen = new Set(symbols);
  const found = [];
  const visit = (node) => {
    if (ts.isIdentifier(node)) {
      const symbol = checker.getSymbolAtLocation(node);
      if (symbol !== undefined) take(behind(symbol, checker));
    }
    ts.forEachChild(node, visit);
  };
  const take = (symbol) => {
    if (seen.has(symbol) || !isOwnDeclaration(symbol)) return;
    seen.add(symbol);
    found.push(symbol);
    symbol.declarations.forEach(visit);
  };
  for (const symbol of symbols) if (!isKeyOfTable(symbol)) symbol.declarations?.forEach(visit);
  return found;
}

/** A type that is the keys of a table: it is printed as what they are, and the table is no part of it. */
function isKeyOfTable({ declarations: [declaration] = [] }) {
  return (
    declaration !== undefined &&
    ts.isTypeAliasDeclaration(declaration) &&
    ts.isTypeOperatorNode(declaration.type) &&
    ts.isTypeQueryNode(declaration.type.type)
  );
}

/** A type, or a value whose type is asked for, that stands by itself in a file of the package. */
function isOwnDeclaration(symbol) {
  const [declaration] = symbol.declarations ?? [];
  if (declaration === undefined || !declaration.getSourceFile().fileName.startsWith(folder.replaceAll("\\", "/")))
    return false;
  return (
    statementOf(declaration).parent?.kind === ts.SyntaxKind.SourceFile && !ts.isTypeParameterDeclaration(declaration)
  );
}

/** The statement that declares: for a constant the whole `const`. */
function statementOf(declaration) {
  return ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration;
}

function inFence(symbols, checker) {
  const printer = ts.createPrinter({ removeComments: true });
  const texts = symbols.flatMap((symbol) =>
    symbol.declarations.map((declaration) => {
      if (isKeyOfTable(symbol)) return `type ${symbol.name} = ${keysOf(symbol, checker)};`;
      const statement = statementOf(declaration);
      const text = printer.printNode(ts.EmitHint.Unspecified, statement, statement.getSourceFile());
      return text.replace(/^export /, "").replace(/^declare /, "");
    }),
  );
  return ["```ts", ...texts, "```"].join("\n");
}

function keysOf(symbol, checker) {
  const type = checker.getDeclaredTypeOfSymbol(symbol);
  const keys = (type.types ?? [type]).map(({ value }) => JSON.stringify(value));
  return keys.sort().join(" | ");
}

function byName(one, other) {
  return one.name < other.name ? -1 : one.name > other.name ? 1 : 0;
}
