import { type Document, isAlias, isMap, isNode, isScalar, isSeq, type Node, type YAMLMap } from "yaml";
import { pathInWords } from "../../problems/path-in-words.ts";
import type { Problem, ProblemPath, Reading, TextPosition } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";
import type { WorkCount } from "../../problems/work-count.ts";
import type { FileData } from "./file-data.ts";
import { inBrief, valueOfScalar, writtenBetween } from "./scalars.ts";
import { pathKey, type SourceEntry, sourceMap } from "./source-map.ts";

/** Deepest nesting of lists and keys that is read; a project needs about ten. */
export const DEEPEST_NESTING = 24;

/** Most values that are read; a value repeated by an anchor counts each time. A project has some hundreds. */
export const MOST_VALUES = 50_000;

type PositionAt = (offset: number) => TextPosition;

/**
 * Turns a parsed document into plain data with positions. Only plain decimal digits become numbers; every name, and
 * anything else that YAML would take for a number, stays text as written.
 *
 * @param document - without errors
 * @param text - the text it was parsed from
 * @param positionAt - line and column of an offset
 * @param work - where the values visited are counted
 * @returns the data, or problems: keys that are repeated, forbidden or not text, unbounded nesting or repetition
 */
export function dataOfDocument(
  document: Document,
  text: string,
  positionAt: PositionAt,
  work: WorkCount,
): Reading<FileData> {
  const entries = new Map<string, SourceEntry>();
  const problems: Problem[] = [];
  let values = 0;

  const refuse = (
    code: ProblemCode,
    path: ProblemPath,
    position: TextPosition,
    received: string | null = null,
  ): null => {
    problems.push({ code, path, position, received, details: {} });
    return null;
  };
  const startOf = (node: unknown): TextPosition | null => {
    const range = (node as Node | null)?.range ?? null;
    return range === null ? null : positionAt(range[0]);
  };

  const anchored = new Map<string, unknown>();
  const visit = (node: unknown, path: ProblemPath, key: TextPosition | null, open: readonly unknown[]): unknown => {
    values += 1;
    work.steps += 1;
    if (values > MOST_VALUES || problems.length > MOST_PROBLEMS) return null;
    const position = startOf(node) ?? key ?? FIRST_LETTER;
    if (open.length > DEEPEST_NESTING) return refuse("nesting-too-deep", path, position);
    if (isAlias(node)) {
      const target = anchored.get(node.source);
      if (target === undefined || open.includes(target))
        return refuse("yaml-anchor", path, position, `*${node.source}`);
      return visit(target, path, key, [...open, node]);
    }
    // Anchors inside a repeated part were recorded when the part itself was visited.
    if (isNode(node) && hasAnchor(node) && !open.some(isAlias)) anchored.set(node.anchor, node);
    const written = isMap(node) || isSeq(node) ? inBrief(node) : writtenBetween(text, node);
    entries.set(pathKey(path), { key, value: position, written, keyBefore: null, keyAfter: null });
    if (isMap(node)) return visitMap(node, path, position, [...open, node]);
    if (isSeq(node)) return node.items.map((item, index) => visit(item, [...path, index], null, [...open, node]));
    return isScalar(node) ? valueOfScalar(node, path) : null;
  };

  const visitMap = (map: YAMLMap, path: ProblemPath, position: TextPosition, open: readonly unknown[]): unknown => {
    const data: Record<string, unknown> = {};
    let before: SourceEntry | null = null;
    let keyBefore: string | null = null;
    for (const { key, value } of map.items) {
      const keyPosition = startOf(key) ?? position;
      const name = nameOfKey(key);
      if (name === null) refuse("key-not-text", path, keyPosition);
      else if (FORBIDDEN_KEYS.has(name)) refuse("key-forbidden", path, keyPosition, name);
      else if (Object.hasOwn(data, name)) refuse("key-twice", path, keyPosition, name);
      else {
        data[name] = visit(value, [...path, name], keyPosition, open);
        const here = entries.get(pathKey([...path, name])) ?? null;
        if (here !== null) here.keyBefore = keyBefore;
        if (before !== null) before.keyAfter = name;
        [before, keyBefore] = [here, name];
      }
    }
    return data;
  };

  const data = visit(document.contents, [], null, []);
  if (values > MOST_VALUES) {
    problems.splice(0, problems.length, tooManyValues());
  }
  if (problems.length === 0) return { ok: true, value: { data, source: sourceMap(entries), work } };
  return { ok: false, problems: problems.map((problem) => withPlace(problem, data)) };
}

/** Reading stops after this many problems: the file is then not a project. */
const MOST_PROBLEMS = 200;

const FIRST_LETTER: TextPosition = { line: 1, column: 1 };

/** Names that every JavaScript object already has; as keys of the file they are refused. */
const FORBIDDEN_KEYS = new Set([...Object.getOwnPropertyNames(Object.prototype), "prototype"]);

function hasAnchor(node: Node): node is Node & { anchor: string } {
  return "anchor" in node && typeof node.anchor === "string";
}

function nameOfKey(node: unknown): string | null {
  if (!isScalar(node)) return null;
  return typeof node.value === "string" ? node.value : (node.source ?? null);
}

function tooManyValues(): Problem {
  return { code: "too-many-values", path: [], position: null, received: null, details: { limit: MOST_VALUES } };
}

function withPlace(problem: Problem, data: unknown): Problem {
  const path = problem.code === "nesting-too-deep" ? [] : problem.path;
  return { ...problem, path, details: { ...pathInWords(path, data), ...problem.details } };
}
