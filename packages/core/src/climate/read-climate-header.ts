import type { Problem } from "../problems/types.ts";
import { tableProblem } from "../tables/table-problem.ts";
import type { TextLine } from "../tables/text-lines.ts";
import { readAltitude, readDegrees } from "./degrees.ts";

/** The contents of the `#` lines of a climate table. */
export interface ClimateHeader {
  /** The lines without `#`, in order. */
  origin: string[];
  /** Degrees, north and east positive; null when not given. */
  latitude: number | null;
  longitude: number | null;
  /** [m]; null when not given. */
  altitude: number | null;
  problems: Problem[];
}

/**
 * Reads the `#` lines at the head of a climate table. All are kept as its origin; `latitude`, `longitude` and
 * `altitude` are also read as values (`# altitude: 25 m`).
 *
 * @param lines - the lines that begin with `#`
 * @returns the header with every problem found in it
 */
export function readClimateHeader(lines: readonly TextLine[]): ClimateHeader {
  const header: ClimateHeader = { origin: [], latitude: null, longitude: null, altitude: null, problems: [] };
  for (const line of lines) {
    const content = line.text.trim().replace(COMMENT_MARK, "").trim();
    if (content !== "") header.origin.push(content);
    const value = LABELLED_VALUE.exec(content)?.groups;
    if (value === undefined) continue;
    const label = value.label!.toLowerCase() as Label;
    const number = readers[label](value.value!.trim());
    if (number === null) {
      header.problems.push(tableProblem("climate-header-value", line.number, value.value!.trim(), { label }));
    } else {
      header[label] = number;
    }
  }
  return header;
}

type Label = "latitude" | "longitude" | "altitude";

const COMMENT_MARK = /^#+/;
const LABELLED_VALUE = /^(?<label>latitude|longitude|altitude)\s*:(?<value>.*)$/i;

const readers: Record<Label, (text: string) => number | null> = {
  latitude: (text) => readDegrees(text, "latitude"),
  longitude: (text) => readDegrees(text, "longitude"),
  altitude: readAltitude,
};
