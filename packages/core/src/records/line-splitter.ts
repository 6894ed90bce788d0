import { linesOf, type TextLine } from "../tables/text-lines.ts";

/** Cuts a text that comes in pieces into numbered lines. */
export interface LineSplitter {
  /** The lines that the piece completes; it may end anywhere, between CR and LF too. */
  take(piece: string): TextLine[];
  /** What is left after the last piece: the last line, when no line end follows it. */
  finish(): TextLine[];
  /** Characters of the line that is not complete yet. */
  waiting(): number;
}

/**
 * A splitter with nothing in it.
 *
 * @returns the splitter; lines are numbered from 1
 */
export function createLineSplitter(): LineSplitter {
  let rest = "";
  let linesBefore = 0;
  const numbered = (lines: readonly TextLine[]): TextLine[] => {
    const shifted = lines.map(({ number, text }) => ({ number: number + linesBefore, text }));
    linesBefore += lines.length;
    return shifted;
  };
  return {
    take(piece): TextLine[] {
      const text = rest + piece;
      const halfLineEnd = text.endsWith("\r") ? "\r" : "";
      const lines = linesOf(halfLineEnd === "" ? text : text.slice(0, -1));
      rest = lines.pop()!.text + halfLineEnd;
      return numbered(lines);
    },
    finish: () => numbered(linesOf(rest)).filter(({ text }) => text !== ""),
    waiting: () => rest.length,
  };
}
