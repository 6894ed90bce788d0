import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import ts from "typescript-5";

/** The folder of the core's sources. */
export const CORE: string = join(import.meta.dirname, "../../packages/core/src");

/** One import or re-export of a source file. */
export interface Import {
  /** As written: "../air/dew-point.ts" or a package. */
  specifier: string;
  /** Path below the core's sources; null for a package. */
  target: string | null;
  typeOnly: boolean;
}

export interface CoreSource {
  /** Path below the core's sources, with forward slashes. */
  path: string;
  text: string;
  tree: ts.SourceFile;
  imports: Import[];
}

/** Every source file of the core, read and parsed. */
export function coreSources(): CoreSource[] {
  return readdirSync(CORE, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .sort()
    .map((path) => {
      const text = readFileSync(join(CORE, path), "utf8");
      return sourceOf(path.replaceAll("\\", "/"), text);
    });
}

/** A source file from its text. */
export function sourceOf(path: string, text: string): CoreSource {
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  return { path, text, tree, imports: importsOf(path, tree) };
}

/** The stage a path belongs to: its folder, or its own name at the top. */
export function stageOf(path: string): string {
  return path.split("/")[0]!;
}

function importsOf(path: string, tree: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const add = (specifier: string, typeOnly: boolean): void => {
    const target = specifier.startsWith(".")
      ? relative(CORE, join(CORE, dirname(path), specifier)).replaceAll("\\", "/")
      : null;
    found.push({ specifier, target, typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier !== undefined) {
      add((node.moduleSpecifier as ts.StringLiteral).text, isTypeOnly(node));
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      add((node.argument.literal as ts.StringLiteral).text, true);
    } else if (ts.isCallExpression(node) && isLoader(node.expression)) {
      const [argument] = node.arguments;
      add(argument !== undefined && ts.isStringLiteralLike(argument) ? argument.text : "not a plain text", false);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** `import(…)` or `require(…)`. */
function isLoader(callee: ts.Expression): boolean {
  return callee.kind === ts.SyntaxKind.ImportKeyword || (ts.isIdentifier(callee) && callee.text === "require");
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) {
    const names =
      node.exportClause !== undefined && ts.isNamedExports(node.exportClause) ? node.exportClause.elements : null;
    return node.isTypeOnly || (names?.every((name) => name.isTypeOnly) ?? false);
  }
  const clause = node.importClause;
  if (clause === undefined) return false;
  if (clause.isTypeOnly) return true;
  const names = clause.namedBindings;
  return (
    clause.name === undefined &&
    names !== undefined &&
    ts.isNamedImports(names) &&
    names.elements.every((name) => name.isTypeOnly)
  );
}
