import ts from "typescript-5";
import type { CoreSource } from "./core-sources.ts";

/** An example of a doc comment: `EXPRESSION // VALUE`. */
export interface Example {
  expression: string;
  value: string;
}

export interface ExportedFunction {
  path: string;
  name: string;
  parameters: { name: string; type: string }[];
  returns: string;
  /** The doc comment as written; null without. */
  comment: string | null;
  examples: Example[];
}

/** Every exported function of a source file, arrow functions too, with its doc comment. */
export function exportedFunctions({ path, tree }: CoreSource): ExportedFunction[] {
  return tree.statements.flatMap((statement) => {
    if (!isExported(statement)) return [];
    if (ts.isFunctionDeclaration(statement))
      return [describeFunction(path, statement.name!.text, statement, statement)];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.flatMap(({ name, initializer }) =>
      initializer !== undefined && ts.isArrowFunction(initializer) && ts.isIdentifier(name)
        ? [describeFunction(path, name.text, initializer, statement)]
        : [],
    );
  });
}

function describeFunction(
  path: string,
  name: string,
  node: ts.FunctionDeclaration | ts.ArrowFunction,
  holder: ts.Node,
): ExportedFunction {
  const comment = docComment(holder);
  return {
    path,
    name,
    parameters: node.parameters.map((parameter) => ({
      name: parameter.name.getText(),
      type: parameter.type?.getText() ?? (parameter.initializer === undefined ? "" : "number"),
    })),
    returns: node.type?.getText() ?? "",
    comment,
    examples: comment === null ? [] : examplesOf(comment),
  };
}

function isExported(node: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}

/** The doc comment right before a node, without its stars. */
function docComment(node: ts.Node): string | null {
  const text = node.getSourceFile().text;
  const ranges = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  const last = ranges.at(-1);
  if (last === undefined) return null;
  const written = text.slice(last.pos, last.end);
  if (!written.startsWith("/**")) return null;
  return written
    .replace(/^\/\*\*/, "")
    .replace(/\*\/$/, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .trim();
}

/** The examples of a doc comment; an `@example` without a value gives an empty one, which no value equals. */
export function examplesOf(comment: string): Example[] {
  return [...comment.matchAll(/^@example\s+(.*)$/gm)].map(([, line]) => {
    const at = line!.lastIndexOf(" // ");
    return at < 0
      ? { expression: line!, value: "" }
      : { expression: line!.slice(0, at), value: line!.slice(at + 4).trim() };
  });
}

/** A parameter of this name counts digits and has no unit. */
const DIGITS = "decimals";
const UNIT = /\[[^\]\n]+\]/;
const isNumber = (type: string): boolean =>
  /^(readonly )?(number|Float64Array)(\[\])?( \| null| \| undefined)?$/.test(type);

/** What a helper's doc comment lacks: it must be there, and name the unit of a number that it gives. */
export function faultsOfHelper(each: ExportedFunction): string[] {
  if (each.comment === null || each.comment === "") return ["no doc comment"];
  return isNumber(each.returns) && !UNIT.test(each.comment) ? ["no unit in square brackets"] : [];
}

/**
 * What the doc comment of a public function lacks of the house's form. A source is asked for where there is a formula;
 * reading and writing of text has none.
 */
export function faultsOfPublic(each: ExportedFunction, hasFormulas: boolean): string[] {
  const { comment, parameters, returns } = each;
  if (comment === null || comment === "") return ["no doc comment"];
  const faults: string[] = [];
  const [summary = ""] = comment.split("\n");
  if (summary.startsWith("@") || summary.length < 10) faults.push("no line that tells what it gives");
  const tags = comment.split(/\n(?=@|Source:)/);
  for (const { name, type } of parameters) {
    const tag = tags.find((text) => new RegExp(`^@param ${name.replace("$", "\\$")} - `).test(text));
    if (tag === undefined && !name.startsWith("{")) faults.push(`no @param ${name}`);
    else if (tag !== undefined && isNumber(type) && name !== DIGITS && !UNIT.test(tag))
      faults.push(`no unit for ${name}`);
  }
  const returned = tags.find((text) => text.startsWith("@returns "));
  if (returns !== "void" && returned === undefined) faults.push("no @returns");
  if (isNumber(returns) && returned !== undefined && !UNIT.test(returned)) faults.push("no unit of the result");
  if (hasFormulas && !/^Source: ./m.test(comment)) faults.push("no source");
  const numbersOnly =
    parameters.length > 0 && parameters.every(({ type }) => isNumber(type) || /^"/.test(type)) && isNumber(returns);
  if (numbersOnly && each.examples.length === 0) faults.push("no @example");
  return faults;
}
