import { isCollection, isMap, isScalar, type Node, type Pair, type Scalar, type YAMLMap } from "yaml";
import { checked, put } from "./checked.ts";
import { type Data, extentOf, inBrackets, isJson, nodeAt, type Path, pairOf } from "./parsed.ts";
import { written, writtenKey } from "./written.ts";

/**
 * Sets one value of a project file and leaves every other byte as it is; makes the key, and the maps around it,
 * where they are missing.
 *
 * @param text - the file
 * @param path - where
 * @param value - what is to stand there
 * @returns the text with the value; null where the way it is written does not let it be set
 */
export function setValue(text: string, path: Path, value: Data): string | null {
  const there = deepestMap(text, path);
  if (there === null) return null;
  const { map, rest } = there;
  const pair = pairOf(map, rest[0]!);
  const nested = rest.slice(1).reduceRight<Data>((inner, key) => ({ [key]: inner }), value);
  const after =
    pair === undefined
      ? addPair(text, map, String(rest[0]), written(nested, isJson(text)))
      : replaceValue(text, pair, nested);
  return after === null ? null : checked(text, after, (data) => put(data, path, value));
}

/** The innermost map on the way to a value, and the keys from there on. */
function deepestMap(text: string, path: Path): { map: YAMLMap; rest: Path } | null {
  for (let depth = path.length - 1; depth >= 0; depth -= 1) {
    const node = nodeAt(text, path.slice(0, depth));
    if (isMap(node)) return { map: node, rest: path.slice(depth) };
    if (node !== null && !isEmpty(node)) return null;
  }
  return null;
}

function isEmpty(node: Node): boolean {
  return isScalar(node) && node.value === null;
}

function replaceValue(text: string, { key, value: node }: Pair<Node, Node | null>, value: Data): string | null {
  const asJson = isJson(text);
  if (node !== null && isScalar(node) && !isEmpty(node)) {
    const { from, to } = extentOf(text, node);
    return splice(text, from, to, inTheSameMarks(node, value) ?? written(value, asJson));
  }
  if (node !== null && isCollection(node) && node.flow) {
    const { from, to } = extentOf(text, node);
    return splice(text, from, to, written(value, asJson));
  }
  const colon = text.indexOf(":", key.range![1]);
  if (colon === -1) return null;
  const to = node === null || isEmpty(node) ? colon + 1 : extentOf(text, node).to;
  return splice(text, colon + 1, to, ` ${written(value, asJson)}`);
}

/** Words that stood in quotation marks keep them, so that setting back gives the same bytes. */
function inTheSameMarks(node: Scalar, value: Data): string | null {
  if (typeof value !== "string") return null;
  if (node.type === "QUOTE_DOUBLE") return JSON.stringify(value);
  if (node.type === "QUOTE_SINGLE" && !value.includes("\n")) return `'${value.replaceAll("'", "''")}'`;
  return null;
}

function addPair(text: string, map: YAMLMap, key: string, value: string): string | null {
  const pair = `${writtenKey(key, isJson(text))}: ${value}`;
  if (map.items.length === 0) {
    const { from, to } = extentOf(text, map);
    return inBrackets(map) ? splice(text, from, to, `{ ${pair} }`) : null;
  }
  const pairs = map.items as Pair<Node, Node | null>[];
  if (inBrackets(map)) {
    const end = endOfPair(text, pairs.at(-1)!);
    return splice(text, end, end, `, ${pair}`);
  }
  const at = endOfLine(text, endOfPair(text, pairs[placeOfNew(text, pairs)]!));
  const first = pairs[0]!.key.range![0];
  const indent = " ".repeat(first - (text.lastIndexOf("\n", first - 1) + 1));
  return splice(text, at, at, `${lineBreakOf(text)}${indent}${pair}`);
}

/** A new key comes after the last short one: behind a list of many lines nobody would look for it. */
function placeOfNew(text: string, pairs: readonly Pair<Node, Node | null>[]): number {
  const firstLong = pairs.findIndex(({ key, value }) => {
    return (
      value !== null && isCollection(value) && !value.flow && text.slice(key.range![0], value.range![0]).includes("\n")
    );
  });
  return firstLong > 0 ? firstLong - 1 : pairs.length - 1;
}

/** Where a pair ends, its value's blanks and comments left out. */
export function endOfPair(text: string, { key, value }: Pair<Node, Node | null>): number {
  const end = value === null ? key.range![1] : extentOf(text, value).to;
  if (value !== null && !isEmpty(value)) return end;
  const colon = text.indexOf(":", key.range![1]);
  return colon === -1 ? end : colon + 1;
}

/** Where the line of an offset ends, in front of its break. */
export function endOfLine(text: string, offset: number): number {
  const at = text.indexOf("\n", offset);
  if (at === -1) return text.length;
  return text[at - 1] === "\r" && at > offset ? at - 1 : at;
}

/** How lines end in a file. */
export function lineBreakOf(text: string): string {
  return /\r?\n/.exec(text)?.[0] ?? "\n";
}

/** A text with a stretch of it exchanged. */
export function splice(text: string, from: number, to: number, by: string): string {
  return text.slice(0, from) + by + text.slice(to);
}
