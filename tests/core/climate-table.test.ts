import { describe, expect, test } from "vitest";
import { readClimate } from "../../packages/core/src/climate/read-climate.ts";
import type { Problem } from "../../packages/core/src/problems/types.ts";

const months = [
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
const headings = "month,temperature_C,relative_humidity_pct";
const head = ["# De Bilt", "# latitude: 52.10", "# longitude: 5.18", "# altitude: 2 m"];

const table = (rows: readonly string[], headingLine = headings, header: readonly string[] = head): string =>
  [...header, headingLine, ...rows].join("\n");

const problemsOf = (text: string): Problem[] => {
  const reading = readClimate(text, "place");
  return reading.ok ? [] : reading.problems;
};
const codesOf = (text: string): string[] => problemsOf(text).map((problem) => problem.code);
const withRow = (index: number, row: string): string => table(months.map((month, at) => (at === index ? row : month)));

describe("a climate table", () => {
  test("gives the twelve months, the place and every header line", () => {
    const reading = readClimate(table(months), "de-bilt");
    expect(reading).toEqual({
      ok: true,
      value: {
        name: "de-bilt",
        origin: ["De Bilt", "latitude: 52.10", "longitude: 5.18", "altitude: 2 m"],
        latitude: 52.1,
        longitude: 5.18,
        altitude: 2,
        temperature: [3.8, 4.4, 6.3, 10.1, 13.8, 16.4, 18, 17.8, 14.9, 11.2, 7.6, 3.7],
        relativeHumidity: [90.5, 85.8, 82.5, 75.1, 74.2, 75.6, 78, 80.9, 84.2, 87.9, 90.5, 92.6].map((rh) => rh / 100),
      },
    });
  });

  test("may name months by number or three letters, and its columns in any order", () => {
    const numbered = months.map((row, index) => {
      const [, temperature, humidity] = row.split(",");
      return `${humidity},${index % 2 === 0 ? index + 1 : row.slice(0, 3)},${temperature}`;
    });
    const reading = readClimate(table(numbered, "relative_humidity_pct,Month,temperature_C"), "x");
    expect(reading.ok && reading.value.temperature[6]).toBe(18);
    expect(reading.ok && reading.value.relativeHumidity[11]).toBeCloseTo(0.926, 12);
  });

  test("may come with a byte order mark, CRLF or CR, empty lines and a true minus sign", () => {
    const text = `\uFEFF${table(["January,−3.5,90", ...months.slice(1)]).replaceAll("\n", "\r\n")}\r\n\r\n`;
    const reading = readClimate(text, "x");
    expect(reading.ok && reading.value.temperature[0]).toBe(-3.5);
    expect(readClimate(table(months).replaceAll("\n", "\r"), "x").ok).toBe(true);
  });

  test("may say its position with letters, or not at all", () => {
    const lettered = ["# latitude: 33.9° S", "# longitude: 0.449 W"];
    const reading = readClimate(table(months, headings, lettered), "x");
    expect(reading.ok && [reading.value.latitude, reading.value.longitude, reading.value.altitude]).toEqual([
      -33.9,
      -0.449,
      null,
    ]);
  });

  test.each([
    ["# latitude: 95", "latitude"],
    ["# longitude: east", "longitude"],
    ["# altitude: 82 ft", "altitude"],
    ["# latitude: -3 S", "latitude"],
    ["# altitude: 1,5 m", "altitude"],
  ])("refuses the header line %s", (line, label) => {
    expect(problemsOf(table(months, headings, [line]))).toEqual([
      {
        code: "climate-header-value",
        path: [],
        position: { line: 1, column: 1 },
        received: line.split(": ")[1],
        details: { label },
      },
    ]);
  });

  test("refuses eleven months and names the missing one", () => {
    expect(problemsOf(table(months.slice(0, 11)))).toMatchObject([
      { code: "climate-month-missing", position: null, details: { missing: ["December"], rows: 11 } },
    ]);
  });

  test("refuses a month twice with both lines", () => {
    const problems = problemsOf(table([...months, "January,3.8,90.5"]));
    expect(problems).toMatchObject([
      { code: "climate-month-twice", position: { line: 18 }, received: "January", details: { firstLine: 6 } },
    ]);
    expect(codesOf(withRow(3, "January,1,90"))).toEqual(["climate-month-missing", "climate-month-twice"]);
  });

  test("refuses months out of order at the first one out of place", () => {
    const swapped = [months[1]!, months[0]!, ...months.slice(2)];
    expect(problemsOf(table(swapped))).toMatchObject([
      { code: "climate-month-order", position: { line: 6 }, received: "February", details: { expected: "January" } },
    ]);
  });

  test.each([
    ["a thirteenth row that is the year", table([...months, "Year,10.7,83"]), ["climate-month-unknown"]],
    ["a month thirteen", withRow(11, "13,3.7,92.6"), ["climate-month-unknown"]],
    ["an unknown month", withRow(2, "Marz,6.3,82.5"), ["climate-month-unknown"]],
    ["a missing column", table(months, "month,temperature_C"), ["column-missing"]],
    [
      "an extra column",
      table(
        months.map((row) => `${row},1`),
        `${headings},wind`,
      ),
      ["column-unknown"],
    ],
    [
      "a column twice",
      table(
        months.map((row) => `${row},1`),
        `${headings},month`,
      ),
      ["column-twice"],
    ],
    ["another heading", table(months, "month,temp,relative_humidity_pct"), ["column-missing", "column-unknown"]],
    ["no headings", table(months, months[0]!), ["column-missing"]],
    ["semicolons", table(months).replaceAll(",", ";"), ["table-separator"]],
    ["tabs", table(months).replaceAll(",", "\t"), ["table-separator"]],
    ["an empty text", "", ["table-empty"]],
    ["blank lines only", "\uFEFF \n\n", ["table-empty"]],
    ["a header and nothing else", head.join("\n"), ["table-empty"]],
    ["headings and no rows", table([]), ["table-empty"]],
    ["a null character", table(months).replace("3.8", "\u0000"), ["table-not-text"]],
    ["bytes of another encoding", table(months).replace("De", "D\uFFFD"), ["table-not-text"]],
    ["an open quotation mark", withRow(4, 'May,"13.8,74.2'), ["table-quotes"]],
    ["text for a number", withRow(4, "May,mild,74.2"), ["cell-not-number"]],
    ["an empty cell", withRow(4, "May,,74.2"), ["cell-empty"]],
    ["full-width digits", withRow(4, "May,１３.８,74.2"), ["cell-not-number"]],
    ["not a number", withRow(4, "May,NaN,74.2"), ["cell-not-number"]],
    ["infinity", withRow(4, "May,Infinity,74.2"), ["cell-not-number"]],
    ["an exponent", withRow(4, "May,1e308,74.2"), ["climate-temperature-range"]],
    ["hexadecimal", withRow(4, "May,0x10,74.2"), ["cell-not-number"]],
    ["a unit in the cell", withRow(4, "May,13.8 °C,74.2"), ["cell-not-number"]],
    ["a formula", withRow(4, "May,=1+1,74.2"), ["cell-not-number"]],
    ["kelvin", withRow(4, "May,287.0,74.2"), ["climate-temperature-range"]],
    ["Fahrenheit", withRow(6, "July,64.4,74.2"), ["climate-temperature-range"]],
    ["relative humidity over 100 %", withRow(4, "May,13.8,100.1"), ["climate-humidity-range"]],
    ["negative relative humidity", withRow(4, "May,13.8,-5"), ["climate-humidity-range"]],
    ["relative humidity of nothing", withRow(4, "May,13.8,0"), ["climate-humidity-range"]],
    ["relative humidity of 5500 %", withRow(4, "May,13.8,5500"), ["climate-humidity-range"]],
    ["one fraction for per cent", withRow(4, "May,13.8,0.742"), ["climate-humidity-fraction"]],
    [
      "a prototype for a heading",
      table(months, "__proto__,temperature_C,relative_humidity_pct"),
      ["column-missing", "column-unknown"],
    ],
    ["a prototype for a month", withRow(0, "__proto__,3.8,90.5"), ["climate-month-unknown"]],
  ])("refuses %s", (_, text, codes) => {
    expect(codesOf(text)).toEqual(codes);
  });

  test("tells a column of fractions once, with how many", () => {
    const fractions = months.map((row) => row.replace(/[\d.]+$/, "0.9"));
    expect(problemsOf(table(fractions))).toMatchObject([
      { code: "climate-humidity-fraction", position: { line: 6 }, received: "0.9", details: { percent: 90, rows: 12 } },
    ]);
  });

  test("tells decimal commas once, with their lines", () => {
    const commas = months.map((row) => row.replaceAll(".", ","));
    const problems = problemsOf(table(commas));
    expect(problems).toMatchObject([
      { code: "row-length", position: { line: 6 }, details: { columns: 3, cells: 5, rows: 12 } },
    ]);
    expect(problems[0]?.details.lines).toHaveLength(10);
    expect(problemsOf(withRow(4, 'May,"13,8",74.2'))).toMatchObject([
      { code: "cell-decimal-comma", details: { write: "13.8" } },
    ]);
  });

  test("lists every problem at once, ordered by line", () => {
    const rows = months.map((row, index) =>
      index === 8 ? "September,14.9,140" : index === 2 ? "March,warm,82.5" : row,
    );
    const text = table(rows, headings, ["# altitude: high"]);
    expect(problemsOf(text).map((problem) => [problem.position?.line, problem.code])).toEqual([
      [1, "climate-header-value"],
      [5, "cell-not-number"],
      [11, "climate-humidity-range"],
    ]);
  });

  test("takes the limits themselves", () => {
    const reading = readClimate(table(["January,-80,100", "February,55,1.1", ...months.slice(2)]), "x");
    expect(reading.ok && reading.value.relativeHumidity.slice(0, 2)).toEqual([1, expect.closeTo(0.011, 12)]);
    expect(codesOf(withRow(0, "January,-80.1,90"))).toEqual(["climate-temperature-range"]);
    expect(codesOf(withRow(0, "January,55.1,90"))).toEqual(["climate-temperature-range"]);
    expect(codesOf(withRow(0, "January,5,1"))).toEqual(["climate-humidity-fraction"]);
  });

  test("stops at another kind of file, quickly", () => {
    const long = table(Array.from({ length: 5000 }, () => "1,2,3"));
    expect(problemsOf(long).filter((problem) => problem.code === "climate-too-many-rows")).toMatchObject([
      { position: { line: 30 }, details: { rows: 5000 } },
    ]);
    expect(codesOf("1,2,3\n".repeat(50_000))).toEqual(["climate-too-long"]);
  });

  test("repeats no more than a piece of a very long line", () => {
    const [problem] = problemsOf(withRow(0, `${"x".repeat(5000)},1,50`));
    expect(problem?.received).toHaveLength(81);
  });
});
