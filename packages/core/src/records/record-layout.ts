import { splitLines } from "../tables/split-lines.ts";
import type { TextLine } from "../tables/text-lines.ts";
import { type ColumnFault, chooseColumns, type RecordColumns } from "./choose-columns.ts";
import { LINES_BEFORE_HEADINGS } from "./record-limits.ts";
import type { RecordOptions } from "./types.ts";

/** The layout of a file of records. */
export interface RecordLayout {
  delimiter: string;
  headingLine: number;
  headings: readonly string[];
  columns: RecordColumns;
}

/** The line that is most like headings, and why it is not accepted. */
export interface NoLayout {
  line: TextLine;
  faults: readonly ColumnFault[];
}

/**
 * Finds the headings of weather records and the delimiter between cells; lines above them are skipped.
 *
 * @param lines - the file's first lines, without empty lines and comments; at least one
 * @param options - columns by name, and units that the headings leave out
 * @returns the layout, or the line that comes nearest, with its faults
 */
export function findLayout(lines: readonly TextLine[], options: RecordOptions): RecordLayout | NoLayout {
  let nearest: NoLayout | null = null;
  let mostCells = 0;
  for (const [index, line] of lines.slice(0, LINES_BEFORE_HEADINGS).entries()) {
    for (const delimiter of DELIMITERS) {
      const [headings] = splitLines([line], delimiter);
      if (headings === null || headings === undefined) continue;
      const columns = chooseColumns(headings, options);
      if (!Array.isArray(columns)) {
        const found = { delimiter, headingLine: line.number, headings, columns };
        return withUnitsBelow(found, lines[index + 1], options) ?? found;
      }
      const nearer = nearest === null || columns.length < nearest.faults.length;
      const wider = columns.length === nearest?.faults.length && headings.length > mostCells;
      if (nearer || wider) {
        nearest = { line, faults: columns };
        mostCells = headings.length;
      }
    }
  }
  return nearest ?? { line: lines[0]!, faults: [] };
}

/** The layout with units from a second line of headings, which has no digits; null if there is no such line. */
function withUnitsBelow(
  { delimiter, headings }: RecordLayout,
  below: TextLine | undefined,
  options: RecordOptions,
): RecordLayout | null {
  if (below === undefined || /\d/.test(below.text)) return null;
  const [units] = splitLines([below], delimiter);
  if (units === null || units === undefined || units.length > headings.length) return null;
  const both = headings.map((heading, index) => {
    const unit = (units[index] ?? "").replace(/[()[\]]/g, "").trim();
    return unit === "" || /[([]/.test(heading) ? heading : `${heading} (${unit})`;
  });
  const columns = chooseColumns(both, options);
  return Array.isArray(columns) ? null : { delimiter, headingLine: below.number, headings: both, columns };
}

/** Delimiters that are tried. */
const DELIMITERS = [",", ";", "\t", "|"];
