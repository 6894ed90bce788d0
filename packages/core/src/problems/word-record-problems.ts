import { alsoOn, grouped, hasMoreCells, unitSlip } from "./climate-words.ts";
import { type Facts, inSpeech, type Wordings } from "./wording.ts";

/** Problems of weather records. */
export const RECORD_WORDINGS: Wordings = {
  "records-empty": () => ({
    says: "the file holds no weather records",
    expected: RECORD_SHAPE,
    likelySlip: "A download broke off",
  }),
  "records-binary": () => ({
    says: "these are no weather records: the file holds characters that no text has, or is saved in another encoding than UTF-8",
    expected: "a CSV file saved as UTF-8",
    likelySlip: "A spreadsheet or an archive is named instead of the CSV in it",
  }),
  "records-line-too-long": () => ({
    says: "a line is far longer than any row of weather records",
    expected: RECORD_SHAPE,
    likelySlip: "The file is of another kind",
  }),
  "records-column-missing": ({ text, list }) => ({
    says: `no heading tells where ${ROLES[text("role")] ?? text("role")} stands; the headings are ${inSpeech(quoted(list("headings")), "and")}`,
    expected: RECORD_SHAPE,
    likelySlip: "The heading is unusual, or cells are not set apart by commas, semicolons, tabs or bars",
    write: `--column "${NAMED_ROLES[text("role")] ?? text("role")}=HEADING"`,
  }),
  "records-column-named-missing": ({ text, list }) => ({
    says: `there is no heading “${text("named")}”; the headings are ${inSpeech(quoted(list("headings")), "and")}`,
    expected: `the heading of the column that holds the ${text("role")}`,
  }),
  "records-column-ambiguous": ({ text, list }) => ({
    says: `${inSpeech(quoted(list("choices")), "and")} could each be ${ROLES[text("role")] ?? `the ${text("role")}`}`,
    expected: "to be told which",
    write: list("choices")
      .map((heading) => `--column "${text("role")}=${heading}"`)
      .join(" or "),
  }),
  "records-unit-missing": ({ text }) => ({
    says: `the heading “${text("heading")}” does not tell the unit of vapour pressure`,
    expected: "Pa, hPa or kPa",
    write: "--pressure-unit hPa",
  }),
  "records-wet-bulb-altitude": () => ({
    says: "wet-bulb temperatures need the air pressure, and so the height of the station",
    expected: "its altitude in metres",
    write: "--altitude 120",
  }),
  "records-row-unreadable": (from) => ({
    says: `the line cannot be split into cells, because a quotation mark is opened and not closed${elsewhere(from)}`,
    expected: "one reading on a line",
  }),
  "records-row-cells": (from) => ({
    says: `the row has ${from.text("found")} cells, but there are ${from.text("expected")} headings${elsewhere(from)}`,
    expected: "as many cells as headings",
    likelySlip: hasMoreCells(from.text)
      ? "Decimals are written with commas, and so are the cells set apart"
      : "A download broke off, or a remark stands between the readings",
  }),
  "records-date": (from) => ({
    says: `“${from.received}” ${DATE_FAULTS[from.text("fault")] ?? "cannot be read"}${elsewhere(from)}`,
    expected: "such as 2004-01-31, 2004-01-31 13:00, 31.01.2004 or 20040131",
    write:
      from.text("fault") === "order of day and month" ? '--date-order "day first" or --date-order "month first"' : null,
  }),
  "records-number": (from) => ({
    says: `“${from.received}” under ${from.text("column")} is no number${elsewhere(from)}`,
    expected: "a number, or an empty cell where there is no reading",
    likelySlip: "A unit or a remark stands in the cell, or a comma between thousands",
  }),
  "records-decimal-separator": (from) => ({
    says: `“${from.received}” under ${from.text("column")} has another decimal sign than the readings before it${elsewhere(from)}`,
    expected: "points throughout, or commas throughout",
    likelySlip: "Two files were joined",
  }),
  "records-temperature-range": (from) => ({
    says: `air is never at ${from.received} ${from.text("unit")} (column ${from.text("column")})${elsewhere(from)}`,
    expected: "over −90 °C and under 60 °C, and an empty cell where there is no reading",
    likelySlip: readingSlip(from),
  }),
  "records-humidity-range": (from) => ({
    says:
      `${from.text("role")} ${from.received} ${from.text("unit")} cannot be in air of ` +
      `${tenths(from.text("temperature"))} °C${elsewhere(from)}`,
    expected: `${HUMIDITY_LIMITS[from.text("role")] ?? ""}, and an empty cell where there is no reading`,
    likelySlip:
      from.text("role") === "relative humidity" ? "The sensor failed" : "Columns are exchanged, or the unit is another",
  }),
  "records-humidity-fraction": ({ text }) => ({
    says: `relative humidity is never over ${text("greatest")} in the whole file, so these are fractions and not per cent`,
    expected: "per cent, or to be told that they are fractions",
    write: "--humidity-unit fraction",
  }),
  "records-no-readings": ({ text }) => ({
    says:
      text("rows") === "0"
        ? "the file has headings and no readings"
        : `none of the ${grouped(text("rows"))} rows holds both a temperature and a humidity`,
    expected: "rows with both",
    likelySlip: text("rows") === "0" ? "A download broke off" : "A column is named that is empty",
  }),
  "records-one-reading": () => ({
    says: "the file holds readings of one time only",
    expected: "hourly or daily readings of at least a year",
  }),
  "records-interval": ({ text }) => ({
    says: `the readings are ${text("days")} days apart, and their means have lost the humid and the dry hours`,
    expected: "a reading every day or more often",
    likelySlip: "These are monthly means already: they need no making, only the shape of a climate table",
  }),
  "records-interval-changes": ({ text }) => ({
    says:
      `${text("month")} has ${grouped(text("present"))} readings where one every ${spell(Number(text("interval")))} makes ` +
      `${grouped(text("expected"))}: the time between readings changes, and the closer ones would count for more`,
    expected: "the same time between readings throughout",
    likelySlip: "Two files were joined",
  }),
  "records-contradicting": ({ text }) => ({
    says: `${grouped(text("contradicting"))} of ${grouped(text("rows"))} rows contradict an earlier row of the same time`,
    expected: "one reading for each time",
    likelySlip: "Two stations are in one file, or several years without a column for the year",
  }),
  "records-incomplete": ({ text, list }) => ({
    says: `too many readings are missing: there are in ${inSpeech(list("months"), "and")}`,
    expected: `at least ${text("leastPercent")} % of the readings of each month; nothing is filled in`,
    likelySlip: "The file covers less than a year, or the station was not running",
  }),
};

const RECORD_SHAPE =
  "a line of headings, then on each line the time, the temperature, and the relative humidity, dew point, wet bulb or vapour pressure";

const ROLES: Readonly<Record<string, string>> = {
  date: "the time",
  temperature: "the temperature",
  humidity: "the humidity",
};
const NAMED_ROLES: Readonly<Record<string, string>> = { humidity: "relative humidity" };

const DATE_FAULTS: Readonly<Record<string, string>> = {
  date: "is no date that can be read",
  "two-digit year": "has a year of two digits, which could be of either century",
  "order of day and month": "could be two dates, as no date in the file tells whether the day or the month comes first",
  "day of month": "is no day of the calendar",
  time: "is no time of day",
};

const HUMIDITY_LIMITS: Readonly<Record<string, string>> = {
  "relative humidity": "over 0 % and up to 100 %, or to 105 % as a sensor in fog may read",
  "dew point": "no higher than the temperature",
  "wet bulb": "no higher than the temperature, and not lower than in perfectly dry air",
  "vapour pressure": "over 0 and no more than saturation at that temperature",
};

/** Readings over this are in no weather in °C [°C]. */
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
  if (text("unit") !== "°C") return "The unit is another than the heading or the option says";
  const value = Number(received.replace(",", "."));
  return unitSlip(value, WARMEST_READING) ?? "The figure is a code for a missing reading";
}

function spell(seconds: number): string {
  const minutes = seconds / SECONDS_PER_MINUTE;
  if (minutes === MINUTES_PER_DAY) return "day";
  return minutes === MINUTES_PER_HOUR ? "hour" : `${Number(minutes.toPrecision(4))} minutes`;
}

/** To a tenth, with a true minus sign. */
function tenths(figure: string): string {
  return String(Math.round(Number(figure) * 10) / 10).replace("-", "−");
}
