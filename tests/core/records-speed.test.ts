import { expect, test } from "vitest";
import { createRecordReader } from "../../packages/core/src/records/record-reader.ts";
import { EVERY_HOUR, isoRecords, madeUpReadings } from "./record-years.ts";

const TEN_YEARS = [2001, 2002, 2003, 2004, 2005, 2006, 2007, 2008, 2009, 2010];

test("ten years of hourly records are read in under 3 s of processor time", () => {
  const text = isoRecords(madeUpReadings(TEN_YEARS, EVERY_HOUR));
  expect(text.split("\n").length).toBeGreaterThan(87_600);
  const before = process.cpuUsage();
  const reader = createRecordReader();
  for (let start = 0; start < text.length; start += 500_000) reader.take(text.slice(start, start + 500_000));
  const reading = reader.finish();
  const { user, system } = process.cpuUsage(before);
  expect(reading.ok && reading.value.used).toBe(87_648);
  expect((user + system) / 1e6).toBeLessThan(3);
});
