/** A climate table that must be refused, and the problems that must be told: code and line of the table. */
export interface BadTable {
  title: string;
  table: string | Uint8Array;
  problems: readonly (readonly [code: string, line: number | null])[];
}

const HEADINGS = "month,temperature_C,relative_humidity_pct";
const MONTHS = [
  "January,3.8,90.5",
  "February,4.4,85.8",
  "March,6.3,82.5",
  "April,10.1,75.1",
  "May,13.8,74.2",
  "June,16.4,75.6",
  "July,18.0,78.0",
  "August,17.8,80.9",
  "September,14.9,84.2",
  "October,11.2,87.9",
  "November,7.6,90.5",
  "December,3.7,92.6",
];

/** Line of a month where one comment and the headings stand above: January is 3. */
const lineOf = (month: number): number => month + 2;
const table = (rows: readonly string[], headings = HEADINGS, comment = "# invented for this test"): string =>
  [comment, headings, ...rows, ""].join("\n");
const change = (month: number, row: string): string =>
  table(MONTHS.map((usual, index) => (index === month - 1 ? row : usual)));

const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0));
const utf16 = (text: string): Uint8Array => Buffer.from(`\uFEFF${text}`, "utf16le");

/** Bad climate tables. */
export const BAD_TABLES: readonly BadTable[] = [
  { title: "an empty file", table: "", problems: [["table-empty", null]] },
  { title: "a file of blank lines", table: "\n \n\t\n", problems: [["table-empty", null]] },
  { title: "comments and nothing else", table: "# here\n# and here\n", problems: [["table-empty", null]] },
  { title: "headings and no rows", table: table([]), problems: [["table-empty", null]] },
  { title: "eleven months", table: table(MONTHS.slice(1)), problems: [["climate-month-missing", null]] },
  {
    title: "thirteen months, January twice",
    table: table([...MONTHS, MONTHS[0]!]),
    problems: [["climate-month-twice", 15]],
  },
  {
    title: "two Januaries and no March",
    table: change(3, "January,6.3,82.5"),
    problems: [
      ["climate-month-missing", null],
      ["climate-month-twice", 5],
    ],
  },
  {
    title: "a row for the whole year",
    table: table([...MONTHS, "Year,10.7,83.1"]),
    problems: [["climate-month-unknown", 15]],
  },
  { title: "months out of order", table: table([...MONTHS].reverse()), problems: [["climate-month-order", 3]] },
  {
    title: "a year that begins in July",
    table: table([...MONTHS.slice(6), ...MONTHS.slice(0, 6)]),
    problems: [["climate-month-order", 3]],
  },
  {
    title: "months in another language",
    table: table(MONTHS.map((row) => row.replace("May", "Mai").replace("October", "Oktober"))),
    problems: [
      ["climate-month-unknown", 7],
      ["climate-month-unknown", 12],
    ],
  },
  {
    title: "months counted from 0",
    table: table(MONTHS.map((row, index) => row.replace(/^\w+/, String(index)))),
    problems: [["climate-month-unknown", 3]],
  },
  {
    title: "no humidity column",
    table: table(
      MONTHS.map((row) => row.replace(/,[^,]*$/, "")),
      "month,temperature_C",
    ),
    problems: [["column-missing", 2]],
  },
  {
    title: "a column of vapour pressure beside",
    table: table(
      MONTHS.map((row) => `${row},700`),
      `${HEADINGS},vapour_pressure_Pa`,
    ),
    problems: [["column-unknown", 2]],
  },
  {
    title: "the temperature twice",
    table: table(
      MONTHS.map((row) => `${row},1`),
      `${HEADINGS},temperature_C`,
    ),
    problems: [["column-twice", 2]],
  },
  {
    title: "headings of another shape",
    table: table(MONTHS, "Month,T,RH"),
    problems: [
      ["column-missing", 2],
      ["column-unknown", 2],
      ["column-unknown", 2],
    ],
  },
  {
    title: "a heading called __proto__",
    table: table(MONTHS, "month,__proto__,relative_humidity_pct"),
    problems: [
      ["column-missing", 2],
      ["column-unknown", 2],
    ],
  },
  {
    title: "decimal commas between commas",
    table: table(MONTHS.map((row) => row.replaceAll(".", ","))),
    problems: [["row-length", 3]],
  },
  {
    title: "semicolons and decimal commas",
    table: table(MONTHS, HEADINGS).replaceAll(",", ";").replaceAll(".", ","),
    problems: [["table-separator", 2]],
  },
  { title: "tabs", table: table(MONTHS).replaceAll(",", "\t"), problems: [["table-separator", 2]] },
  {
    title: "relative humidity as fractions",
    table: table(MONTHS.map((row) => row.replace(/[\d.]+$/, "0.9"))),
    problems: [["climate-humidity-fraction", 3]],
  },
  {
    title: "a relative humidity of 5500 %",
    table: change(4, "April,10.1,5500"),
    problems: [["climate-humidity-range", 6]],
  },
  {
    title: "a relative humidity of nothing",
    table: change(4, "April,10.1,0"),
    problems: [["climate-humidity-range", 6]],
  },
  {
    title: "temperatures in kelvin",
    table: table(
      MONTHS.map((row) =>
        row.replace(/,([\d.]+)/, (_, celsius: string) => `,${(Number(celsius) + 273.15).toFixed(2)}`),
      ),
    ),
    problems: MONTHS.map((_, index) => ["climate-temperature-range", lineOf(index + 1)]),
  },
  {
    title: "a temperature of 1e308",
    table: change(8, "August,1e308,80.9"),
    problems: [["climate-temperature-range", 10]],
  },
  {
    title: "not a number and infinity",
    table: change(8, "August,NaN,Infinity"),
    problems: [
      ["cell-not-number", 10],
      ["cell-not-number", 10],
    ],
  },
  {
    title: "numbers with units",
    table: change(8, "August,17.8 °C,80.9 %"),
    problems: [
      ["cell-not-number", 10],
      ["cell-not-number", 10],
    ],
  },
  { title: "full-width digits", table: change(8, "August,１７.８,80.9"), problems: [["cell-not-number", 10]] },
  { title: "an empty cell", table: change(8, "August,,80.9"), problems: [["cell-empty", 10]] },
  {
    title: "a formula of a spreadsheet",
    table: change(8, 'August,"=SUM(B2:B7)",80.9'),
    problems: [["cell-not-number", 10]],
  },
  {
    title: "a quotation mark left open",
    table: change(8, 'August,"17.8,80.9'),
    problems: [["table-quotes", 10]],
  },
  {
    title: "a latitude of 95",
    table: table(MONTHS, HEADINGS, "# latitude: 95"),
    problems: [["climate-header-value", 1]],
  },
  {
    title: "an altitude in feet",
    table: table(MONTHS, HEADINGS, "# altitude: 300 ft"),
    problems: [["climate-header-value", 1]],
  },
  {
    title: "the weather records instead of the table",
    table: table(Array.from({ length: 365 }, (_, day) => `${(day % 12) + 1},5,80`)),
    problems: [["climate-too-many-rows", 27]],
  },
  {
    title: "a table far too long",
    table: table(Array.from({ length: 40_000 }, () => "January,5,80")),
    problems: [["climate-too-long", null]],
  },
  {
    title: "slips on many lines at once",
    table: table(
      MONTHS.map((row, index) => (index % 4 === 1 ? `${row.split(",")[0]!},warm,140` : row)),
      HEADINGS,
      "# longitude: 200",
    ),
    problems: [
      ["climate-header-value", 1],
      ["cell-not-number", 4],
      ["climate-humidity-range", 4],
      ["cell-not-number", 8],
      ["climate-humidity-range", 8],
      ["cell-not-number", 12],
      ["climate-humidity-range", 12],
    ],
  },
  {
    title: "a table saved as Latin-1",
    table: latin1("# M\u00fcnchen\n" + table(MONTHS)),
    problems: [["file-unreadable", 2]],
  },
  { title: "a table saved as UTF-16", table: utf16(table(MONTHS)), problems: [["file-unreadable", 2]] },
  {
    title: "a picture",
    table: new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    problems: [["file-unreadable", 2]],
  },
  { title: "a file over 2 MB", table: "# remark\n".repeat(250_000), problems: [["file-unreadable", 2]] },
];
