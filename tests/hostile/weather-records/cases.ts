import { EVERY_HOUR, isoRecords, isoTime, type MadeUpReading, madeUpReadings } from "../../core/record-years.ts";

/** Weather records that must be refused, with the problems that must be told: code, and line where there is one. */
export interface BadRecords {
  title: string;
  records: string | Uint8Array;
  /** Options of `climate make` beside the file. */
  options?: readonly string[];
  problems: readonly (readonly [code: string, line: number | null])[];
}

const YEAR = madeUpReadings([2003]);
const records = isoRecords(YEAR);

/** The year with the row at a line of the file replaced. */
const change = (line: number, row: string | ((reading: MadeUpReading) => string)): string => {
  const lines = records.split("\n");
  lines[line - 1] = typeof row === "string" ? row : row(YEAR[line - 2]!);
  return lines.join("\n");
};
const values = (line: number, cells: string): string => change(line, (reading) => `${isoTime(reading)},${cells}`);
const each = (row: (reading: MadeUpReading) => string, head = "date,temp,rh"): string =>
  [head, ...YEAR.map(row)].join("\n");
const firstDays = YEAR.filter(({ day }) => day <= 12);

/** Bad weather records. */
export const BAD_RECORDS: readonly BadRecords[] = [
  { title: "an empty file", records: "", problems: [["records-empty", null]] },
  { title: "comments and nothing else", records: "# station 12\n\n# end\n", problems: [["records-empty", null]] },
  { title: "headings and no readings", records: "date,temp,rh\n", problems: [["records-no-readings", null]] },
  {
    title: "a picture",
    records: new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    problems: [["no-text", null]],
  },
  {
    title: "Latin-1 with a degree sign",
    records: Uint8Array.from("date,temp \u00b0C,rh\n", (c) => c.charCodeAt(0)),
    problems: [["wrong-encoding", null]],
  },
  {
    title: "UTF-16 of a spreadsheet",
    records: Buffer.from(`\uFEFF${records}`, "utf16le"),
    problems: [["wrong-encoding", null]],
  },
  { title: "one endless line", records: "1".repeat(1_500_000), problems: [["records-line-too-long", null]] },
  {
    title: "no headings",
    records: records.split("\n").slice(1).join("\n"),
    problems: [
      ["records-column-missing", 1],
      ["records-column-missing", 1],
      ["records-column-missing", 1],
    ],
  },
  {
    title: "headings in another language",
    records: each((r) => `${isoTime(r)},${r.temperature},80`, "Fecha,Temperatura,Humedad"),
    problems: [
      ["records-column-missing", 1],
      ["records-column-missing", 1],
      ["records-column-missing", 1],
    ],
  },
  {
    title: "no humidity",
    records: each((r) => `${isoTime(r)},${r.temperature}`, "date,temp"),
    problems: [["records-column-missing", 1]],
  },
  {
    title: "two columns that could be the temperature",
    records: each((r) => `${isoTime(r)},1,2,80`, "date,temp,air temperature,rh"),
    problems: [["records-column-ambiguous", 1]],
  },
  {
    title: "a column named that is not there",
    records,
    options: ["--column", "temperature=T2"],
    problems: [["records-column-named-missing", 1]],
  },
  {
    title: "vapour pressure without a unit",
    records: each((r) => `${isoTime(r)},${r.temperature},7`, "date,temp,vapour pressure"),
    problems: [["records-unit-missing", 1]],
  },
  {
    title: "a wet bulb and no altitude",
    records: each((r) => `${isoTime(r)},${r.temperature},${r.temperature - 1}`, "date,temp,wet bulb"),
    problems: [["records-wet-bulb-altitude", 1]],
  },
  { title: "relative humidity of 140 %", records: values(77, "7,140"), problems: [["records-humidity-range", 77]] },
  { title: "relative humidity of nothing", records: values(77, "7,0"), problems: [["records-humidity-range", 77]] },
  { title: "−90 °C", records: values(77, "-90,80"), problems: [["records-temperature-range", 77]] },
  { title: "1e308 degrees", records: values(77, "1e308,80"), problems: [["records-temperature-range", 77]] },
  { title: "infinity", records: values(77, "Infinity,80"), problems: [["records-number", 77]] },
  { title: "full-width digits", records: values(77, "７,80"), problems: [["records-number", 77]] },
  {
    title: "a unit in every cell",
    records: each((r) => `${isoTime(r)},${r.temperature} °C,80 %`),
    problems: [
      ["records-number", 2],
      ["records-number", 2],
    ],
  },
  {
    title: "kelvin without saying so",
    records: each((r) => `${isoTime(r)},${r.temperature + 273},80`),
    problems: [["records-temperature-range", 2]],
  },
  {
    title: "Fahrenheit without saying so",
    records: each((r) => `${isoTime(r)},${r.temperature * 1.8 + 50},80`),
    problems: [["records-temperature-range", 33]],
  },
  {
    title: "fractions without saying so",
    records: each((r) => `${isoTime(r)},${r.temperature},0.8`),
    problems: [["records-humidity-fraction", null]],
  },
  {
    title: "a dew point above the temperature",
    records: each((r) => `${isoTime(r)},${r.temperature},${r.temperature + 3}`, "date,temp,dew point"),
    problems: [["records-humidity-range", 2]],
  },
  {
    title: "temperature and dew point exchanged",
    records: each((r) => `${isoTime(r)},${r.temperature - 3},${r.temperature}`, "date,temp,dew point"),
    problems: [["records-humidity-range", 2]],
  },
  {
    title: "decimal commas between commas",
    records: each((r) => `${isoTime(r)},${r.temperature},5,80,5`),
    problems: [["records-row-cells", 2]],
  },
  {
    title: "decimals of two kinds",
    records: each((r) => `${isoTime(r)};${r.month < 6 ? "5.5" : "5,5"};80`, "date;temp;rh"),
    problems: [["records-decimal-separator", 153]],
  },
  {
    title: "a download that broke off in a row",
    records: `${records}2004-01-01,5`,
    problems: [["records-row-cells", 367]],
  },
  {
    title: "a quotation mark left open",
    records: change(77, '2003-03-17,"7,80'),
    problems: [["records-row-unreadable", 77]],
  },
  { title: "30 February", records: change(60, "2003-02-30,6,80"), problems: [["records-date", 60]] },
  {
    title: "years of two digits",
    records: each((r) => `${r.day}/${r.month}/03,${r.temperature},80`),
    problems: [["records-date", 2]],
  },
  {
    title: "serial numbers for dates",
    records: each((r) => `${37_621 + r.day},${r.temperature},80`),
    problems: [["records-date", 2]],
  },
  {
    title: "dates that could be two",
    records: isoRecords(firstDays).replaceAll(/(\d{4})-(\d{2})-(\d{2})/g, "$3/$2/$1"),
    problems: [["records-date", 2]],
  },
  { title: "25 o'clock", records: change(77, "2003-03-17 25:00,7,80"), problems: [["records-date", 77]] },
  {
    title: "eleven months",
    records: isoRecords(YEAR.filter(({ month }) => month !== 2)),
    problems: [["records-incomplete", null]],
  },
  {
    title: "a quarter of a month missing",
    records: isoRecords(YEAR.filter(({ month, day }) => month !== 7 || day > 8)),
    problems: [["records-incomplete", null]],
  },
  {
    title: "a third of a month marked as missing",
    records: each((r) => `${isoTime(r)},${r.month === 7 && r.day < 12 ? -9999 : r.temperature},80`),
    problems: [["records-incomplete", null]],
  },
  {
    title: "monthly means",
    records: isoRecords(YEAR.filter(({ day }) => day === 1)),
    problems: [["records-interval", null]],
  },
  {
    title: "daily and hourly years joined",
    records: isoRecords([...YEAR, ...madeUpReadings([2004], EVERY_HOUR)]),
    problems: [["records-incomplete", null]],
  },
  {
    title: "two stations in one file",
    records: isoRecords([...YEAR, ...YEAR.map((r) => ({ ...r, temperature: r.temperature + 2 }))]),
    problems: [["records-contradicting", null]],
  },
  {
    title: "several years with no column for the year",
    records: each(
      (r) => `${r.month},${r.day},${r.temperature},80\n${r.month},${r.day},${r.temperature + 1},80`,
      "month,day,temp,rh",
    ),
    problems: [["records-contradicting", null]],
  },
  {
    title: "every reading missing",
    records: each((r) => `${isoTime(r)},NA,NA`),
    problems: [["records-no-readings", null]],
  },
  { title: "a row called __proto__", records: change(77, "__proto__,7,80"), problems: [["records-date", 77]] },
  {
    title: "slips of every kind at once",
    records: change(60, "2003-02-30,6,80")
      .replace("2003-01-05,5,80", "2003-01-05,5,140")
      .replace("2003-01-09,5,80", "2003-01-09,mild,80")
      .replaceAll(/2003-11-.*\n/g, ""),
    problems: [
      ["records-humidity-range", 6],
      ["records-number", 10],
      ["records-date", 60],
      ["records-incomplete", null],
    ],
  },
];
