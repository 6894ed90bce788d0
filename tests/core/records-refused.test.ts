import { describe, expect, test } from "vitest";
import type { Problem } from "../../packages/core/src/problems/types.ts";
import { climateTable } from "../../packages/core/src/records/climate-table.ts";
import { readRecords } from "../../packages/core/src/records/record-reader.ts";
import type { RecordOptions } from "../../packages/core/src/records/types.ts";
import { EVERY_HOUR, isoRecords, isoTime, type MadeUpReading, madeUpReadings } from "./record-years.ts";

const year = madeUpReadings([2003]);
const problemsOf = (text: string, options: RecordOptions = {}): Problem[] => {
  const reading = readRecords(text, options);
  return reading.ok ? [] : reading.problems;
};
const codesOf = (text: string, options: RecordOptions = {}): string[] =>
  problemsOf(text, options).map(({ code }) => code);

/** The made-up year with the row of one day replaced (line = day of the year + 1). */
const withRow = (line: number, row: (reading: MadeUpReading) => string): string => {
  const lines = isoRecords(year).split("\n");
  lines[line - 1] = row(year[line - 2]!);
  return lines.join("\n");
};

describe("missing readings", () => {
  const without = (share: number, month: number): string => {
    const days = year.filter((reading) => reading.month === month).length;
    return isoRecords(year.filter((reading) => reading.month !== month || reading.day > days * share));
  };

  test("a month with 80 % of its readings counts, and the missing ones are told", () => {
    const reading = readRecords(without(0.2, 4));
    expect(reading.ok && reading.value).toMatchObject({ used: 359, missing: 6 });
    expect(reading.ok && reading.value.months[3]).toMatchObject({ used: 24, expected: 30 });
    const table = reading.ok
      ? climateTable(reading.value, {
          place: "x",
          country: null,
          latitude: null,
          longitude: null,
          altitude: null,
          origin: null,
          terms: null,
          acknowledgement: null,
        })
      : "";
    expect(table).toContain("# records: 359 rows, 359 readings used, 6 missing (1.6 %)");
    expect(table).toContain("# missing by month: April 6 of 30 (20.0 %)");
  });

  test("a month with fewer is refused, with what there is", () => {
    expect(problemsOf(without(0.24, 4))).toMatchObject([
      { code: "records-incomplete", position: null, details: { months: ["April 23 of 30"], leastPercent: 80 } },
    ]);
  });

  test.each(["", "NA", "NaN", "null", "-", "--", "-9999", "-999.9", "9999", "999.9", "-99.9", "M"])(
    "a cell “%s” is a missing reading and never a value",
    (cell) => {
      const text = withRow(32, (reading) => `${isoTime(reading)},${cell},80`);
      const reading = readRecords(text);
      expect(reading.ok && reading.value).toMatchObject({ rows: 365, used: 364, missing: 1 });
      expect(reading.ok && reading.value.months[0]).toMatchObject({ temperature: 5, used: 30, expected: 31 });
      const humidity = readRecords(withRow(32, (row) => `${isoTime(row)},5,${cell}`));
      expect(humidity.ok && humidity.value.used).toBe(364);
    },
  );

  test("eleven months are no year", () => {
    expect(problemsOf(isoRecords(year.filter(({ month }) => month !== 12)))).toMatchObject([
      { code: "records-incomplete", details: { months: ["December 0 of 31"] } },
    ]);
  });

  test("half a month at the start of one year is half a month missing", () => {
    const text = isoRecords(year.filter(({ month, day }) => month > 1 || day > 15));
    expect(problemsOf(text)).toMatchObject([{ code: "records-incomplete", details: { months: ["January 16 of 31"] } }]);
  });

  test("a whole year lost within the period is missing", () => {
    const gap = madeUpReadings([2001, 2003]);
    expect(problemsOf(isoRecords(gap))[0]).toMatchObject({ code: "records-incomplete" });
    expect(problemsOf(isoRecords(gap))[0]!.details.months).toContain("January 62 of 93");
    const long = madeUpReadings([2001, 2002, 2003, 2005, 2006]);
    const reading = readRecords(isoRecords(long));
    expect(reading.ok && reading.value.missing).toBe(366);
  });

  test("rows without readings throughout are told as such", () => {
    const text = isoRecords(year.map((reading) => ({ ...reading, temperature: Number.NaN })));
    expect(problemsOf(text)).toMatchObject([{ code: "records-no-readings", details: { rows: 365 } }]);
  });
});

describe("rows of a time already read", () => {
  test("the same values are counted once", () => {
    const reading = readRecords(isoRecords([...year, ...year.slice(0, 40)]));
    expect(reading.ok && reading.value).toMatchObject({ rows: 405, used: 365, repeated: 40, contradicting: 0 });
  });

  test("other values are left out and counted, up to one in a hundred", () => {
    const shifted = (many: number): string =>
      isoRecords([...year, ...year.slice(0, many).map((reading) => ({ ...reading, temperature: 11 }))]);
    const reading = readRecords(shifted(3));
    expect(reading.ok && reading.value).toMatchObject({ used: 365, contradicting: 3 });
    expect(reading.ok && reading.value.months[0]!.temperature).toBe(5);
    expect(problemsOf(shifted(10))).toMatchObject([
      { code: "records-contradicting", details: { contradicting: 10, rows: 375 } },
    ]);
  });

  test("rows may come in any order", () => {
    const reading = readRecords(isoRecords([...year].reverse()));
    expect(reading.ok && reading.value).toMatchObject({ used: 365, firstDay: "2003-01-01", lastDay: "2003-12-31" });
  });
});

describe("the time between readings", () => {
  test("hourly with daily years joined to it is refused", () => {
    const joined = [...madeUpReadings([2001]), ...madeUpReadings([2002], EVERY_HOUR)];
    expect(codesOf(isoRecords(joined))).toEqual(["records-incomplete"]);
  });

  test("a few years of closer readings are refused: they would count for more", () => {
    const joined = [...madeUpReadings([2001, 2002, 2003]), ...madeUpReadings([2004], [0, 12])];
    expect(problemsOf(isoRecords(joined))[0]).toMatchObject({
      code: "records-interval-changes",
      details: { month: "January", interval: 86_400, present: 155, expected: 124 },
    });
  });

  test("monthly means are no records", () => {
    const monthly = madeUpReadings([2001, 2002]).filter(({ day }) => day === 1);
    expect(problemsOf(isoRecords(monthly))).toMatchObject([{ code: "records-interval", details: { days: 31 } }]);
  });

  test("one reading is none", () => {
    expect(codesOf(isoRecords(year.slice(0, 1)))).toEqual(["records-one-reading"]);
  });

  test("every three hours is well", () => {
    const reading = readRecords(isoRecords(madeUpReadings([2001], [0, 3, 6, 9, 12, 15, 18, 21])));
    expect(reading.ok && reading.value).toMatchObject({ interval: 10_800, used: 2920, missing: 0 });
  });
});

describe("impossible values", () => {
  test.each([
    ["relative humidity 140 %", "5,140", "records-humidity-range"],
    ["relative humidity 105.1 %", "5,105.1", "records-humidity-range"],
    ["relative humidity 0 %", "5,0", "records-humidity-range"],
    ["negative relative humidity", "5,-3", "records-humidity-range"],
    ["−90 °C", "-90,80", "records-temperature-range"],
    ["60 °C", "60,80", "records-temperature-range"],
    ["kelvin", "278.15,80", "records-temperature-range"],
    ["1e308", "1e308,80", "records-temperature-range"],
    ["infinity", "Infinity,80", "records-number"],
    ["a unit", "5 °C,80", "records-number"],
    ["full-width digits", "５,80", "records-number"],
    ["hexadecimal", "0x10,80", "records-number"],
    ["both decimal signs", '"1,005.5",80', "records-number"],
  ])("%s is refused with its line", (_, values, code) => {
    expect(problemsOf(withRow(100, (row) => `${isoTime(row)},${values}`))).toMatchObject([
      { code, position: { line: 100 } },
    ]);
  });

  test("a dew point clearly above the temperature is refused, a sensor's few per cent are counted as saturated", () => {
    const text = (dewPoint: number): string =>
      isoRecords(
        year.map((r) => ({ ...r, humidity: r.temperature + dewPoint })),
        "date,temp,dew point",
      );
    expect(problemsOf(text(1))).toMatchObject([
      { code: "records-humidity-range", details: { role: "dew point", count: 365 } },
    ]);
    const foggy = readRecords(text(0.5));
    expect(foggy.ok && foggy.value).toMatchObject({ countedAsSaturated: 365 });
    expect(foggy.ok && foggy.value.months[0]!.relativeHumidity).toBe(1);
    const saturated = readRecords(text(0));
    expect(saturated.ok && saturated.value.countedAsSaturated).toBe(0);
  });

  test("102 % is counted as saturated and told", () => {
    const reading = readRecords(withRow(20, (row) => `${isoTime(row)},5,102`));
    expect(reading.ok && reading.value.countedAsSaturated).toBe(1);
  });

  test("a wet bulb warmer than the air, or too cold for any air, is refused", () => {
    const text = (wetBulb: number): string =>
      isoRecords(
        year.map((r) => ({ ...r, humidity: r.temperature + wetBulb })),
        "date,temp,wet bulb",
      );
    expect(codesOf(text(2), { altitude: 0 })).toEqual(["records-humidity-range"]);
    expect(codesOf(text(-14), { altitude: 0 })).toEqual(["records-humidity-range"]);
  });

  test("fractions without saying so are refused", () => {
    expect(problemsOf(isoRecords(year.map((r) => ({ ...r, humidity: 0.8 }))))).toMatchObject([
      { code: "records-humidity-fraction", details: { greatest: 0.8 } },
    ]);
  });

  test("decimals of two kinds are refused", () => {
    const text = isoRecords(year).replaceAll(",", ";").replace(";80\n", ";80,5\n");
    expect(codesOf(text.replace("2003-12-31;16;80", "2003-12-31;16;80.5"))).toEqual(["records-decimal-separator"]);
  });

  test("a comma between thousands of pascals is no decimal comma", () => {
    const text = isoRecords(year, "date;temp;vp_Pa").replaceAll(",", ";").replaceAll(/;80$/gm, ";1,005");
    expect(codesOf(text)[0]).toBe("records-number");
  });
});

describe("dates", () => {
  test.each([
    ["30 February", "2003-02-30", "day of month"],
    ["month 13", "2003-13-01", "day of month"],
    ["day 0", "2003-04-00", "day of month"],
    ["29 February of a common year", "2003-02-29", "day of month"],
    ["two digits of a year", "03/04/05", "two-digit year"],
    ["25 o'clock", "2003-04-10 25:00", "time"],
    ["24:30", "2003-04-10 24:30", "time"],
    ["13 pm", "2003-04-10 13:00 pm", "time"],
    ["a word", "yesterday", "date"],
    ["a serial number", "37721", "date"],
    ["nothing", "", "date"],
    ["a prototype", "__proto__", "date"],
  ])("%s is refused", (_, date, fault) => {
    expect(problemsOf(withRow(100, () => `${date},8,80`))).toMatchObject([
      { code: "records-date", position: { line: 100 }, received: date, details: { fault } },
    ]);
  });

  test("29 February of a leap year is a day", () => {
    const reading = readRecords(isoRecords(madeUpReadings([2004])));
    expect(reading.ok && reading.value.months[1]).toMatchObject({ used: 29, expected: 29 });
  });
});

describe("the file", () => {
  test.each<[string, string, string[]]>([
    ["empty", "", ["records-empty"]],
    ["only comments", "# one\n# two\n", ["records-empty"]],
    ["binary", "date,temp,rh\n\u0000\u0001", ["records-binary"]],
    ["another encoding", "date,temp \uFFFDC,rh\n", ["records-binary"]],
    ["one endless line", "x".repeat(30_000), ["records-line-too-long"]],
    ["headings alone", "date,temp,rh\n", ["records-no-readings"]],
    [
      "no headings",
      "2003-01-01,5,80\n2003-01-02,5,80",
      ["records-column-missing", "records-column-missing", "records-column-missing"],
    ],
    ["no humidity", "date,temp\n2003-01-01,5", ["records-column-missing"]],
    ["vapour pressure without a unit", "date,temp,vp\n2003-01-01,5,700", ["records-unit-missing"]],
    ["two temperatures", "date,temp,air temperature,rh\n2003-01-01,5,6,80", ["records-column-ambiguous"]],
  ])("%s is refused", (_, text, codes) => {
    expect(codesOf(text)).toEqual(codes);
  });

  test("two columns of one heading are told by their places, which can be named", () => {
    const text = "date,Temp,Temp,rh\n2003-01-01,5,6,80\n";
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: "records-column-ambiguous", details: { choices: ["column 2", "column 3"] } });
    const named = readRecords(text, { columns: { temperature: "column 3" } });
    expect(!named.ok && named.problems.map(({ code }) => code)).toEqual(["records-one-reading"]);
  });

  test("what is missing is told by what it holds, with the headings there are", () => {
    expect(problemsOf("when;temp;humedad\n2003;5;80")).toMatchObject([
      {
        code: "records-column-missing",
        position: { line: 1 },
        details: { role: "date", headings: ["when", "temp", "humedad"] },
      },
      { code: "records-column-missing", details: { role: "humidity" } },
    ]);
  });

  test("a column named and not there is told", () => {
    const problems = problemsOf(isoRecords(year), { columns: { temperature: "T2" } });
    expect(problems[0]).toMatchObject({
      code: "records-column-named-missing",
      details: { role: "temperature", named: "T2" },
    });
  });

  test("ragged rows and open quotation marks are told with their lines, counted", () => {
    const lines = isoRecords(year).split("\n");
    for (const line of [50, 60, 70, 80, 90, 100, 110]) lines[line - 1] = `${lines[line - 1]!},1`;
    lines[200] = '2003-07-19,"11,80';
    expect(problemsOf(lines.join("\n"))).toMatchObject([
      {
        code: "records-row-cells",
        position: { line: 50 },
        details: { count: 7, lines: ["50", "60", "70", "80", "90"], expected: 3, found: 4 },
      },
      { code: "records-row-unreadable", position: { line: 201 } },
    ]);
  });

  test("decimal commas between commas are ragged rows", () => {
    expect(codesOf(isoRecords(year).replaceAll(",80", ",5,80,1"))).toEqual(["records-row-cells"]);
  });

  test("every kind of problem is told at once", () => {
    const lines = isoRecords(year.filter(({ month }) => month !== 11)).split("\n");
    lines[4] = "2003-01-04,5,140";
    lines[9] = "2003-01-09,x,80";
    lines[12] = "2003-13-12,5,80";
    expect(codesOf(lines.join("\n"))).toEqual([
      "records-humidity-range",
      "records-number",
      "records-date",
      "records-incomplete",
    ]);
  });
});
