import {
  celsiusFromFahrenheit,
  formatNumber,
  formatQuantity,
  metresFromInches,
  type QuantityName,
  readQuantity,
  resistanceFromImperial,
  sdFromPerms,
  sdFromVapourResistance,
  writeQuantity,
} from "@warmside/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatInShownUnit } from "../../packages/core/src/quantities/format-quantity.ts";
import { readBareNumber, whyOdd } from "../../packages/core/src/quantities/read-quantity.ts";
import { parseUnit } from "../../packages/core/src/quantities/unit-reader.ts";
import { quantityOf, VOCABULARY } from "../../packages/core/src/quantities/vocabulary.ts";

const names = Object.keys(VOCABULARY) as QuantityName[];
const read = names.filter((name) => quantityOf(name).possible !== null);
const withUnit = read.filter((name) => quantityOf(name).unit.written !== "");

const valueRead = (text: string, name: QuantityName): number => {
  const reading = readQuantity(text, name);
  if (!reading.ok) throw new Error(`${text}: ${reading.problems[0]!.code}`);
  return reading.value;
};
const faultOf = (text: string, name: QuantityName): { code: string; write: unknown } => {
  const reading = readQuantity(text, name);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value}`);
  return {
    code: reading.problems[0]!.code,
    write: [reading.problems[0]!.details.write ?? []].flat().join(" or ") || null,
  };
};

describe("the vocabulary", () => {
  it.each(read)("%s: why a value is impossible holds for one too small and one too large", (name) => {
    expect(quantityOf(name).possible!.reason).not.toMatch(/at most|at least|starts? at/);
  });

  it.each(read)("%s: its example reads, is plausible, and its plausible range lies in the possible one", (name) => {
    const { example, unit, possible, plausible } = quantityOf(name);
    const reading = unit.written === "" ? readBareNumber(Number(example), name) : readQuantity(example, name);
    expect(reading.ok).toBe(true);
    if (reading.ok) expect(whyOdd(reading.value, name)).toBeNull();
    if (plausible === null) return;
    expect(plausible.low).toBeGreaterThanOrEqual(possible!.low);
    expect(plausible.high).toBeLessThanOrEqual(possible!.high);
    expect(plausible.reason.length).toBeGreaterThan(10);
  });

  it.each(withUnit)("%s: the unit it shows is the SI unit times its factor, as mathjs reads both", (name) => {
    const { unit, example } = quantityOf(name);
    const [digits = ""] = example.split(" ");
    expect(valueRead(example, name) * unit.perSi).toBeCloseTo(Number(digits), 9);
  });

  it("names every unit that mathjs can read", () => {
    for (const name of withUnit) expect(parseUnit("1", quantityOf(name).unit.si), name).not.toBeNull();
  });
});

describe("quantities that are read, in SI", () => {
  it.each([
    ["140 mm", "thickness", 0.14],
    ["12.5 mm", "thickness", 0.0125],
    ["0.14 m", "thickness", 0.14],
    ["14 cm", "thickness", 0.14],
    ["150 µm", "thickness", 0.00015],
    ["500 gauge", "thickness", 0.000125],
    ["1000 gauge", "thickness", 0.00025],
    ["2 inch", "thickness", 0.0508],
    ["0.022 W/(m K)", "conductivity", 0.022],
    ["0.022 W/(m·K)", "conductivity", 0.022],
    ["22 mW/(m K)", "conductivity", 0.022],
    ["0.25 W/(m² K)", "transmittance", 0.25],
    ["1.5 m²·K/W", "thermal resistance", 1.5],
    ["20 °C", "temperature", 20],
    ["-5 °C", "temperature", -5],
    ["−5 °C", "temperature", -5],
    ["68 °F", "temperature", 20],
    ["2 K", "temperature difference", 2],
    ["+2 K", "temperature difference", 2],
    ["55 %", "relative humidity", 0.55],
    ["0.6 /h", "air changes", 0.6 / 3600],
    ["6 kg/day", "moisture production", 6 / 86_400],
    ["250 g/h", "moisture production", 0.25 / 3600],
    ["250 MN s/g", "vapour resistance", 2.5e11],
    ["250 MN·s/g", "vapour resistance", 2.5e11],
    ["60 perm", "permeance", 60 * 5.72e-11],
    ["500 kg/m³", "density", 500],
    ["1.6 kJ/(kg K)", "specific heat", 1600],
    ["1000 mm2/m", "ventilation area upright", 0.001],
    ["1000 mm2/m2", "ventilation area level", 0.001],
    ["6.5 K/km", "lapse rate", 0.0065],
    ["5 °", "pitch", 5],
    ["0.12 /kWh", "heat price", 0.12],
    ["2.5 /m2", "fasteners per area", 2.5],
    ["1 kg/m2", "water held", 1],
    ["250 g/m2", "water held", 0.25],
    ["140\u00a0mm", "thickness", 0.14],
    ["140\u202fmm", "thickness", 0.14],
    ["1.4e2 mm", "thickness", 0.14],
  ] as const)("%s as %s is %f", (text, name, value) => {
    expect(valueRead(text, name)).toBeCloseTo(value, 15 - Math.max(0, Math.ceil(Math.log10(Math.abs(value) + 1))));
  });

  it("hold no binary noise: what is typed is what is kept", () => {
    for (const text of ["0.1", "0.12", "0.3", "6.5", "0.035"]) {
      expect(valueRead(`${text} /kWh`, "heat price")).toBe(Number(text));
      expect(valueRead(`${text} mm`, "width of a gap")).toBe(Number(`${text}e-3`));
    }
  });
});

describe("the traps of quantities: each is refused, with the likely slip", () => {
  it.each([
    ["0.022 W/mK", "conductivity", "unit-unknown", "0.022 W/(m K)"],
    ["0.022 W/m K", "conductivity", "unit-unfit", "0.022 W/(m K)"],
    ["0.25 W/m2K", "transmittance", "unit-unknown", "0.25 W/(m2 K)"],
    ["1.5 m2K/W", "thermal resistance", "unit-unknown", "1.5 m2 K/W"],
    ["250 MNs/g", "vapour resistance", "unit-unknown", "250 MN s/g"],
    ["20 C", "temperature", "unit-unknown", "20 °C"],
    ["20C", "temperature", "space-missing", "20 °C"],
    ["20 K", "temperature", "temperature-in-kelvin", "20 °C"],
    ["293 K", "temperature", "temperature-in-kelvin", null],
    ["2 °C", "temperature difference", "difference-in-degrees", "2 K"],
    ["6.5 °C/km", "lapse rate", "difference-in-degrees", "6.5 K/km"],
    ["0.5 1/h", "air changes", "unit-unknown", "0.5 /h"],
    ["0.5 ach", "air changes", "unit-unknown", "0.5 /h"],
    ["0.5/h", "air changes", "space-missing", "0.5 /h"],
    ["55%", "relative humidity", "space-missing", "55 %"],
    ["140mm", "thickness", "space-missing", "140 mm"],
    ["140 millimetres", "thickness", "unit-unknown", "140 mm"],
    ["140 Mm", "thickness", "unit-unknown", "140 mm"],
    ["140", "thickness", "unit-missing", "140 mm"],
    ["0.14", "thickness", "unit-missing", "0.14 mm or 0.14 m"],
    ["0.55", "relative humidity", "unit-missing", "55 %"],
    ["0.15", "share of the area", "unit-missing", "15 % or 0.15 %"],
    ["0,5 mm", "thickness", "decimal-comma", "0.5 mm"],
    ["1,200 mm", "spacing", "decimal-comma", "1200 mm or 1.200 mm"],
    ["0,022 W/(m·K)", "conductivity", "decimal-comma", "0.022 W/(m K)"],
    ["1/2 m", "thickness", "fraction", "0.5 m"],
    ["½ m", "thickness", "fraction", "0.5 m"],
    ['5 1/2"', "thickness", "fraction", "139.7 mm"],
    ["1/0 m", "thickness", "fraction", null],
    ["2x4", "width", "section-for-width", "38 mm"],
    ["45 x 145 mm", "width", "section-for-width", "45 mm"],
    ["5 x 7", "width", "section-for-width", null],
    ["2x4", "thickness", "arithmetic", null],
    ["600 mm o.c.", "spacing", "unit-unknown", "600 mm"],
    ['24" o.c.', "spacing", "unit-unknown", "609.6 mm"],
    ["600 centres", "spacing", "unit-unknown", "600 mm"],
    ["1/3 inch", "thickness", "fraction", null],
    ['4"', "thickness", "unit-unknown", "101.6 mm"],
    ["4''", "thickness", "unit-unknown", "101.6 mm"],
    ["4 in.", "thickness", "unit-unknown", "101.6 mm"],
    ['1e400"', "thickness", "unit-unknown", null],
    ["6'", "thickness", "unit-unknown", "1828.8 mm"],
    ["4in", "thickness", "space-missing", "4 in"],
    ["68 F", "temperature", "unit-unknown", "20 °C"],
    ["66F", "temperature", "unit-unknown", "18.889 °C"],
    ["19 degrees", "temperature", "unit-unknown", "19 °C"],
    ["19 deg", "temperature", "unit-unfit", "19 °C"],
    ["2 F", "temperature difference", "unit-unknown", null],
    ["90+5 mm", "thickness", "arithmetic", null],
    ["90-100 mm", "thickness", "arithmetic", null],
    ["2 * 45 mm", "width", "arithmetic", null],
    ["１２ mm", "thickness", "digits-of-another-script", null],
    ["١٢ mm", "thickness", "digits-of-another-script", null],
    ["Infinity mm", "thickness", "not-finite", null],
    ["1e400 mm", "thickness", "not-finite", null],
    ["NaN mm", "thickness", "not-finite", null],
    ["", "thickness", "quantity-empty", null],
    ["mm", "thickness", "quantity-unreadable", null],
    [".5 mm", "thickness", "point-without-digit", "0.5 mm"],
    ["5. mm", "thickness", "point-without-digit", "5 mm"],
    ["12.5 kg", "thickness", "unit-unfit", null],
    ["250 m/s", "vapour resistance", "unit-unfit", null],
    ["55 m/m", "relative humidity", "unit-unfit", null],
    ["1000 mm2/m2", "ventilation area upright", "unit-unfit", null],
    ["12.5 m", "thickness", "impossible-value", "12.5 mm"],
    ["5500 %", "relative humidity", "impossible-value", "55 %"],
    ["0.55 %", "relative humidity", "impossible-value", "55 %"],
    ["0 mm", "thickness", "impossible-value", null],
    ["-5 mm", "thickness", "impossible-value", null],
    ["101 %", "relative humidity", "impossible-value", null],
    ["-300 °C", "temperature", "impossible-value", null],
  ] as const)("%s as %s: %s, write %s", (text, name, code, write) => {
    expect(faultOf(text, name)).toEqual({ code, write: write ?? null });
  });

  it.each([
    ["0.5", "vapour resistance factor", "number-in-quotes"],
    ["60 m", "vapour resistance factor", "unit-not-wanted"],
    ["90 %", "emissivity", "unit-not-wanted"],
    ["much", "emissivity", "number-wanted"],
    ["0,9", "emissivity", "decimal-comma"],
    [".inf", "vapour resistance factor", "not-finite"],
    [Number.POSITIVE_INFINITY, "vapour resistance factor", "not-finite"],
    [Number.NaN, "emissivity", "not-finite"],
    [0.5, "vapour resistance factor", "impossible-value"],
    [0, "emissivity", "impossible-value"],
  ] as const)("bare %s as %s: %s", (value, name, code) => {
    const reading = readBareNumber(value, name);
    expect(reading.ok ? "read" : reading.problems[0]!.code).toBe(code);
  });
});

describe("nothing in a quantity is evaluated", () => {
  it.each([
    "import('x') mm",
    "createUnit('foo') mm",
    "sqrt(4) mm",
    "x = 5 mm",
    "f(x) = x mm",
    "5 mm; 6 mm",
    "5 mm to m",
    "5 constructor",
    "5 __proto__",
    "cos(0) * 5 mm",
    "5 speedOfLight",
  ])("%s is refused", (text) => {
    expect(readQuantity(text, "thickness").ok).toBe(false);
  });

  it("no text at all makes the reader throw, or gives a number that is not finite", () => {
    const pieces = fc.constantFrom(
      "1",
      "0",
      ".",
      ",",
      "e",
      "-",
      " ",
      "mm",
      "m",
      "K",
      "°C",
      "/",
      "(",
      ")",
      "^",
      "2",
      "%",
      "W",
      "\u00a0",
      "µ",
      "deg",
    );
    const texts = fc.oneof(
      fc.string(),
      fc.string({ unit: "binary" }),
      fc.array(pieces, { maxLength: 12 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(...withUnit), (text, name) => {
        const reading = readQuantity(text, name);
        const { low, high } = quantityOf(name).possible!;
        return reading.ok ? reading.value >= low && reading.value <= high : reading.problems.length === 1;
      }),
      { numRuns: 3000, seed: 3000 },
    );
  });

  it("what is written is read back: every plausible value survives", () => {
    fc.assert(
      fc.property(fc.constantFrom(...withUnit), fc.double({ min: 0, max: 1, noNaN: true }), (name, share) => {
        const range = quantityOf(name).plausible ?? quantityOf(name).possible!;
        const value = range.low + share * (range.high - range.low);
        const back = valueRead(writeQuantity(value, name), name);
        return Math.abs(back - value) <= 1e-5 * Math.abs(value) + 1e-15;
      }),
      { numRuns: 2000, seed: 2000 },
    );
  });
});

describe("showing", () => {
  it.each([
    [0.14, "thickness", "140 mm"],
    [0.0125, "thickness", "12.5 mm"],
    [0.00015, "thickness", "0.15 mm"],
    [0.55, "relative humidity", "55 %"],
    [0.5555, "relative humidity", "55.6 %"],
    [-5, "temperature", "−5.0 °C"],
    [0.3027, "transmittance", "0.30 W/(m²·K)"],
    [0.3027, "transmittance in working", "0.303 W/(m²·K)"],
    [0.0207, "condensate", "21 g/m²"],
    [0.00996, "condensate", "10 g/m²"],
    [0.00044, "condensate", "0.4 g/m²"],
    [0.00007, "condensate", "under 0.1 g/m²"],
    [0, "condensate", "0.0 g/m²"],
    [12.3456, "condensate", "12\u202f346 g/m²"],
    [0.145, "moisture content", "14.5 %"],
    [0.145, "share", "15 %"],
    [0.001, "share", "0.1 %"],
    [0.02, "sd", "0.02 m"],
    [2, "sd", "2 m"],
    [8.26, "sd", "8.3 m"],
    [9.96, "sd", "10 m"],
    [1500, "sd", "1500 m"],
    [60, "vapour resistance factor", "60"],
  ] as const)("%f as %s is %s", (value, name, shown) => {
    expect(formatQuantity(value, name)).toBe(shown);
  });

  it("rounds halves away from zero, whatever binary numbers make of them, and has no negative zero", () => {
    expect(formatNumber(0.125, 2)).toBe("0.13");
    expect(formatNumber(1.005, 2)).toBe("1.01");
    expect(formatNumber(-0.125, 2)).toBe("−0.13");
    expect(formatNumber(-0.0001, 2)).toBe("0.00");
    expect(formatNumber(0.1 + 0.2, 1)).toBe("0.3");
    expect(formatInShownUnit(0.2995, "transmittance")).toBe("0.30");
  });

  it("refuses what is not finite", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => formatQuantity(value, "thickness")).toThrow(RangeError);
      expect(() => writeQuantity(value, "thickness")).toThrow(RangeError);
    }
  });
});

describe("units of data sheets elsewhere", () => {
  it("are converted: MN·s/g, US perms, inches, °F, h·ft²·°F/Btu (unit definitions, from memory)", () => {
    expect(sdFromVapourResistance(1)).toBeCloseTo(0.2, 12);
    expect(sdFromPerms(1)).toBeCloseTo(3.497, 3);
    expect(metresFromInches(1)).toBe(0.0254);
    expect(celsiusFromFahrenheit(32)).toBe(0);
    expect(celsiusFromFahrenheit(-40)).toBe(-40);
    expect(resistanceFromImperial(5.678263)).toBeCloseTo(1, 6);
  });

  it("refuse what is not a number, and permeances of nothing", () => {
    expect(() => sdFromVapourResistance(Number.NaN)).toThrow(RangeError);
    expect(() => sdFromVapourResistance(-1)).toThrow(RangeError);
    expect(() => sdFromPerms(0)).toThrow(RangeError);
    expect(() => metresFromInches(Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(() => celsiusFromFahrenheit(Number.NaN)).toThrow(RangeError);
    expect(() => resistanceFromImperial(-1)).toThrow(RangeError);
  });
});
