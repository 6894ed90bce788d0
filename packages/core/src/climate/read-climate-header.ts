import type { Problem } from "../problems/types.ts";
import { HIGHEST_ALTITUDE, LOWEST_ALTITUDE } from "./climate-limits.ts";
import { climateProblem } from "./climate-problem.ts";
import { plainNumber } from "./plain-number.ts";
import type { TextLine } from "./text-lines.ts";

/** What the `#` lines of a climate table tell. */
export interface ClimateHeader {
  /** The lines without `#`, in order. */
  origin: string[];
  /** Degrees, north and east positive; null when not told. */
  latitude: number | null;
  longitude: number | null;
  /** [m]; null when not told. */
  altitude: number | null;
  problems: Problem[];
}

/**
 * Reads the `#` lines at the head of a climate table: all are kept as its origin, `latitude`, `longitude` and
 * `altitude` are understood (`# altitude: 25 m`).
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
      header.problems.push(climateProblem("climate-header-value", line.number, value.value!.trim(), { label }));
    } else {
      header[label] = number;
    }
  }
  return header;
}

type Label = "latitude" | "longitude" | "altitude";

const COMMENT_MARK = /^#+/;
const LABELLED_VALUE = /^(?<label>latitude|longitude|altitude)\s*:(?<value>.*)$/i;

const MOST_LATITUDE = 90;
const MOST_LONGITUDE = 180;

const readers: Record<Label, (text: string) => number | null> = {
  latitude: (text) => within(degrees(text, "N", "S"), -MOST_LATITUDE, MOST_LATITUDE),
  longitude: (text) => within(degrees(text, "E", "W"), -MOST_LONGITUDE, MOST_LONGITUDE),
  altitude: (text) => within(plainNumber(text.replace(/\s*m$/, "")), LOWEST_ALTITUDE, HIGHEST_ALTITUDE),
};

/** Signed degrees, or degrees with a letter (`0.449 W`); never both. */
function degrees(text: string, positive: string, negative: string): number | null {
  const letter = text.slice(-1).toUpperCase();
  const lettered = letter === positive || letter === negative;
  const number = plainNumber((lettered ? text.slice(0, -1) : text).trim().replace(/\s*°$/, ""));
  if (number === null || (lettered && number < 0)) return null;
  return letter === negative ? -number : number;
}

function within(value: number | null, least: number, greatest: number): number | null {
  return value !== null && value >= least && value <= greatest ? value : null;
}
