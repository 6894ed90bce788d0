import { describe, expect, test } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { leakAirFlow, leakWaterFlow } from "../../packages/core/src/further-checks/leak/leak-flow.ts";
import { checked, heatedRoom, shippedClimate, siteOf } from "../core/build-ups.ts";
import { buildUp, framing, material, sheet, solid } from "./build-up-by-hand.ts";
import { sameMonths } from "./plain-section.ts";

/** One square centimetre in every square metre. */
const GAP = { length: 0.1, width: 0.001, pressure: 2 };

describe("worked: 1 cm²/m² at 2 Pa, ρ 1.2, room 20 °C 50 %, plane at 0 °C (four figures)", () => {
  const airFlow = leakAirFlow(1e-4, 2);
  const water = leakWaterFlow(airFlow, 0.5 * saturationPressure(20), 20, 0);

  test("4.518e-7 kg/(m²·s), 1210 g in 31 days", () => {
    expect(water / 4.518e-7).toBeCloseTo(1, 3);
    expect(water * 31 * 86_400 * 1000).toBeCloseTo(1210, 0);
  });

  test("no gap, no pressure or a warm plane bring none", () => {
    expect(leakAirFlow(0, 2)).toBe(0);
    expect(leakAirFlow(1e-4, 0)).toBe(0);
    expect(leakWaterFlow(airFlow, 0.5 * saturationPressure(20), 20, 12)).toBe(0);
    expect(() => leakAirFlow(Number.NaN, 2)).toThrow(RangeError);
    expect(() => leakAirFlow(1e-4, -1)).toThrow(RangeError);
  });
});

describe("a wall whose insulation's cold face lies at 0 °C all year", () => {
  // Rsi 0.13, insulation R 2.0, sheathing R 0.1, Rse 0.04: the face lies at 20 − (20 − θe)·2.13/2.27 = 0 °C.
  const outdoorTemperature = 20 - (20 * 2.27) / 2.13;
  const room = heatedRoom({ kind: "months", relativeHumidity: new Array(12).fill(0.5) });
  const outdoor = sameMonths(outdoorTemperature, 0.8);
  const site = { outdoor, rooms: new Map([["indoor", sameMonths(20, 0.5)]]) };
  const insulation = solid(0.1, 0.05, { name: "insulation", material: material(0.05, 1, { name: "insulation" }) });
  const sheathing = solid(0.01, 0.1, { name: "sheathing", material: material(0.1, 50, { name: "sheathing" }) });
  const wall = (leak: typeof GAP | null) => buildUp([insulation, sheathing], { leak });

  test("brings the worked grams in every month, the days of the month counted, and their sum", () => {
    const leak = checked(wall(GAP), site, room).checks.leak!;
    expect(leak.area).toBeCloseTo(1e-4, 15);
    expect(leak.airFlow).toBeCloseTo(leakAirFlow(1e-4, 2), 15);
    expect(leak.months[0]!.amount * 1000).toBeCloseTo(1210, 0);
    expect(leak.months[1]!.amount / leak.months[0]!.amount).toBeCloseTo(28 / 31, 12);
    const sum = leak.months.reduce((total, { amount }) => total + amount, 0);
    expect(leak.total).toBeCloseTo(sum, 12);
    expect(leak.message).toContain("between insulation and sheathing");
  });

  test("stands beside everything diffusion brings, and the sentence follows from the ratio", () => {
    const { checks, calculation } = checked(wall(GAP), site, room);
    const gained = calculation.governing.year.change.flatMap((month) => [...month]).filter((change) => change > 0);
    expect(checks.leak!.diffusion).toBeCloseTo(
      gained.reduce((total, change) => total + change, 0),
      12,
    );
    expect(checks.leak!.diffusion).toBeGreaterThan(1);
    const ratio = checks.leak!.total / checks.leak!.diffusion;
    expect(checks.leak!.message).toContain(ratio >= 1 ? "times as much" : "more than the gap brings");
  });

  test("what dries again in summer is not taken off what diffusion brought", () => {
    const seasons = siteOf(shippedClimate("oslo"), room);
    const { checks, calculation } = checked(wall(GAP), seasons, room);
    const { change, peak } = calculation.governing.year;
    expect(change.some((month) => month.some((amount) => amount < -0.01))).toBe(true);
    expect(checks.leak!.diffusion).toBeGreaterThanOrEqual(peak);
  });

  test("studs beside the insulation change nothing: the plane between them is the colder, and the bound holds there", () => {
    const studded = buildUp([{ ...insulation, framing: framing("studs", 0.15, 0.13) }, sheathing, sheet(5)], {
      leak: GAP,
    });
    const plain = buildUp([insulation, sheathing, sheet(5)], { leak: GAP });
    const withStuds = checked(studded, site, room);
    expect(withStuds.calculation.sections).toHaveLength(2);
    expect(withStuds.checks.leak!.total).toBeCloseTo(checked(plain, site, room).checks.leak!.total, 12);
  });

  test("a section through framing that governs does not lower the bound", () => {
    const foiled = { ...insulation, facingInner: 1500, facingOuter: 1500, framing: framing("studs", 0.15, 0.13) };
    const studded = buildUp([foiled, sheathing, sheet(5)], { leak: GAP });
    const plain = buildUp([{ ...foiled, framing: null }, sheathing, sheet(5)], { leak: GAP });
    const withStuds = checked(studded, site, room);
    expect(withStuds.calculation.governing.name).toBe("through studs");
    expect(withStuds.checks.leak!.total).toBeCloseTo(checked(plain, site, room).checks.leak!.total, 12);
  });

  test("with no gap stated there is no answer to give", () => {
    expect(checked(wall(null), site, room).checks.leak).toBeNull();
  });
});
