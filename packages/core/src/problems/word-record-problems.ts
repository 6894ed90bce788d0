import { alsoOn, grouped, hasMoreCells, unitSlip } from "./climate-words.ts";
import { type Facts, inSpeech, type Wordings } from "./wording.ts";

/** Problems of weather records. */
export const RECORD_WORDINGS = {
  "records-empty": () => ({
    says: "the file holds no weather records",
    expected: RECORD_SHAPE,
    likelySlip: "The download is incomplete",
  }),
  "records-binary": () => ({
    says: "these are not weather records: the file is not text saved as UTF-8",
    expected: "a CSV file saved as UTF-8",
    likelySlip: "This is a spreadsheet or an archive: take the CSV file from it",
  }),
  "records-line-too-long": () => ({
    says: "a line is too long for a row of weather records",
    expected: RECORD_SHAPE,
    likelySlip: "This is another kind of file",
  }),
  "records-column-missing": ({ text, list }) => ({
    says: `no heading names ${ROLES[text("role")] ?? text("role")}; the headings are ${inSpeech(quoted(list("headings")), "and")}`,
    expected: RECORD_SHAPE,
    likelySlip: "The heading is unusual, or the cells are not separated by commas, semicolons, tabs or bars",
    write: `--column "${NAMED_ROLES[text("role")] ?? text("role")}=HEADING"`,
  }),
  "records-column-named-missing": ({ text, list }) => ({
    says: `there is no heading “${text("named")}”; the headings are ${inSpeech(quoted(list("headings")), "and")}`,
    expected: `the heading of the column that holds the ${text("role")}`,
  }),
  "records-column-ambiguous": ({ text, list }) => ({
    says: `${inSpeech(quoted(list("choices")), "and")} could each be ${ROLES[text("role")] ?? `the ${text("role")}`}`,
    expected: "one column for each quantity",
    write: list("choices").map((heading) => `--column "${text("role")}=${heading}"`),
  }),
  "records-unit-missing": ({ text }) => ({
    says: `the heading “${text("heading")}” does not give the unit of vapour pressure`,
    expected: "Pa, hPa or kPa",
    write: "--pressure-unit hPa",
  }),
  "records-wet-bulb-altitude": () => ({
    says: "wet-bulb temperatures need the air pressure, and so the altitude of the station",
    expected: "its altitude in metres",
    write: "--altitude 120",
  }),
  "records-row-unreadable": (from) => ({
    says: `a quotation mark in this line is not closed${elsewhere(from)}`,
    expected: "one reading on a line",
  }),
  "records-row-cells": (from) => ({
    says: `the row has ${from.text("found")} cells, but there are ${from.text("expected")} headings${elsewhere(from)}`,
    expected: "as many cells as headings",
    likelySlip: hasMoreCells(from.text)
      ? "Commas separate both decimals and cells"
      : "The download is incomplete, or a remark stands between the readings",
  }),
  "records-date": (from) => ({
    says: `“${from.received}” ${DATE_FAULTS[from.text("fault")] ?? "cannot be read"}${elsewhere(from)}`,
    expected: "a date, for example 2004-01-31, 2004-01-31 13:00, 31.01.2004 or 20040131",
    write:
      from.text("fault") === "order of day and month" ? '--date-order "day first" or --date-order "month first"' : null,
  }),
  "records-number": (from) => ({
    says: `“${from.received}” under ${from.text("column")} is not a number${elsewhere(from)}`,
    expected: "a number, or an empty cell for a missing reading",
    likelySlip: "The cell holds a unit, a remark or a comma between thousands",
  }),
  "records-decimal-separator": (from) => ({
    says: `“${from.received}” under ${from.text("column")} has a different decimal sign from the readings before it${elsewhere(from)}`,
    expected: "points throughout, or commas throughout",
    likelySlip: "Two files were joined",
  }),
  "records-temperature-range": (from) => ({
    says: `${from.received} ${from.text("unit")} is not an air temperature (column ${from.text("column")})${elsewhere(from)}`,
    expected: "between −90 and 60 °C, or an empty cell for a missing reading",
    likelySlip: readingSlip(from),
  }),
  "records-humidity-range": (from) => ({
    says:
      `air of ${tenths(from.text("temperature"))} °C cannot have a ${from.text("role")} of ` +
      `${from.received} ${from.text("unit")}${elsewhere(from)}`,
    expected: `${HUMIDITY_LIMITS[from.text("role")] ?? ""}, or an empty cell for a missing reading`,
    likelySlip:
      from.text("role") === "relative humidity"
        ? "The sensor failed"
        : "Two columns are swapped, or the unit is different",
  }),
  "records-humidity-fraction": ({ text }) => ({
    says: `relative humidity never exceeds ${text("greatest")} in this file, so these are fractions, not per cent`,
    expected: "per cent, or the option that says fractions",
    write: "--humidity-unit fraction",
  }),
  "records-no-readings": ({ text }) => ({
    says:
      text("rows") === "0"
        ? "the file has headings but no readings"
        : `none of the ${grouped(text("rows"))} rows has both a temperature and a humidity`,
    expected: "rows with both",
    likelySlip: text("rows") === "0" ? "The download is incomplete" : "One of the columns is empty",
  }),
  "records-one-reading": () => ({
    says: "the file holds readings of one time only",
    expected: "hourly or daily readings of at least a year",
  }),
  "records-interval": ({ text }) => ({
    says: `the readings are ${text("days")} days apart: their means hide the humid and the dry hours`,
    expected: "a reading every day or more often",
    likelySlip: "Monthly means need no `climate make`: write them as a climate table",
  }),
  "records-interval-changes": ({ text }) => ({
    says:
      `${text("month")} has ${grouped(text("present"))} readings where one every ${spell(Number(text("interval")))} makes ` +
      `${grouped(text("expected"))}: the interval changes, and the closer readings would count for more`,
    expected: "the same interval throughout",
    likelySlip: "Two files were joined",
  }),
  "records-contradicting": ({ text }) => ({
    says: `${grouped(text("contradicting"))} of ${grouped(text("rows"))} rows contradict an earlier row of the same time`,
    expected: "one reading for each time",
    likelySlip: "The file mixes two stations, or several years without a column for the year",
  }),
  "records-incomplete": ({ text, list }) => ({
    says: `too many readings are missing: ${inSpeech(list("months"), "and")}`,
    expected: `at least ${text("leastPercent")} % of the readings of each month`,
    likelySlip: "The file covers less than a year, or the station was not running",
  }),
} satisfies Wordings;

const RECORD_SHAPE =
  "a line of headings, then on each line the time, the temperature, and the relative humidity, dew point, wet bulb or vapour pressure";

const ROLES: Readonly<Record<string, string>> = {
  date: "the time",
  temperature: "the temperature",
  humidity: "the humidity",
};
const NAMED_ROLES: Readonly<Record<string, string>> = { humidity: "relative humidity" };

const DATE_FAULTS: Readonly<Record<string, string>> = {
  date: "is not a date",
  "two-digit year": "has a two-digit year, so the century is unknown",
  "order of day and month": "could be two dates: no date in the file shows whether the day or the month comes first",
  "day of month": "is not in the calendar",
  time: "is not a time of day",
};

const HUMIDITY_LIMITS: Readonly<Record<string, string>> = {
  "relative humidity": "over 0 % and up to 105 % (sensors overshoot in fog)",
  "dew point": "no higher than the temperature",
  "wet bulb": "no higher than the temperature, and not lower than in perfectly dry air",
  "vapour pressure": "over 0 and no more than saturation at that temperature",
};

/** No weather is warmer than this [°C]. */
const WARMEST_READING = 60;
const SECONDS_PER_MINUTE = 60;
const MINUTES_PER_HOUR = 60;
const MINUTES_PER_DAY = 1440;

function quoted(names: readonly string[]): string[] {
  return names.map((name) => `“${name}”`);
}

function elsewhere({ text, list }: Facts): string {
  return alsoOn(list("lines"), Number(text("count")));
}

function readingSlip({ received, text }: Facts): string {
  if (text("unit") !== "°C") return "The unit differs from the heading or the option";
  const value = Number(received.replace(",", "."));
  return unitSlip(value, WARMEST_READING) ?? "The figure is a code for a missing reading";
}

function spell(seconds: number): string {
  const minutes = seconds / SECONDS_PER_MINUTE;
  if (minutes === MINUTES_PER_DAY) return "day";
  return minutes === MINUTES_PER_HOUR ? "hour" : `${Number(minutes.toPrecision(4))} minutes`;
}

/** A figure rounded to a tenth, with a true minus sign. */
function tenths(figure: string): string {
  return String(Math.round(Number(figure) * 10) / 10).replace("-", "−");
}
