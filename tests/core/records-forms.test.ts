import { describe, expect, test } from "vitest";
import { saturationPressureOverWater } from "../../packages/core/src/air/saturation-pressure.ts";
import { createRecordReader, readRecords } from "../../packages/core/src/records/record-reader.ts";
import type { RecordMonths, RecordOptions } from "../../packages/core/src/records/types.ts";
import { EVERY_HOUR, isoRecords, type MadeUpReading, madeUpReadings, temperatureOf, two } from "./record-years.ts";

const NAMES = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const readings = madeUpReadings([2003]);

function recordsWith(head: string, row: (reading: MadeUpReading) => string, from = readings): string {
  return [head, ...from.map(row)].join("\n");
}

function monthsOf(text: string, options: RecordOptions = {}): RecordMonths {
  const reading = readRecords(text, options);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  return reading.value;
}

/** Every form of the same made-up year gives the same months. */
function expectMadeUpYear(records: RecordMonths, temperatureDigits = 9): void {
  records.months.forEach((month, index) => {
    const temperature = temperatureOf(index + 1);
    expect(month.temperature).toBeCloseTo(temperature, temperatureDigits);
    expect(month.vapourPressure / saturationPressureOverWater(temperature)).toBeCloseTo(0.8, 3);
    expect(month.used).toBeGreaterThanOrEqual(28);
  });
}

describe("forms of the date", () => {
  test.each<[string, string, (reading: MadeUpReading) => string]>([
    ["ISO", "date", (r) => `${r.year}-${two(r.month)}-${two(r.day)}`],
    ["ISO with T, seconds and zone", "timestamp", (r) => `${r.year}-${two(r.month)}-${two(r.day)}T13:00:00.000Z`],
    ["ISO with an offset", "Date Time", (r) => `${r.year}-${two(r.month)}-${two(r.day)} 13:00+01:00`],
    ["ISO with bare hours", "date", (r) => `${r.year}-${two(r.month)}-${two(r.day)} 13`],
    ["eight digits", "DATE", (r) => `${r.year}${two(r.month)}${two(r.day)}`],
    ["eight digits and the hour", "Date", (r) => `${r.year}${two(r.month)}${two(r.day)}13`],
    ["eight digits, a colon and the time", "valid", (r) => `${r.year}${two(r.month)}${two(r.day)}:1310`],
    ["dots", "date", (r) => `${r.day}.${r.month}.${r.year}`],
    ["dots and the time", "date", (r) => `${two(r.day)}.${two(r.month)}.${r.year} 07:30`],
    ["slashes, day first", "date", (r) => `${r.day}/${r.month}/${r.year}`],
    ["slashes, month first", "date", (r) => `${two(r.month)}/${two(r.day)}/${r.year}`],
    ["slashes, year first", "date", (r) => `${r.year}/${r.month}/${r.day}`],
    ["hyphens, day first", "date", (r) => `${two(r.day)}-${two(r.month)}-${r.year} 1:00 pm`],
    ["a month's name", "date", (r) => `${r.day} ${NAMES[r.month - 1]!} ${r.year}`],
    ["a month's name with hyphens", "date", (r) => `${two(r.day)}-${NAMES[r.month - 1]!.toUpperCase()}-${r.year}`],
    ["a month's name first", "date", (r) => `"${NAMES[r.month - 1]!} ${r.day}, ${r.year} 12:00 AM"`],
    ["a lone column of times", "time", (r) => `${r.year}-${two(r.month)}-${two(r.day)} 00:00`],
  ])("%s", (_, head, date) => {
    expectMadeUpYear(monthsOf(recordsWith(`${head},temp,rh`, (r) => `${date(r)},${r.temperature},80`)));
  });

  test("columns of year, month, day, hour and minute", () => {
    const text = recordsWith(
      "Year,Month,Day,Hour,Minute,Temp,RH",
      (r) => `${r.year},${r.month},${r.day},0,5,${r.temperature},80`,
    );
    expectMadeUpYear(monthsOf(text));
  });

  test("a date and a time in columns of their own, and hours 1 to 24", () => {
    const hourly = madeUpReadings([2003], EVERY_HOUR);
    const clock = recordsWith(
      "date,time,temp,rh",
      (r) => `${r.year}-${two(r.month)}-${two(r.day)},${two(r.hour)}:00,${r.temperature},80`,
      hourly,
    );
    expect(monthsOf(clock)).toMatchObject({ interval: 3600, used: 8760, missing: 0, repeated: 0 });
    const counted = recordsWith(
      "date,hour,temp,rh",
      (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.hour + 1},${r.temperature},80`,
      hourly,
    );
    const records = monthsOf(counted);
    expect(records).toMatchObject({ interval: 3600, used: 8760, missing: 0, repeated: 0 });
    expectMadeUpYear(records);
    const hundreds = recordsWith(
      "date,time,temp,rh",
      (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.hour}00,${r.temperature},80`,
      hourly,
    );
    expect(monthsOf(hundreds)).toMatchObject({ used: 8760, missing: 0 });
  });

  test("no year at all is one typical year", () => {
    const hourly = madeUpReadings([2003], EVERY_HOUR);
    const records = monthsOf(
      recordsWith(
        "month,day,hour,temperature_C,relative_humidity_pct",
        (r) => `${r.month},${r.day},${r.hour + 1},${r.temperature},80`,
        hourly,
      ),
    );
    expectMadeUpYear(records);
    expect(records).toMatchObject({ typicalYear: true, firstDay: "01-01", lastDay: "12-31", missing: 0 });
  });

  test("months picked from different years are one typical year, and nothing is missing between them", () => {
    const picked = madeUpReadings([1976, 1983, 1995], EVERY_HOUR).filter(({ year, month, day }) => {
      const from = month < 5 ? 1983 : month < 9 ? 1976 : 1995;
      return year === from && !(month === 2 && day === 29);
    });
    const records = monthsOf(isoRecords(picked));
    expect(records).toMatchObject({ typicalYear: true, used: 8760, missing: 0 });
    expectMadeUpYear(records);
  });

  test("dates that never tell day from month can be told", () => {
    const early = madeUpReadings([2003]).filter(({ day }) => day <= 12);
    const text = recordsWith("date,temp,rh", (r) => `${r.day}/${r.month}/${r.year},1,80`, early);
    const refused = readRecords(text);
    expect(!refused.ok && refused.problems[0]).toMatchObject({
      code: "records-date",
      position: { line: 2 },
      received: "1/1/2003",
      details: { fault: "order of day and month", count: 144 },
    });
    const told = readRecords(text, { dateOrder: "day first" });
    expect(!told.ok && told.problems.map(({ code }) => code)).toEqual(["records-incomplete"]);
  });

  test("the order told is kept to", () => {
    const text = recordsWith("date,temp,rh", (r) => `${two(r.month)}/${two(r.day)}/${r.year},${r.temperature},80`);
    const wrong = readRecords(text, { dateOrder: "day first" });
    expect(!wrong.ok && wrong.problems[0]).toMatchObject({ code: "records-date", details: { fault: "day of month" } });
    expectMadeUpYear(monthsOf(text, { dateOrder: "month first" }));
  });
});

describe("forms of the table", () => {
  test.each([
    ["semicolons and decimal commas", ";", (value: number) => value.toFixed(1).replace(".", ",")],
    ["tabs and decimal commas", "\t", (value: number) => value.toFixed(1).replace(".", ",")],
    ["semicolons and decimal points", ";", (value: number) => value.toFixed(1)],
    ["commas and quoted decimal commas", ",", (value: number) => `"${value.toFixed(1).replace(".", ",")}"`],
    ["bars", "|", (value: number) => value.toFixed(1)],
  ])("%s", (_, delimiter, write) => {
    const text = recordsWith(["date", "temp", "rh"].join(delimiter), (r) =>
      [`${r.year}-${two(r.month)}-${two(r.day)}`, write(r.temperature), write(80)].join(delimiter),
    );
    expectMadeUpYear(monthsOf(text));
  });

  test("lines above the headings, comments, empty lines, a byte order mark, CRLF and a trailing delimiter are no readings", () => {
    const text = recordsWith("date,temp,rh", (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.temperature},80,`);
    const framed = `\uFEFFStation 12, meadow\r\nheight,94\r\n# remark\r\n\r\n${text.replaceAll("\n", "\r\n")}\r\n\r\n# end\r\n`;
    const records = monthsOf(framed);
    expectMadeUpYear(records);
    expect(records.rows).toBe(365);
  });

  test("pieces of any length give the same as the whole", () => {
    const text = recordsWith("date,temp,rh", (r) => `${r.day}/${r.month}/${r.year},${r.temperature},80`).replaceAll(
      "\n",
      "\r\n",
    );
    const whole = monthsOf(text);
    for (const length of [1, 7, 100, 4096]) {
      const reader = createRecordReader();
      for (let start = 0; start < text.length; start += length) reader.take(text.slice(start, start + length));
      const reading = reader.finish();
      expect(reading.ok && reading.value).toEqual(whole);
    }
  });

  test("line numbers are those of the file, comments and empty lines counted", () => {
    const lines = recordsWith(
      "date,temp,rh",
      (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.temperature},80`,
    ).split("\n");
    lines.splice(1, 0, "# remark", "");
    lines[200] = "2003-07-17,hot,80";
    const reader = createRecordReader();
    for (const line of lines) reader.take(`${line}\n`);
    const reading = reader.finish();
    expect(!reading.ok && reading.problems).toMatchObject([
      { code: "records-number", position: { line: 201 }, received: "hot" },
    ]);
  });
});

describe("columns", () => {
  test.each([
    "date,temperature,humidity",
    "Date,Temp (°C),RH (%)",
    "DATE,T [degC],Relative Humidity [%]",
    "time stamp,air temperature,rel. humidity",
    "date,temp_c,rh_pct",
    "date,TG,HU",
    "date,dry bulb temperature,relative_humidity",
    "datetime,T2M,relhum",
    "date,Outdoor Temperature(°C),Outdoor Humidity(%)",
  ])("the headings %s are understood", (head) => {
    expectMadeUpYear(monthsOf(recordsWith(head, (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.temperature},80`)));
  });

  test("columns can be named, whatever their headings, and other columns are left alone", () => {
    const text = recordsWith(
      "x,when,temp,feuchte,aussen",
      (r) => `junk,${r.year}-${two(r.month)}-${two(r.day)},99,80,${r.temperature}`,
    );
    const columns = { date: "When", temperature: "AUSSEN", "relative humidity": "feuchte" } as const;
    const records = monthsOf(text, { columns });
    expectMadeUpYear(records);
    expect(records.columnsRead).toBe("temperature from “aussen” [°C], relative humidity from “feuchte” [%]");
  });

  test("of several humidities the relative humidity is read, and it is told", () => {
    const text = recordsWith(
      "date,temp,dew point,rh",
      (r) => `${r.year}-${two(r.month)}-${two(r.day)},${r.temperature},-40,80`,
    );
    expect(monthsOf(text).columnsRead).toContain("relative humidity from “rh”");
    expect(monthsOf(text, { columns: { "dew point": "dew point" } }).columnsRead).toContain(
      "dew point from “dew point” [°C]",
    );
  });
});

describe("units and kinds of humidity", () => {
  const row = (value: (temperature: number) => string) => (r: MadeUpReading) =>
    `${r.year}-${two(r.month)}-${two(r.day)},${value(r.temperature)}`;
  const dewPointOf = (temperature: number): number => {
    const ratio = Math.log((0.8 * saturationPressureOverWater(temperature)) / 610.5);
    return (237.3 * ratio) / (17.269 - ratio);
  };
  const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

  test.each<[string, string, (temperature: number) => string, RecordOptions]>([
    ["dew point", "date,temp,dewpoint", (t) => `${t},${dewPointOf(t).toFixed(3)}`, {}],
    [
      "dew point in °F, as the temperature",
      "date,temp_F,dew point",
      (t) => `${fahrenheit(t)},${fahrenheit(dewPointOf(t)).toFixed(3)}`,
      {},
    ],
    ["°F by the heading in brackets", "date,Temperature [°F],RH", (t) => `${fahrenheit(t)},80`, {}],
    ["°F by an option", "date,temp,rh", (t) => `${fahrenheit(t)},80`, { temperatureUnit: "°F" }],
    ["kelvin", "date,temperature (K),rh", (t) => `${(t + 273.15).toFixed(2)},80`, {}],
    ["humidity as a fraction by the heading", "date,temp,rh (fraction)", (t) => `${t},0.8`, {}],
    ["humidity as a fraction by an option", "date,temp,rh", (t) => `${t},0.8`, { humidityUnit: "fraction" }],
    [
      "vapour pressure in hPa",
      "date,temp,vapour_pressure_hPa",
      (t) => `${t},${((0.8 * saturationPressureOverWater(t)) / 100).toFixed(3)}`,
      {},
    ],
    [
      "vapour pressure in mbar",
      "date,temp,vapor pressure (mbar)",
      (t) => `${t},${((0.8 * saturationPressureOverWater(t)) / 100).toFixed(3)}`,
      {},
    ],
    [
      "vapour pressure in kPa by an option",
      "date,temp,vp",
      (t) => `${t},${((0.8 * saturationPressureOverWater(t)) / 1000).toFixed(5)}`,
      { pressureUnit: "kPa" },
    ],
    [
      "vapour pressure in Pa",
      "date,temp,vp_Pa",
      (t) => `${t},${(0.8 * saturationPressureOverWater(t)).toFixed(1)}`,
      {},
    ],
  ])("%s", (_, head, value, options) => {
    expectMadeUpYear(monthsOf(recordsWith(head, row(value)), options));
  });

  test("a dew point in frost is over liquid water: −10 °C at −5 °C is 285.58 Pa", () => {
    const records = monthsOf(
      recordsWith(
        "date,temp,dew point",
        row(() => "-5,-10"),
      ),
    );
    expect(records.months[0]!.vapourPressure).toBeCloseTo(285.583, 3);
  });

  test("wet bulb needs the station's altitude", () => {
    const text = recordsWith(
      "date,temp,wet bulb",
      row(() => "20,15"),
    );
    const refused = readRecords(text);
    expect(!refused.ok && refused.problems).toMatchObject([
      { code: "records-wet-bulb-altitude", position: { line: 1 } },
    ]);
    // e = 610.5·exp(17.269·15/252.3) − 6.53e-4·(1 + 9.44e-4·15)·101325·5 = 1704.41 − 335.51 Pa, worked in python.
    expect(monthsOf(text, { altitude: 0 }).months[0]!.vapourPressure).toBeCloseTo(1368.897, 3);
    expect(monthsOf(text, { altitude: 1500 }).months[0]!.vapourPressure).toBeGreaterThan(1420);
  });
});
