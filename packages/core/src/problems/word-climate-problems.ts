import { alsoOn, grouped, hasMoreCells, unitSlip } from "./climate-words.ts";
import { inSpeech, type Wordings } from "./wording.ts";

/** Problems of climate tables. */
export const CLIMATE_WORDINGS: Wordings = {
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

const HEADINGS = "month,temperature_C,relative_humidity_pct";
const EXAMPLE_ROW = "January,3.8,90.5";
const TABLE_SHAPE = `the headings ${HEADINGS} and twelve rows, January to December`;
const RECORDS_FOR_TABLE = "These are the weather records themselves: `warmside climate make` turns them into the table";

const HEADER_VALUES: Readonly<Record<string, string>> = {
  latitude: "degrees from -90 to 90, or with N or S, such as 52.10",
  longitude: "degrees from -180 to 180, or with E or W, such as -0.45",
  altitude: "metres from -500 to 9000, such as 25 m",
};
