import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CLIMATE_COLUMNS, readClimate } from "../../packages/core/src/climate/read-climate.ts";
import { CLIMATE_WORDINGS } from "../../packages/core/src/problems/word-climate-problems.ts";
import { wordProblem } from "../../packages/core/src/problems/word-problem.ts";
import { RECORD_WORDINGS } from "../../packages/core/src/problems/word-record-problems.ts";
import { readRecords } from "../../packages/core/src/records/record-reader.ts";
import { isoRecords, madeUpReadings } from "./record-years.ts";

const sources = ["climate", "records"].flatMap((folder) => {
  const path = join(import.meta.dirname, "../../packages/core/src", folder);
  return readdirSync(path).map((file) => readFileSync(join(path, file), "utf8"));
});
const codes = new Set(
  sources.flatMap((text) => [...text.matchAll(/"((?:climate|records)-[a-z-]+)"/g)].map(([, code]) => code!)),
);

describe("wordings of climates and weather records", () => {
  test("every code that is given has one, and none is left over", () => {
    expect([...codes].sort()).toEqual(Object.keys({ ...CLIMATE_WORDINGS, ...RECORD_WORDINGS }).sort());
  });

  test("the headings to write are those that are read", () => {
    const reading = readClimate("month,T\nJanuary,3", "x");
    const [problem] = reading.ok ? [] : reading.problems;
    expect(wordProblem(problem!).write[0]).toBe(CLIMATE_COLUMNS.required.join(","));
  });

  test("one slip on many lines is one sentence with its first lines and how many more", () => {
    const year = madeUpReadings([2003]).map((reading) => ({ ...reading, humidity: 140 }));
    const reading = readRecords(isoRecords(year));
    const [problem] = reading.ok ? [] : reading.problems;
    expect(wordProblem(problem!)).toMatchObject({
      line: 2,
      message: "air of 5 °C cannot have a relative humidity of 140 %, also on lines 3, 4, 5 and 6 and on 360 more.",
      expected: "over 0 % and up to 105 % (sensors overshoot in fog), or an empty cell for a missing reading",
      received: "140",
      likelySlip: "The sensor failed.",
    });
  });

  test.each([
    ["287.0", "These are kelvin, not degrees Celsius."],
    ["68.0", "These are degrees Fahrenheit, not Celsius."],
    ["-99.0", null],
  ])("a month of %s °C: %s", (cell, slip) => {
    const reading = readClimate(`month,temperature_C,relative_humidity_pct\nJanuary,${cell},80`, "x");
    const problems = reading.ok ? [] : reading.problems.map(wordProblem);
    expect(problems.find(({ code }) => code === "climate-temperature-range")?.likelySlip).toBe(slip);
  });
});
