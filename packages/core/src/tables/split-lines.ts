import { parse } from "#csv-parse";
import type { TextLine } from "./text-lines.ts";

/**
 * Splits lines into cells, each line by itself: a quoted cell never continues on the next line.
 *
 * @param lines - lines that are not empty
 * @param delimiter - one character between cells
 * @returns the cells of each line, trimmed; null for a line whose quotation marks do not close
 */
export function splitLines(lines: readonly TextLine[], delimiter: string): (string[] | null)[] {
  const together = tryParse(lines.map((line) => line.text).join("\n"), delimiter);
  if (together !== null && together.length === lines.length) return together;
  return lines.map((line) => {
    const rows = tryParse(line.text, delimiter);
    return rows !== null && rows.length === 1 ? rows[0]! : null;
  });
}

function tryParse(text: string, delimiter: string): string[][] | null {
  try {
    return parse(text, { delimiter, trim: true, relax_column_count: true, record_delimiter: "\n" });
  } catch {
    return null;
  }
}
