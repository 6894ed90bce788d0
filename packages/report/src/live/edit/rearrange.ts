import { isSeq, type Node, type YAMLSeq } from "yaml";
import { checked, dataAt, put } from "./checked.ts";
import { type Data, extentOf, inBrackets, nodeAt, type Path } from "./parsed.ts";
import { rearrangeBrackets } from "./rearrange-brackets.ts";
import { rearrangeLines } from "./rearrange-lines.ts";

/** What a list becomes: an entry that it had, by index from 0, or a new one as data. */
export type Entry = number | Exclude<Data, number>;

/**
 * Puts a list of a project file into another order, leaves entries out, brings new ones in. An entry takes its comments
 * with it; the blanks, line breaks and commas stay where they are.
 *
 * @param text - the file
 * @param path - the list
 * @param entries - what it becomes
 * @returns the text with the list rearranged; null where the way it is written does not let it be
 */
export function rearrange(text: string, path: Path, entries: readonly Entry[]): string | null {
  const list = nodeAt(text, path);
  if (!isSeq(list)) return null;
  const extents = list.items.map((item) => extentOf(text, item as Node));
  const after = inBrackets(list)
    ? rearrangeBrackets(text, extentOf(text, list), extents, entries)
    : rearrangeLines(text, startOf(text, list), extents, entries);
  if (after === null) return null;
  return checked(text, after, (data) => {
    const old = dataAt(data, path) as Data[];
    put(
      data,
      path,
      entries.map((entry) => (typeof entry === "number" ? old[entry]! : entry)),
    );
  });
}

/** Where the first line of a block list begins. */
function startOf(text: string, list: YAMLSeq): number {
  return text.lastIndexOf("\n", list.range![0] - 1) + 1;
}
