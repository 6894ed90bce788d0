import { CLIMATE_COLUMNS } from "../climate/read-climate.ts";
import { MONTH_NAMES, SECONDS_PER_DAY } from "../constants.ts";
import { formatNumber, plainDigits } from "../quantities/format-quantity.ts";
import { requireObject, requireText } from "../require.ts";
import { TEMPERATURE_DECIMALS } from "./monthly-means.ts";
import type { RecordMonths } from "./types.ts";

/** The place and the source of its records; values that are null are left out of the table. */
export interface RecordsPlace {
  place: string;
  country: string | null;
  /** North and east positive [°]. */
  latitude: number | null;
  /** [°] */
  longitude: number | null;
  /** [m] */
  altitude: number | null;
  origin: string | null;
  terms: string | null;
  acknowledgement: string | null;
}

/**
 * Writes a climate table from weather records: the place, what was read and what left out, and twelve months.
 *
 * @param records - the months, with all that was done to the records
 * @param place - the place where the records were taken, and their source
 * @returns the table, with an end to each line; `readClimate` reads it
 * @throws TypeError when the months or the place are of the wrong kind
 */
export function climateTable(records: RecordMonths, place: RecordsPlace): string {
  requireObject(records, "records", ["months", "firstDay"]);
  requireObject(place, "place", ["place", "latitude", "longitude", "altitude"]);
  requireText(place.place, "place.place");
  const header = [...placeLines(place), ...recordLines(records), ...sourceLines(place)];
  const rows = records.months.map((month, index) => {
    const temperature = month.temperature.toFixed(TEMPERATURE_DECIMALS);
    const humidity = (month.relativeHumidity * 100).toFixed(HUMIDITY_DECIMALS);
    return [MONTH_NAMES[index]!, temperature, humidity].join(",");
  });
  const comments = header.map(([label, value]) => `# ${label}: ${onOneLine(value)}`);
  return [...comments, CLIMATE_COLUMNS.required.join(","), ...rows, ""].join("\n");
}

type HeaderLine = [label: string, value: string];

/** Decimals of a relative humidity in per cent. */
const HUMIDITY_DECIMALS = 1;

function placeLines(place: RecordsPlace): HeaderLine[] {
  return told([
    ["place", place.place],
    ["country", place.country],
    ["latitude", place.latitude === null ? null : String(place.latitude)],
    ["longitude", place.longitude === null ? null : String(place.longitude)],
    ["altitude", place.altitude === null ? null : `${place.altitude} m`],
  ]);
}

function recordLines(records: RecordMonths): HeaderLine[] {
  const { rows, used, missing, repeated, contradicting, countedAsSaturated } = records;
  const incomplete = shortMonths(records);
  const held = MONTH_NAMES.filter((_, month) => records.months[month]!.heldAtSaturation);
  return told([
    ["period", periodInWords(records)],
    ["columns", records.columnsRead],
    ["records", `${rows} rows, ${used} readings used, ${missing} missing (${share(missing, used + missing)})`],
    ["missing by month", incomplete.length === 0 ? null : incomplete.join(", ")],
    ["rows of a time already read", repeated === 0 ? null : `${repeated}, with the same values`],
    ["contradicting rows", contradicting === 0 ? null : `${contradicting}, left out: the first of a time counts`],
    ["readings over saturation", countedAsSaturated === 0 ? null : `${countedAsSaturated}, counted as saturated`],
    ["held at 100 %", held.length === 0 ? null : `${held.join(", ")}: records in frost are over liquid water`],
    [
      "means",
      "temperature of the readings; relative humidity is their mean vapour pressure over saturation at that mean",
    ],
  ]);
}

function sourceLines(place: RecordsPlace): HeaderLine[] {
  return told([
    ["origin", place.origin],
    ["terms", place.terms],
    ["acknowledgement", place.acknowledgement],
  ]);
}

function periodInWords({ firstDay, lastDay, typicalYear, interval }: RecordMonths): string {
  const readings = `a reading every ${intervalInWords(interval)}`;
  if (!typicalYear) return `${firstDay} to ${lastDay}, ${readings}`;
  const named = firstDay.length > MONTH_AND_DAY_LENGTH;
  const years = named
    ? `months from different years, ${firstDay.slice(0, 4)} to ${lastDay.slice(0, 4)}`
    : "no year named";
  return `one typical year (${years}), ${readings}`;
}

const MONTH_AND_DAY_LENGTH = 5;

function intervalInWords(seconds: number): string {
  if (seconds === SECONDS_PER_DAY) return "day";
  if (seconds === SECONDS_PER_HOUR) return "hour";
  return seconds % SECONDS_PER_HOUR === 0
    ? `${seconds / SECONDS_PER_HOUR} hours`
    : `${plainDigits(seconds / 60)} minutes`;
}

const SECONDS_PER_HOUR = 3600;

function shortMonths(records: RecordMonths): string[] {
  return MONTH_NAMES.flatMap((name, index) => {
    const { used, expected } = records.months[index]!;
    return used < expected ? [`${name} ${expected - used} of ${expected} (${share(expected - used, expected)})`] : [];
  });
}

function share(part: number, whole: number): string {
  return `${formatNumber((100 * part) / whole, 1)} %`;
}

function told(lines: readonly [string, string | null][]): HeaderLine[] {
  return lines.filter((line): line is HeaderLine => line[1] !== null);
}

/** Keeps a header line on one line, even if its text has line ends. */
function onOneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
