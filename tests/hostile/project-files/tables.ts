import { type BadFile, changed } from "./bad-file.ts";

const HEADER = "name,kind,conductivity_W_mK,mu_dry,sd_m,source\n";

/** A project with a material table of its own. */
const table = (title: string, text: string, line: number | null, code: string, says: string): BadFile => ({
  title,
  text: changed("climate:", "materials: my.csv\nclimate:"),
  files: { "my.csv": text },
  problems: [{ line, code, says }],
});

/** A project with a price table. */
const prices = (title: string, text: string, line: number, code: string, says: string): BadFile => ({
  title,
  text: changed("climate:", "prices: my-prices.csv\nclimate:"),
  files: { "my-prices.csv": text },
  problems: [{ line, code, says }],
});

/** Tables of materials and prices that cannot be read. */
export const BAD_TABLES: readonly BadFile[] = [
  table("an empty table", "", null, "table-empty", "table my.csv: the material table has no rows"),
  table("a header alone", HEADER, null, "table-empty", "at least one row"),
  table("a picture", "\u0089PNG\0", null, "table-not-text", "is not text in UTF-8"),
  table("more than 2 MB", `${HEADER}${"board,,0.1,5,,x\n".repeat(130_000)}`, null, "table-too-large", "is too large"),
  table(
    "more rows than any table has",
    `${HEADER}${"b,,0.1,5,,x\n".repeat(20_001)}`,
    null,
    "table-too-large",
    "20000 rows",
  ),
  table("semicolons", HEADER.replaceAll(",", ";"), 1, "table-separator", "separated by semicolons or tabs"),
  table("no column for μ", "name,conductivity_W_mK,sd_m\nboard,0.1,\n", 1, "column-missing", "lacks the column mu_dry"),
  table(
    "a column that means nothing",
    `${HEADER.trim()},colour\nboard,,0.1,5,,x,red\n`,
    1,
    "column-unknown",
    "an unknown column, colour",
  ),
  table(
    "a column misspelt",
    HEADER.replace("source", "sorce").concat("board,,0.1,5,,x\n"),
    1,
    "column-unknown",
    "Write `source`",
  ),
  table(
    "a column twice",
    `${HEADER.trim()},name\nboard,,0.1,5,,x,board\n`,
    1,
    "column-twice",
    "the column name is given twice",
  ),
  table(
    "a row cut short",
    `${HEADER}board,,0.1\n`,
    2,
    "row-length",
    "row board: the row has 3 cells, and the header 6",
  ),
  table("decimal commas", `${HEADER}board,,0,1,5,,x\n`, 2, "row-length", "A decimal comma"),
  table("a decimal comma in quotation marks", `${HEADER}board,,"0,1",5,,x\n`, 2, "cell-decimal-comma", "Write `0.1`"),
  table("a unit in a cell", `${HEADER}board,,0.1 W/mK,5,,x\n`, 2, "cell-not-number", "Write `0.1`"),
  table(
    "a word in a cell of numbers",
    `${HEADER}board,,low,5,,x\n`,
    2,
    "cell-not-number",
    "conductivity_W_mK is not a number",
  ),
  table("a conductivity below nothing", `${HEADER}board,,-0.1,5,,x\n`, 2, "cell-impossible", "cannot be -0.1"),
  table("more open than air", `${HEADER}board,,0.1,0.5,,x\n`, 2, "cell-impossible", "nothing is more open"),
  table("infinity", `${HEADER}board,,0.1,Infinity,,x\n`, 2, "cell-not-number", "mu_dry is not a number"),
  table("a number past every number", `${HEADER}board,,0.1,1e400,,x\n`, 2, "cell-not-number", "is not a number"),
  table("a kind that is none", `${HEADER}board,stone,0.1,5,,x\n`, 2, "cell-not-one-of", "kind cannot be stone"),
  table("no name", `${HEADER},,0.1,5,,x\n`, 2, "row-without-name", "the row has no name"),
  table("a name twice", `${HEADER}board,,0.1,5,,x\nBoard,,0.2,5,,x\n`, 3, "row-twice", "is already in line 2"),
  table("a sheet that is a board", `${HEADER}board,,0.1,5,2,x\n`, 2, "row-mixed", "sd_m, as sheets have"),
  table("a board without μ", `${HEADER}board,,0.1,,,x\n`, 2, "row-incomplete", "the row lacks mu_dry"),
  table("a quotation mark not closed", `${HEADER}"board,,0.1,5,,x\n`, 2, "table-quotes", "is not closed"),
  prices(
    "a price per bag",
    "material,per,price\nplywood,bag,4\n",
    2,
    "cell-not-one-of",
    "one of m2, m3, roll, sheet or m",
  ),
  prices("a price below nothing", "material,per,price\nplywood,m2,-4\n", 2, "cell-impossible", "price cannot be -4"),
  prices("no price", "material,per,price\nplywood,m2,\n", 2, "cell-empty", "price is empty"),
  prices(
    "a roll of unknown size",
    "material,per,price,covers_m2\nbreather membrane,roll,60,\n",
    2,
    "price-needs-cover",
    "the area that one roll covers",
  ),
  {
    title: "a table and a project that are both wrong: the project's problems come first",
    text: changed("climate:", "materials: my.csv\nclimate:").replace("12.5 mm", "12.5"),
    files: { "my.csv": `${HEADER}board,,0.1,0.5,,x\n,,0.1,5,,x\n` },
    problems: [
      { line: 13, code: "unit-missing", says: "layer 1, gypsum plasterboard" },
      { line: 2, code: "cell-impossible", says: "row board" },
      { line: 3, code: "row-without-name", says: "table my.csv" },
    ],
  },
];
