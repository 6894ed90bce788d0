import { isMap, type Node, type Pair, type YAMLMap } from "yaml";
import { checked, dataAt } from "./checked.ts";
import { inBrackets, nodeAt, type Path } from "./parsed.ts";
import { endOfLine, endOfPair, splice } from "./set-value.ts";

/**
 * Takes a key with its value out of a project file and leaves every other byte as it is.
 *
 * @param text - the file
 * @param path - the key
 * @returns the text without it, the same text where there is no such key; null where it cannot be taken out
 */
export function removeKey(text: string, path: Path): string | null {
  const key = path.at(-1)!;
  const map = nodeAt(text, path.slice(0, -1));
  if (!isMap(map)) return text;
  const pairs = map.items as Pair<Node, Node | null>[];
  const at = pairs.findIndex((pair) => String(pair.key) === String(key));
  if (at === -1) return text;
  const after = inBrackets(map) ? outOfBrackets(text, pairs, at) : outOfLines(text, map, pairs, at);
  if (after === null) return null;
  return checked(text, after, (data) => {
    delete (dataAt(data, path.slice(0, -1)) as Record<string, unknown>)[key];
  });
}

function outOfBrackets(text: string, pairs: readonly Pair<Node, Node | null>[], at: number): string {
  const pair = pairs[at]!;
  const next = pairs[at + 1];
  if (at > 0) return splice(text, endOfPair(text, pairs[at - 1]!), endOfPair(text, pair), "");
  const end = next === undefined ? endOfPair(text, pair) : next.key.range![0];
  return splice(text, pair.key.range![0], end, "");
}

function outOfLines(text: string, map: YAMLMap, pairs: readonly Pair<Node, Node | null>[], at: number): string | null {
  if (map.items.length === 1) return null;
  const start = pairs[at]!.key.range![0];
  const next = pairs[at + 1];
  const lineStart = text.lastIndexOf("\n", start - 1) + 1;
  // The first key of an entry stands on the line of its dash: the next one moves up to it.
  if (text.slice(lineStart, start).trim() !== "") {
    return next === undefined ? null : splice(text, start, next.key.range![0], "");
  }
  const end = endOfLine(text, endOfPair(text, pairs[at]!));
  if (lineStart === 0) return splice(text, 0, text.indexOf("\n", end) + 1 || end, "");
  const from = text[lineStart - 2] === "\r" ? lineStart - 2 : lineStart - 1;
  return splice(text, from, end, "");
}
