import { isJson } from "./parsed.ts";
import type { Entry } from "./rearrange.ts";
import { endOfLine, lineBreakOf } from "./set-value.ts";
import { written } from "./written.ts";

/** An entry's lines with the comments that belong to it, and the blank lines before it, which keep their place. */
interface Block {
  blank: string;
  lines: string;
}

/**
 * A list of one entry a line or more, rearranged line by line. Comments above an entry and deeper ones below it go with
 * it; blank lines stay where they are.
 */
export function rearrangeLines(
  text: string,
  listStart: number,
  extents: readonly { from: number; to: number }[],
  entries: readonly Entry[],
): string | null {
  if (extents.length === 0 || entries.length === 0) return null;
  const lineBreak = lineBreakOf(text);
  const firstDash = text.lastIndexOf("-", extents[0]!.from);
  const dashLine = text.lastIndexOf("\n", firstDash - 1) + 1;
  const indent = text.slice(dashLine, firstDash);
  if (indent.trim() !== "") return null;
  const begins = withCommentsAbove(text, Math.min(listStart, dashLine), indent.length);
  const ends = extents.map(({ to }, index) => endOfBlock(text, to, extents[index + 1]?.from ?? null, indent.length));
  const blocks = ends.map((end, index): Block => {
    const from = index === 0 ? begins : afterBreak(text, ends[index - 1]!);
    const blank = /^(?:[ \t]*\r?\n)*/.exec(text.slice(from, end))![0];
    return { blank, lines: text.slice(from + blank.length, end) };
  });
  const made = entries.map((entry, index) => {
    const blank = blocks[index]?.blank ?? "";
    if (typeof entry === "number") return blank + blocks[entry]!.lines;
    return `${blank}${indent}- ${written(entry, isJson(text))}`;
  });
  return text.slice(0, begins) + made.join(lineBreak) + text.slice(ends.at(-1)!);
}

/** Where the comments right above the first entry begin, if they are as deep as it. */
function withCommentsAbove(text: string, start: number, depth: number): number {
  let begins = start;
  while (begins > 0) {
    const above = text.lastIndexOf("\n", begins - 2) + 1;
    const line = text.slice(above, begins);
    const blanks = /^[ \t]*(?=#)/.exec(line)?.[0];
    if (blanks === undefined || blanks.length < depth || (depth === 0 && above === 0)) break;
    begins = above;
  }
  return begins;
}

/** Where an entry's lines end: after the comments below it that are deeper than its dash, before the next entry's. */
function endOfBlock(text: string, to: number, next: number | null, depth: number): number {
  let end = endOfLine(text, to);
  for (let from = afterBreak(text, end); from < text.length && (next === null || from < next); ) {
    const lineEnd = endOfLine(text, from);
    const line = text.slice(from, lineEnd);
    const blanks = /^[ \t]*(?=#)/.exec(line)?.[0];
    if (blanks === undefined && line.trim() !== "") break;
    if (blanks !== undefined && blanks.length <= depth) break;
    if (blanks !== undefined) end = lineEnd;
    if (lineEnd === text.length) break;
    from = afterBreak(text, lineEnd);
  }
  return end;
}

function afterBreak(text: string, end: number): number {
  const at = text.indexOf("\n", end);
  return at === -1 ? text.length : at + 1;
}
