import { createRecordReader, readClimate, readMaterialTable, readPriceTable } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { plainNumber } from "../../packages/core/src/tables/plain-number.ts";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const temperatureOf = (cell: string): number | null => {
  const rows = MONTHS.map((month) => `${month},${cell},80`);
  const reading = readClimate(["month,temperature_C,relative_humidity_pct", ...rows].join("\n"), "x");
  return reading.ok ? reading.value.temperature[0]! : null;
};
const conductivityOf = (cell: string): number | null => {
  const reading = readMaterialTable(`name,conductivity_W_mK,mu_dry,sd_m\nboard,${cell},5,\n`, "my.csv");
  return reading.ok ? reading.value[0]!.conductivity : null;
};
const priceOf = (cell: string): number | null => {
  const reading = readPriceTable(`material,per,price\nboard,m2,${cell}\n`, "prices.csv");
  return reading.ok ? reading.value[0]!.price : null;
};
const recordOf = (cell: string): number | null => {
  const reader = createRecordReader();
  const days = Array.from({ length: 365 }, (_, day) => new Date(Date.UTC(2001, 0, day + 1)).toISOString().slice(0, 10));
  reader.take(["date,temperature,rh", ...days.map((day) => `${day},${cell},80`)].join("\n"));
  const reading = reader.finish();
  return reading.ok ? reading.value.months[0]!.temperature : null;
};

describe("A number means the same in every table", () => {
  it.each(["1e1", "12.5", "+4", "007"])("%s", (cell) => {
    const value = Number(cell);
    expect(temperatureOf(cell)).toBe(value);
    expect(recordOf(cell)).toBe(value);
    expect(priceOf(cell)).toBe(value);
  });

  it("a minus sign is a hyphen", () => {
    expect(temperatureOf("\u22123")).toBe(-3);
    expect(recordOf("\u22123")).toBe(-3);
    expect(conductivityOf("4e\u22122")).toBeNull();
    expect(conductivityOf("4e-2")).toBe(0.04);
  });

  it.each(["0x10", "１３", "1_000", "1 000", "12.", ".5", "Infinity", "NaN", "1e999", "=1+1"])("%s is none", (cell) => {
    expect(plainNumber(cell)).toBeNull();
    expect(temperatureOf(cell)).toBeNull();
    expect(conductivityOf(cell)).toBeNull();
    expect(priceOf(cell)).toBeNull();
    expect(recordOf(cell)).toBeNull();
  });
});
