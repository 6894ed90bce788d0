import { alsoOn } from "./climate-words.ts";
import { didYouMean, type Facts, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of material tables and price tables. */
export const TABLE_WORDINGS = {
  "table-too-large": ({ text }) => ({
    says: `the ${text("what")} is too large`,
    expected: "at most 2 MB and 20000 rows",
    likelySlip: "This is probably another file",
  }),
  "table-not-text": ({ text }) => ({
    says: `the ${text("what")} is not text in UTF-8`,
    expected: "comma-separated values saved as UTF-8",
    likelySlip: "Save the spreadsheet as CSV (UTF-8) first",
  }),
  "table-quotes": () => ({
    says: "a quotation mark is not closed, or stands inside a cell",
    expected: "quotation marks on both sides of a cell, or none",
  }),
  "table-empty": ({ text, list }) => ({
    says: `the ${text("what")} has no rows`,
    expected: `a line of headings with ${inSpeech(list("columns"), "and")}, and at least one row`,
    write: list("columns").join(","),
  }),
  "table-separator": ({ text }) => ({
    says: `the cells of the ${text("what")} are separated by semicolons or tabs`,
    expected: "commas between cells, and decimal points in numbers",
    likelySlip: "The spreadsheet was exported with decimal commas",
  }),
  "column-missing": ({ text, list }) => ({
    says: `the ${text("what")} lacks the ${list("missing").length === 1 ? "column" : "columns"} ${inSpeech(list("missing"), "and")}`,
    expected: `a header with ${list("known").join(", ")}, in any order`,
    likelySlip: "The header must be the first row that is not a comment",
    write: list("all").join(",") || null,
  }),
  "column-unknown": ({ text, list }) => ({
    says: `the ${text("what")} has an unknown column, ${text("column")}`,
    expected: `only ${inSpeech(list("known"), "and")}`,
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "column-twice": ({ text }) => ({ says: `the column ${text("column")} is given twice`, expected: "each column once" }),
  "row-length": ({ text, list }) => ({
    says: `the row has ${text("cells")} cells, and the header ${text("columns")}${alsoOn(list("lines"), Number(text("rows")))}`,
    expected: "as many commas in every row as in the header",
    likelySlip:
      Number(text("cells")) > Number(text("columns"))
        ? "A decimal comma, or a comma in a name, adds a cell; put the name in quotation marks"
        : "An empty cell still needs its comma",
  }),
  "row-twice": ({ text }) => ({
    says: `the name is already in line ${text("earlier")}`,
    expected: "each name once, whatever its case and spaces",
  }),
  "row-without-name": () => ({ says: "the row has no name", expected: "a name in every row" }),
  "row-mixed": ({ list }) => ({
    says: `the row has sd_m, as sheets have, and ${inSpeech(list("columns"), "and")}, as materials with a thickness have`,
    expected: "either sd_m, or conductivity_W_mK and mu_dry",
  }),
  "row-incomplete": ({ list }) => ({
    says: `the row lacks ${inSpeech(list("missing"), "and")}`,
    expected: "conductivity_W_mK and mu_dry for a material with a thickness, or sd_m for a sheet",
  }),
  "cell-empty": ({ text }) => ({ says: `${text("column")} is empty`, expected: "a value in every row" }),
  "cell-decimal-comma": (facts) => ({
    says: `${column(facts)} has a decimal comma`,
    expected: "a number with a decimal point",
    write: facts.text("write"),
  }),
  "cell-not-number": (facts) => ({
    says: `${column(facts)} is not a number`,
    expected: "digits with a decimal point and no unit: the heading has the unit",
    write: facts.text("write") || null,
  }),
  "cell-impossible": (facts) => ({
    says: `${column(facts)} cannot be ${facts.received}: ${facts.text("reason")}`,
    expected: `a value from ${facts.text("low")} to ${facts.text("high")}, in the unit of the heading`,
  }),
  "cell-not-one-of": ({ text, received, list }) => ({
    says: `${text("column")} cannot be ${received}`,
    expected: oneOf(list("options")),
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "price-needs-cover": ({ text }) => ({
    says: `covers_m2 is empty, and a price per ${text("per")} needs it`,
    expected: `the area that one ${text("per")} covers`,
  }),
} satisfies Wordings;

function column({ text }: Facts): string {
  return text("column");
}
