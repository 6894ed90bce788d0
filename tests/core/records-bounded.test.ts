import { createRecordReader, readRecords } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { createOrderFinder } from "../../packages/core/src/records/date-order.ts";
import { readMoment, secondOfDay } from "../../packages/core/src/records/moment.ts";
import { howMany } from "../how-many.ts";

/** Work is counted in rows and looks at cells, never in seconds. */

describe("Weather records of any length", () => {
  const ROWS = howMany(50_000, 250_000);
  it(`${ROWS} rows in one text are read`, () => {
    const start = Date.UTC(1990, 0, 1);
    const rows = Array.from({ length: ROWS }, (_, hour) => {
      const time = new Date(start + hour * 3_600_000).toISOString().slice(0, 16).replace("T", " ");
      return `${time},10,80`;
    });
    const reading = readRecords(["time,temperature,rh", ...rows].join("\n"));
    expect(reading.ok && reading.value.rows).toBe(ROWS);
  });

  it("dates whose order stays open are looked at once each, and no more than a limited number waits", () => {
    const finder = createOrderFinder(null);
    let looks = 0;
    const dates = (many: number): string[] => {
      looks += many;
      return Array<string>(many).fill("03/04/2005");
    };
    while (!finder.settled()) finder.take(dates(100));
    expect(looks).toBe(20_000);
    expect(finder.order()).toBeNull();
  });

  it("open order is asked for", () => {
    const reader = createRecordReader();
    reader.take("date,temperature,rh\n");
    for (let piece = 0; piece < 300; piece += 1) reader.take("03/04/2005 13:00,10,80\n".repeat(100));
    const reading = reader.finish();
    expect(reading.ok ? [] : reading.problems).toMatchObject([
      { code: "records-date", details: { fault: "order of day and month", count: 30_000 } },
    ]);
  });

  it("the order is found in any row before the limit, whatever the pieces", () => {
    const rows = [..."x".repeat(5000)].map(() => "03/04/2005,10,80");
    const text = ["date,temperature,rh", ...rows, "13/04/2005,10,80", ""].join("\n");
    for (const size of [10, 1000, text.length]) {
      const reader = createRecordReader();
      for (let start = 0; start < text.length; start += size) reader.take(text.slice(start, start + size));
      const reading = reader.finish();
      const dates = reading.ok ? [] : reading.problems.filter(({ code }) => code === "records-date");
      expect(dates).toEqual([]);
    }
  });

  it("rows are taken at once where date and month stand in columns of their own", () => {
    const text = `year,month,day,temperature,rh\n${"2005,4,3,10,80\n".repeat(100)}`;
    const reading = readRecords(text);
    expect(reading.ok ? [] : reading.problems.map(({ code }) => code)).not.toContain("records-date");
  });

  it("a cell too long for a date is none, whatever it repeats", () => {
    const long = `2005-01-01${" ".repeat(2_000_000)}13:00`;
    expect(readMoment(long, null)).toBe("date");
    expect(secondOfDay(`13:00${" ".repeat(2_000_000)}x`)).toBeNull();
  });
});
