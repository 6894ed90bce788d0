import { describe, expect, it } from "vitest";
import { solveVapourProfile } from "../../packages/core/src/vapour/vapour-profile.ts";
import {
  carryThroughMonth,
  carryThroughMonthDryingInside,
  emptyMonthState,
  secondsOfMonth,
  solveMonth,
} from "../../packages/core/src/year/month-balance.ts";
import { drivenSection, sameMonths } from "./plain-section.ts";

/**
 * Worked: derived from the equations of ISO 13788:2012 clause 6 by a route separate from the code (python and by hand),
 * to four figures; the tolerance is half a unit of the last figure.
 */
const JANUARY = 0;

describe("worked: one plane (room 1168 Pa, plane at −3 °C, outside 321 Pa, sd 2 m inside, 0.5 m outside)", () => {
  const pressure = new Float64Array(3);
  const gain = new Float64Array(3);
  solveVapourProfile(
    Float64Array.of(0, 2, 2.5),
    Float64Array.of(5000, 475.46, 5000),
    1168,
    321,
    new Uint8Array(3),
    pressure,
    gain,
  );

  it("condenses 7.470e-9 kg/(m²·s)", () => {
    expect(gain[1]).toBeCloseTo(7.47e-9, 12);
  });

  it("that is 20.01 g/m² in 31 days", () => {
    expect(gain[1]! * secondsOfMonth(JANUARY) * 1000).toBeCloseTo(20.01, 2);
  });
});

describe("worked: two planes (20 °C 60 %, −5 °C 80 %, 31 days)", () => {
  const section = drivenSection(
    [
      { resistance: 0.25, sd: 0.5 },
      { resistance: 0.25, sd: 1 },
      { resistance: 0.08, sd: 2 },
    ],
    sameMonths(20, 0.6),
    sameMonths(-5, 0.8),
  );
  const state = emptyMonthState(section.line.count);
  solveMonth(section, JANUARY, state);

  it("A gains 0.1569 and B 0.1831 kg/m²", () => {
    expect(state.gain[1]! * secondsOfMonth(JANUARY)).toBeCloseTo(0.1569, 4);
    expect(state.gain[2]! * secondsOfMonth(JANUARY)).toBeCloseTo(0.1831, 4);
  });
});

describe("worked: a wet node feeds another (20 °C 45 %, 2 °C 85 %, 31 days, A holds 0.1 kg/m²)", () => {
  const section = drivenSection(
    [
      { resistance: 0.25, sd: 4 },
      { resistance: 0.25, sd: 0.5 },
      { resistance: 0.08, sd: 2 },
    ],
    sameMonths(20, 0.45),
    sameMonths(2, 0.85),
  );
  const wetAtA = () => {
    const state = emptyMonthState(section.line.count);
    state.held[1] = 0.1;
    return state;
  };

  it("the standard's month ends with A 0 and B 0.3972 kg/m²", () => {
    const state = wetAtA();
    carryThroughMonth(section, JANUARY, state);
    expect(state.held[1]).toBe(0);
    expect(state.held[2]).toBeCloseTo(0.3972, 4);
  });

  it("with drying inside the month A is dry after 6.180 days", () => {
    const day = 86_400;
    const before = wetAtA();
    carryThroughMonthDryingInside(section, JANUARY, before, 6.179 * day);
    expect(before.held[1]).toBeGreaterThan(0);
    const after = wetAtA();
    carryThroughMonthDryingInside(section, JANUARY, after, 6.181 * day);
    expect(after.held[1]).toBe(0);
  });

  it("and B ends with 0.04015 kg/m²", () => {
    const state = wetAtA();
    carryThroughMonthDryingInside(section, JANUARY, state);
    expect(state.held[2]).toBeCloseTo(0.04015, 5);
  });
});
