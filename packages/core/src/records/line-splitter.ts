import { linesOf, type TextLine } from "../tables/text-lines.ts";

/** Splits a text that arrives in pieces into numbered lines. */
export interface LineSplitter {
  /** Takes a piece and returns the lines that it completes. It may end anywhere, even between CR and LF. */
  take(piece: string): TextLine[];
  /** Returns what is left after the last piece: the last line, if it has no line end. */
  finish(): TextLine[];
  /** Number of characters in the line that is not yet complete. */
  waiting(): number;
}

/**
 * Makes a splitter.
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
