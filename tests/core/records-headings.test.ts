import { readRecords } from "@warmside/core";
import { describe, expect, it } from "vitest";

const DAYS = Array.from({ length: 365 }, (_, day) => new Date(Date.UTC(2001, 0, 1 + day)).toISOString().slice(0, 10));
const rowsOf = (row: (day: string) => string): string => DAYS.map(row).join("\n");
const yearOf = (text: string): { temperature: number; relativeHumidity: number } | string[] => {
  const reading = readRecords(text);
  if (!reading.ok) return reading.problems.map(({ code }) => code);
  const [{ temperature, relativeHumidity }] = reading.value.months as [(typeof reading.value.months)[0]];
  return { temperature, relativeHumidity: Math.round(relativeHumidity * 1000) / 1000 };
};
const MILD = { temperature: 10.5, relativeHumidity: 0.8 };

describe("headings of weather records", () => {
  it("German ones, with decimal commas and days first", () => {
    const text = `Datum;Temperatur [°C];Relative Luftfeuchtigkeit [%]\n${rowsOf((day) => `${day.split("-").reverse().join(".")};10,5;80`)}`;
    expect(yearOf(text)).toEqual(MILD);
  });

  it("French ones, accents or none", () => {
    for (const headings of ["Date,Température (°C),Humidité relative (%)", "DATE,TEMPERATURE MOYENNE,HR"])
      expect(yearOf(`${headings}\n${rowsOf((day) => `${day},10.5,80`)}`)).toEqual(MILD);
  });

  it("in two lines, the units below", () => {
    for (const units of ["yyyy-mm-dd,°C,%", ",(°C),(%)", ",[°F],"]) {
      const temperature = units.includes("F") ? 50.9 : 10.5;
      const text = `Date,Temp,RH\n${units}\n${rowsOf((day) => `${day},${temperature},80`)}`;
      expect(yearOf(text)).toEqual(MILD);
    }
  });

  it("a first row is no line of units", () => {
    const reading = readRecords(`Date,Temp,RH\n${rowsOf((day) => `${day},10.5,80`)}`);
    expect(reading.ok && reading.value.rows).toBe(365);
  });
});
