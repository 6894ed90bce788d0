import { type Facts, inSpeech, type Wordings } from "./wording.ts";

/** Problems of climate tables. */
const TABLE_WORDINGS: Wordings = {
  "climate-empty": () => ({ says: "the climate table is empty", expected: TABLE_SHAPE, write: HEADINGS }),
  "climate-binary": () => ({
    says: "this is no climate table: it holds characters that no text has, or is saved in another encoding than UTF-8",
    expected: "a text file saved as UTF-8",
    likelySlip: "A spreadsheet is named instead of the CSV saved from it",
  }),
  "climate-too-long": ({ text }) => ({
    says: `this is no climate table: it has ${grouped(text("characters"))} characters, and twelve months take about a thousand`,
    expected: `at most ${grouped(text("greatest"))} characters`,
    likelySlip: RECORDS_FOR_TABLE,
  }),
  "climate-no-rows": () => ({ says: "the climate table holds no months", expected: TABLE_SHAPE, write: HEADINGS }),
  "climate-delimiter": ({ text }) => ({
    says: `the headings of the climate table are set apart by ${text("found")}s`,
    expected: "commas between cells, and points in decimals",
    likelySlip: "It was saved by a spreadsheet in a language that writes decimal commas",
    write: HEADINGS,
  }),
  "climate-column-missing": ({ text }) => ({
    says: `the climate table has no column ${text("column")}`,
    expected: `the headings ${HEADINGS}`,
    likelySlip: "The column has another heading, or the line of headings is missing",
    write: HEADINGS,
  }),
  "climate-column-twice": ({ text }) => ({
    says: `the climate table has the column ${text("column")} more than once`,
    expected: "each column once",
    write: HEADINGS,
  }),
  "climate-column-unknown": ({ received }) => ({
    says: `the climate table has a column “${received}”, which is not used`,
    expected: `only ${HEADINGS}; remarks go into lines that begin with #`,
    likelySlip: "A heading is misspelt, or a column is left over",
    write: HEADINGS,
  }),
  "climate-row-unreadable": () => ({
    says: "the line cannot be split into cells, because a quotation mark is opened and not closed",
    expected: `three cells with commas between them, such as ${EXAMPLE_ROW}`,
  }),
  "climate-row-cells": ({ text, list }) => ({
    says: `the row has ${text("found")} cells instead of ${text("expected")}${alsoOn(list("lines"), list("lines").length)}`,
    expected: `a month, a temperature and a relative humidity, such as ${EXAMPLE_ROW}`,
    likelySlip: hasMoreCells(text)
      ? "Decimals are written with commas, so that 3,8 counts as two cells"
      : "A cell is left out",
  }),
  "climate-month-unknown": ({ received }) => ({
    says: received === "" ? "the month is missing" : `“${received}” is no month`,
    expected: "January to December, or 1 to 12",
    likelySlip: "The row holds the mean of the year, or the month is in another language",
  }),
  "climate-month-twice": ({ received, text }) => ({
    says: `${received} is here a second time; it stands in line ${text("firstLine")} already`,
    expected: "each month once",
    likelySlip: "A row was copied and its month not changed",
  }),
  "climate-month-missing": ({ list }) => ({
    says: `the climate table has no row for ${inSpeech(list("missing"), "and")}`,
    expected: "twelve rows, January to December; none is filled in",
  }),
  "climate-month-order": ({ received, text }) => ({
    says: `the months are out of order: ${received} stands where ${text("expected")} should be`,
    expected: "January first and December last",
    likelySlip: "The rows were sorted, or the year begins in another month",
  }),
  "climate-too-many-rows": ({ text }) => ({
    says: `the table has ${grouped(text("rows"))} rows, but a climate has twelve`,
    expected: "twelve rows, January to December",
    likelySlip: RECORDS_FOR_TABLE,
  }),
  "climate-number": ({ received, text }) => ({
    says:
      received === "nothing"
        ? `the cell under ${text("column")} is empty`
        : `“${received}” under ${text("column")} is no number`,
    expected: "digits with a decimal point, such as 3.8 or -1.5, and no unit",
    likelySlip: text("decimalComma") === "" ? null : "The decimal is written with a comma",
    write: text("decimalComma") === "" ? null : received.replace(",", "."),
  }),
  "climate-temperature-range": ({ received, text }) => ({
    says: `no month anywhere has a mean temperature of ${received} °C`,
    expected: `${text("least").replace("-", "−")} °C to ${text("greatest")} °C`,
    likelySlip: unitSlip(Number(received), Number(text("greatest"))),
  }),
  "climate-humidity-range": ({ received }) => ({
    says: `a relative humidity of ${received} % cannot be`,
    expected: "over 1 % and up to 100 %",
    likelySlip:
      Number(received) > 1000 ? "A decimal point is left out" : "The columns are exchanged, or the sensor failed",
  }),
  "climate-humidity-fraction": ({ received, text }) => ({
    says:
      text("rows") === ""
        ? `a relative humidity of ${received} % is never a month's mean`
        : `relative humidity is 1 % or less in ${text("rows")} rows, which is never a month's mean`,
    expected: "relative humidity in per cent",
    likelySlip: "A fraction is written for per cent",
    write: String(Number(Number(text("percent")).toFixed(4))),
  }),
  "climate-header-value": ({ received, text }) => ({
    says: `the ${text("label")} at the head of the table, “${received}”, cannot be read`,
    expected: HEADER_VALUES[text("label")] ?? null,
  }),
};

/** Problems of weather records. */
const RECORD_WORDINGS: Wordings = {
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
      `${Number(from.text("temperature")).toFixed(1).replace("-", "−")} °C${elsewhere(from)}`,
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

/** Problems of climate tables and of weather records. */
export const CLIMATE_WORDINGS: Wordings = { ...TABLE_WORDINGS, ...RECORD_WORDINGS };

const HEADINGS = "month,temperature_C,relative_humidity_pct";
const EXAMPLE_ROW = "January,3.8,90.5";
const TABLE_SHAPE = `the headings ${HEADINGS} and twelve rows, January to December`;
const RECORD_SHAPE =
  "a line of headings, then on each line the time, the temperature, and the relative humidity, dew point, wet bulb or vapour pressure";
const RECORDS_FOR_TABLE = "These are the weather records themselves: `warmside climate make` turns them into the table";

const HEADER_VALUES: Readonly<Record<string, string>> = {
  latitude: "degrees from -90 to 90, or with N or S, such as 52.10",
  longitude: "degrees from -180 to 180, or with E or W, such as -0.45",
  altitude: "metres from -500 to 9000, such as 25 m",
};

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

/** Temperatures over this can only be kelvin [–]. */
const SURELY_KELVIN = 200;
/** Readings over this are in no weather in °C [°C]. */
const WARMEST_READING = 60;
const SECONDS_PER_MINUTE = 60;
const MINUTES_PER_HOUR = 60;
const MINUTES_PER_DAY = 1440;

/** A whole number with a space between its thousands. */
function grouped(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, " ");
}

function quoted(names: readonly string[]): string[] {
  return names.map((name) => `“${name}”`);
}

function hasMoreCells(text: Facts["text"]): boolean {
  return Number(text("found")) > Number(text("expected"));
}

function elsewhere({ text, list }: Facts): string {
  return alsoOn(list("lines"), Number(text("count")));
}

/** Where the same slip is made again; the first line is told beside the sentence. */
function alsoOn(lines: readonly string[], many: number): string {
  const others = lines.slice(1);
  if (others.length === 0) return "";
  const more = many - lines.length;
  const named = `, also on ${others.length === 1 ? "line" : "lines"} ${inSpeech(others, "and")}`;
  return more > 0 ? `${named} and on ${grouped(String(more))} more` : named;
}

function unitSlip(value: number, greatest: number): string | null {
  if (value > SURELY_KELVIN) return "These are kelvin, not degrees Celsius";
  return value > greatest ? "These are degrees Fahrenheit, not Celsius" : null;
}

function readingSlip({ received, text }: Facts): string {
  if (text("unit") !== "°C") return "The unit is another than the heading or the option says";
  const value = Number(received.replace(",", "."));
  return unitSlip(value, WARMEST_READING) ?? "The figure is a code for a missing reading";
}

function spell(seconds: number): string {
  const minutes = seconds / SECONDS_PER_MINUTE;
  if (minutes === MINUTES_PER_DAY) return "day";
  return minutes === MINUTES_PER_HOUR ? "hour" : `${Number(minutes.toFixed(2))} minutes`;
}
