import { type Document, isAlias, isMap, isScalar, isSeq, type Node, type Scalar } from "yaml";
import type { Problem, ProblemPath, Reading, TextPosition } from "../problems/types.ts";
import type { FileData } from "./file-data.ts";
import { pathKey, type SourceEntry, sourceMap } from "./source-map.ts";
import { isTextKey } from "./text-keys.ts";

/** Deepest nesting of lists and keys: a project needs about ten. */
export const DEEPEST_NESTING = 24;

/** Values read at most, those repeated through anchors counted each time: a project has some hundreds. */
export const MOST_VALUES = 50_000;

type PositionAt = (offset: number) => TextPosition;
type YamlNode = Node & { range?: readonly [number, number, number] | null; tag?: string; anchor?: string };

/**
 * Turns a parsed document into plain data with positions. Numbers stay numbers only in plain decimal digits;
 * anything else that YAML would take for a number, and every name, stays text as written.
 *
 * @param document - without errors
 * @param text - the text it was parsed from
 * @param positionAt - line and column of an offset
 * @returns the data, or problems: unknown tags, keys that are no text, nesting and repetition without end
 */
export function dataOfDocument(document: Document, text: string, positionAt: PositionAt): Reading<FileData> {
  const entries = new Map<string, SourceEntry>();
  const problems: Problem[] = [];
  let values = 0;

  const visit = (node: unknown, path: ProblemPath, key: TextPosition | null, open: readonly unknown[]): unknown => {
    values += 1;
    if (values > MOST_VALUES || problems.length > MOST_PROBLEMS) return null;
    const yamlNode = node as YamlNode | null;
    const range = yamlNode?.range ?? null;
    const position = range === null ? (key ?? { line: 1, column: 1 }) : positionAt(range[0]);
    const refuse = (code: string, received: string | null = null): null => {
      problems.push({ code, path, position, received, details: {} });
      return null;
    };
    const written = range === null ? "" : writtenBetween(text, range[0], range[1]);
    entries.set(pathKey(path), { key, value: position, written: isMap(node) || isSeq(node) ? inBrief(node) : written });
    if (open.length > DEEPEST_NESTING) return refuse("nesting-too-deep");
    if (isAlias(node)) {
      const target = node.resolve(document);
      if (target === undefined || open.includes(target)) return refuse("yaml-anchor", `*${node.source}`);
      return visit(target, path, key, [...open, node]);
    }
    if (yamlNode?.tag !== undefined && written.startsWith("!")) return refuse("yaml-tag", written);
    if (isSeq(node)) return node.items.map((item, index) => visit(item, [...path, index], null, [...open, node]));
    if (isScalar(node)) return valueOfScalar(node, path);
    if (!isMap(node)) return null;
    const data: Record<string, unknown> = {};
    for (const { key: keyNode, value } of node.items) {
      const keyRange = (keyNode as YamlNode).range ?? null;
      const keyPosition = keyRange === null ? position : positionAt(keyRange[0]);
      const name = nameOfKey(keyNode);
      if (name === null)
        problems.push({ code: "key-not-text", path, position: keyPosition, received: null, details: {} });
      else if (FORBIDDEN_KEYS.has(name)) {
        problems.push({ code: "key-forbidden", path, position: keyPosition, received: name, details: { key: name } });
      } else data[name] = visit(value, [...path, name], keyPosition, [...open, node]);
    }
    return data;
  };

  const data = visit(document.contents, [], null, []);
  if (values > MOST_VALUES)
    problems.push({
      code: "too-many-values",
      path: [],
      position: null,
      received: null,
      details: { limit: MOST_VALUES },
    });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { data, source: sourceMap(entries) } };
}

/** Enough to show that a file is no project. */
const MOST_PROBLEMS = 200;

/** Keys that mean something to the language this is written in. */
const FORBIDDEN_KEYS = new Set(["__proto__", "constructor", "prototype"]);

function nameOfKey(node: unknown): string | null {
  if (!isScalar(node)) return null;
  return typeof node.value === "string" ? node.value : (node.source ?? null);
}

function valueOfScalar(node: Scalar, path: ProblemPath): unknown {
  const { value, source } = node;
  if (value === null || typeof value === "string") return value;
  const written = source ?? String(value);
  if (isTextKey(path)) return written;
  if (typeof value === "number") return PLAIN_NUMBER.test(written) && Number.isFinite(value) ? value : written;
  return value;
}

const PLAIN_NUMBER = /^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/;

const LONGEST_WRITTEN = 80;

function writtenBetween(text: string, start: number, end: number): string {
  const written = text
    .slice(start, Math.min(end, start + LONGEST_WRITTEN * 2))
    .replace(/[\p{Cc}\s]+/gu, " ")
    .trim();
  return written.length <= LONGEST_WRITTEN ? written : `${written.slice(0, LONGEST_WRITTEN)}…`;
}

function inBrief(node: unknown): string {
  if (isSeq(node)) return node.items.length === 1 ? "a list of one" : `a list of ${node.items.length}`;
  return isMap(node) && node.items.length === 0 ? "nothing in braces" : "several keys";
}
