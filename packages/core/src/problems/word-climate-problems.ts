import { grouped, unitSlip } from "./climate-words.ts";
import { inSpeech, type Wordings } from "./wording.ts";

/** Problems of climate tables. */
export const CLIMATE_WORDINGS = {
  "climate-too-long": ({ text }) => ({
    says: `this is not a climate table: it has ${grouped(text("characters"))} characters, where twelve months take about a thousand`,
    expected: `at most ${grouped(text("greatest"))} characters`,
    likelySlip: RECORDS_FOR_TABLE,
  }),
  "climate-month-unknown": ({ received }) => ({
    says: received === "" ? "the month is missing" : `“${received}” is not a month`,
    expected: "January to December, or 1 to 12",
    likelySlip: "The row holds the mean of the year, or the month is in another language",
  }),
  "climate-month-twice": ({ received, text }) => ({
    says: `${received} appears twice; it is already in line ${text("firstLine")}`,
    expected: "each month once",
    likelySlip: "A row was copied and its month not changed",
  }),
  "climate-month-missing": ({ list }) => ({
    says: `the climate table has no row for ${inSpeech(list("missing"), "and")}`,
    expected: "twelve rows, January to December",
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
  "climate-temperature-range": ({ received, text }) => ({
    says: `no month anywhere has a mean temperature of ${received} °C`,
    expected: `${text("least").replace("-", "−")} °C to ${text("greatest")} °C`,
    likelySlip: unitSlip(Number(received), Number(text("greatest"))),
  }),
  "climate-humidity-range": ({ received }) => ({
    says: `a relative humidity of ${received} % is impossible`,
    expected: "over 1 % and up to 100 %",
    likelySlip:
      Number(received) > 1000 ? "A decimal point is missing" : "The columns are swapped, or the sensor failed",
  }),
  "climate-humidity-fraction": ({ received, text }) => ({
    says:
      text("rows") === ""
        ? `a relative humidity of ${received} % is never a month's mean`
        : `relative humidity is 1 % or less in ${text("rows")} rows, which is never a month's mean`,
    expected: "relative humidity in per cent",
    likelySlip: "Fractions were written instead of per cent",
    write: String(Number(Number(text("percent")).toFixed(4))),
  }),
  "climate-header-value": ({ received, text }) => ({
    says: `the ${text("label")} at the head of the table, “${received}”, cannot be read`,
    expected: HEADER_VALUES[text("label")] ?? null,
  }),
} satisfies Wordings;

const RECORDS_FOR_TABLE = "These are weather records: `warmside climate make` turns them into a climate table";

const HEADER_VALUES: Readonly<Record<string, string>> = {
  latitude: "degrees from -90 to 90, or with N or S, for example 52.10",
  longitude: "degrees from -180 to 180, or with E or W, for example -0.45",
  altitude: "metres from -500 to 9000, for example 25 m",
};
