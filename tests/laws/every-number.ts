import { expect } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";

/** Where a number that is not finite stands in a result, as a path; null when all are finite. */
export function firstNotFinite(value: unknown): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : ` is ${value}`;
  if (value === null || typeof value !== "object") return null;
  if (value instanceof Float64Array && value.every(Number.isFinite)) return null;
  const hasEntries = value instanceof Map || Array.isArray(value) || ArrayBuffer.isView(value);
  const entries = hasEntries ? (value as Map<unknown, unknown>).entries() : Object.entries(value);
  for (const [key, inner] of entries) {
    const found = firstNotFinite(inner);
    if (found !== null) return `.${String(key)}${found}`;
  }
  return null;
}

/** Calculates a build-up both ways of μ and holds that every number of it is finite, and in its range. */
export function endsInFiniteNumbers({ buildUp, site }: { buildUp: BuildUp; site: Site }): void {
  for (const vapourResistance of ["dry", "unfavourable"] as const) {
    const calculation = calculateBuildUp(buildUp, site, { vapourResistance });
    expect(firstNotFinite(calculation)).toBeNull();
    expect(calculation.heat.transmittance).toBeGreaterThan(0);
    expect(calculation.heat.upperLimit).toBeGreaterThan(0);
    const shares = calculation.sections.reduce((sum, { path }) => sum + path.share, 0);
    expect(Math.abs(shares - 1)).toBeLessThan(1e-9);
    for (const { year, withinMonth } of calculation.sections) {
      const leastHeld = Math.min(...[...year.held, ...withinMonth.held].map((month) => Math.min(...month)));
      expect(leastHeld).toBeGreaterThanOrEqual(0);
      expect(withinMonth.writtenOff).toBe(0);
    }
  }
}
