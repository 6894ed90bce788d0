import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";

/** A step list into the file's data, such as `["build-ups", 0, "layers", 2, "thickness"]`. */
export type Path = readonly (string | number)[];

/** What can be written into a project file. */
export type Data = string | number | boolean | { readonly [key: string]: Data } | readonly Data[];

/**
 * A text as the yaml package sees it, read as the project reader reads it. The last few are kept: each edit is read
 * again to be checked, and that reading is what the next edit starts from.
 *
 * @param text - YAML or JSON
 * @returns the document with the place of every node
 */
export function parsed(text: string): Document.Parsed {
  const known = KEPT.get(text);
  if (known !== undefined) return known;
  const document = parseDocument(text, { version: "1.2", schema: "core", uniqueKeys: false, prettyErrors: false });
  if (KEPT.size >= MOST_KEPT) KEPT.delete(KEPT.keys().next().value!);
  KEPT.set(text, document);
  return document;
}

/** The plain data of a text; undefined where the text is no YAML. */
export function dataOf(text: string): unknown {
  const document = parsed(text);
  return document.errors.length > 0 ? undefined : document.toJS();
}

/** The node at a path; null where there is none. */
export function nodeAt(text: string, path: Path): Node | null {
  let node: unknown = parsed(text).contents;
  for (const key of path) {
    if (isMap(node)) node = pairOf(node, key)?.value;
    else if (isSeq(node) && typeof key === "number") node = node.items[key];
    else return null;
  }
  return (node as Node | null | undefined) ?? null;
}

/** The pair of a map under a key, read as words. */
export function pairOf(map: YAMLMap, key: string | number): Pair<Node, Node | null> | undefined {
  const { items } = map as YAMLMap<Node, Node | null>;
  return items.find((pair) => isScalar(pair.key) && String(pair.key.value) === String(key));
}

/** Offsets of a node: where it begins, and where it ends without blanks and comments. */
export function extentOf(text: string, node: Node): { from: number; to: number } {
  const [from, to] = node.range!;
  return { from, to: from + text.slice(from, to).trimEnd().length };
}

/** Whether a map or list is written in brackets. */
export function inBrackets(node: YAMLMap | YAMLSeq): boolean {
  return node.flow === true;
}

/** Whether a file is JSON, so that what is added has to be JSON too. */
export function isJson(text: string): boolean {
  return /^\s*[{[]/.test(text);
}

const KEPT = new Map<string, Document.Parsed>();
const MOST_KEPT = 4;
