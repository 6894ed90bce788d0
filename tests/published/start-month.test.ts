import { describe, expect, it } from "vitest";
import { DAYS_IN_MONTH, SECONDS_PER_DAY, VAPOUR_PERMEABILITY_OF_AIR } from "../../packages/core/src/constants.ts";
import type { DrivenSection } from "../../packages/core/src/year/month-balance.ts";
import { runYear, sectionYear } from "../../packages/core/src/year/section-year.ts";
import { startingMonths, yearFromDry } from "../../packages/core/src/year/wet-months.ts";

/**
 * A section of three nodes whose one plane, while wet, has the wanted balances. The plane is at 600 Pa all year and the
 * outer surface at 400 Pa; the room's pressure is what gives the month's balance:
 * g = δ0·((p − 600)/2 − (600 − 400)/0.5), so p = 600 + 2·(g/δ0 + 400).
 */
function sectionWithBalances(gramsPerMonth: readonly number[]): DrivenSection {
  const insideSurface = gramsPerMonth.map((grams, month) => {
    const rate = grams / 1000 / (DAYS_IN_MONTH[month]! * SECONDS_PER_DAY);
    return 600 + 2 * (rate / VAPOUR_PERMEABILITY_OF_AIR + 400);
  });
  const months = <Value>(value: Value): Value[] => gramsPerMonth.map(() => value);
  return {
    sd: Float64Array.of(0, 2, 2.5),
    climate: {
      temperature: months(Float64Array.of(20, 0, -1)),
      saturation: months(Float64Array.of(9000, 600, 9000)),
      insideSurface: Float64Array.from(insideSurface),
      outsideSurface: Float64Array.from(months(400)),
    },
  };
}

const [FEBRUARY, JULY, OCTOBER, NOVEMBER] = [1, 6, 9, 10] as const;

describe("worked: where to start (g/m² from January: +200 +100 −100 −150 −150 −150 +50 −20 −40 −40 +100 +200)", () => {
  const section = sectionWithBalances([200, 100, -100, -150, -150, -150, 50, -20, -40, -40, 100, 200]);
  const dryYear = yearFromDry(section);
  const grams = (held: Float64Array[], month: number): number =>
    1000 * held[month]!.reduce((sum, each) => sum + each, 0);

  it("January, February, July, November and December are wet; the candidates are July and November", () => {
    expect(Array.from(dryYear.wet)).toEqual([1, 1, 0, 0, 0, 0, 1, 0, 0, 0, 1, 1]);
    expect(startingMonths(dryYear.wet)).toEqual([JULY, NOVEMBER]);
  });

  it("from July it would seem to stay wet, with 50 g/m²", () => {
    const fromJuly = runYear(section, JULY, "standard");
    expect(fromJuly.verdict).toBe("stays wet");
    expect(fromJuly.carriedOver * 1000).toBeCloseTo(50, 6);
  });

  it.each(["standard", "drying inside the month"] as const)(
    "dries out, from November, peak 600 in February, empty in October (%s)",
    (rule) => {
      const year = sectionYear(section, dryYear, rule);
      expect(year.verdict).toBe("dries out");
      expect(year.startMonth).toBe(NOVEMBER);
      expect(year.peak * 1000).toBeCloseTo(600, 6);
      expect(year.peakMonth).toBe(FEBRUARY);
      expect(year.dryBy).toBe(OCTOBER);
      expect(year.carriedOver).toBeLessThan(1e-6);
    },
  );

  it("every month's end, from November: 100 300 500 600 500 350 200 50 100 80 40 0 g/m²", () => {
    const { held } = sectionYear(section, dryYear, "standard");
    const expected = [500, 600, 500, 350, 200, 50, 100, 80, 40, 0, 100, 300];
    expected.forEach((amount, month) => {
      expect(grams(held, month)).toBeCloseTo(amount, 6);
    });
  });
});

describe("by hand: other years of one plane", () => {
  it("dry: no month gains, no start, no plane", () => {
    const section = sectionWithBalances(new Array(12).fill(-10));
    const year = sectionYear(section, yearFromDry(section), "standard");
    expect(year).toMatchObject({
      verdict: "dry",
      startMonth: null,
      peak: 0,
      peakMonth: null,
      carriedOver: 0,
      dryBy: null,
    });
  });

  it("all months wet: from January, everything stays", () => {
    const section = sectionWithBalances(new Array(12).fill(10));
    const year = sectionYear(section, yearFromDry(section), "standard");
    expect(year).toMatchObject({ verdict: "stays wet", startMonth: 0, peakMonth: 11, dryBy: null });
    expect(year.carriedOver * 1000).toBeCloseTo(120, 6);
  });

  it("one wet season whose drying stops short: +100 in each of five, −60 in each of seven leaves 80", () => {
    const section = sectionWithBalances([100, 100, 100, -60, -60, -60, -60, -60, -60, -60, 100, 100]);
    const year = sectionYear(section, yearFromDry(section), "standard");
    expect(year).toMatchObject({ verdict: "stays wet", startMonth: NOVEMBER, peakMonth: 2 });
    expect(year.carriedOver * 1000).toBeCloseTo(80, 6);
    expect(year.peak * 1000).toBeCloseTo(500, 6);
  });

  it("drying that overshoots is written off: +100, then −250 takes 100 and writes off 150", () => {
    const section = sectionWithBalances([100, -250, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1]);
    const standard = sectionYear(section, yearFromDry(section), "standard");
    expect(standard).toMatchObject({ verdict: "dries out", startMonth: 0, dryBy: FEBRUARY });
    expect(standard.writtenOff * 1000).toBeCloseTo(150, 6);
    expect(sectionYear(section, yearFromDry(section), "drying inside the month").writtenOff).toBe(0);
  });

  it("two candidates that both stay wet: the one with most left", () => {
    // From January: 10 −5 100 −5 … : both carry over; from March 100 −5·9 +10 −5 = 60, from January 10 −5 +100 −45 = 60
    // with February −30 instead: from January 10 → 0, 100 −45 = 55; from March 100 −45 + 10 −30 = 35
    const section = sectionWithBalances([10, -30, 100, -5, -5, -5, -5, -5, -5, -5, -5, -5]);
    const year = sectionYear(section, yearFromDry(section), "standard");
    expect(year).toMatchObject({ verdict: "stays wet", startMonth: 0 });
    expect(year.carriedOver * 1000).toBeCloseTo(55, 6);
  });
});

describe("a month is wet from 1 mg/m²", () => {
  it.each([
    [0.0009, 0],
    [0.0011, 1],
  ])("%d g/m²: %d", (grams, expected) => {
    const section = sectionWithBalances([grams, ...new Array(11).fill(-1)]);
    expect(yearFromDry(section).wet[0]).toBe(expected);
  });
});
