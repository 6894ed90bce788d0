import fc from "fast-check";
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import { VAPOUR_PERMEABILITY_OF_AIR } from "../../packages/core/src/constants.ts";
import { solveVapourProfile } from "../../packages/core/src/vapour/vapour-profile.ts";
import { byQuadraticProgramme, type Profile } from "./quadratic-programme.ts";
import { months, sections, wetNodes } from "./random-sections.ts";

/** Tolerance on a node's pressure [Pa] (sd ratios under 10⁴): well under what any reading could tell. */
const TOLERANCE = 0.01;

function own({ sd, saturation, inside, outside, isWet }: Profile): { pressure: Float64Array; gain: Float64Array } {
  const pressure = new Float64Array(sd.length);
  const gain = new Float64Array(sd.length);
  solveVapourProfile(sd, saturation, inside, outside, isWet, pressure, gain);
  return { pressure, gain };
}

function compareWithSecondSolver(profile: Profile): void {
  const { pressure, gain } = own(profile);
  const second = byQuadraticProgramme(profile);
  const { sd } = profile;
  for (let node = 0; node < sd.length; node += 1) {
    expect(Math.abs(pressure[node]! - second[node]!), `pressure of node ${node}`).toBeLessThan(TOLERANCE);
    if (node === 0 || node === sd.length - 1) continue;
    const before = sd[node]! - sd[node - 1]!;
    const after = sd[node + 1]! - sd[node]!;
    const slopes = (second[node + 1]! - second[node]!) / after - (second[node]! - second[node - 1]!) / before;
    // A pressure that is off by the tolerance puts a slope off by that over the distance, on both sides of two nodes.
    const allowed = 2 * VAPOUR_PERMEABILITY_OF_AIR * TOLERANCE * (1 / before + 1 / after);
    expect(Math.abs(gain[node]! - VAPOUR_PERMEABILITY_OF_AIR * slopes), `gain of node ${node}`).toBeLessThan(allowed);
  }
}

const profiles = (held: boolean): fc.Arbitrary<Profile> =>
  fc.tuple(sections, months).chain(([{ sd, climate }, month]) =>
    (held ? wetNodes(sd.length) : fc.constant(new Uint8Array(sd.length))).map((isWet) => ({
      sd,
      isWet,
      saturation: climate.saturation[month]!,
      inside: climate.insideSurface[month]!,
      outside: climate.outsideSurface[month]!,
    })),
  );

describe("second solver: quadratic programme by quadprog, node by node within 0.01 Pa, gains with it", () => {
  it("500 random sections that hold no water", () => {
    fc.assert(fc.property(profiles(false), compareWithSecondSolver), { numRuns: 500, seed: 13788 });
  });

  it("500 random sections with held water", () => {
    fc.assert(fc.property(profiles(true), compareWithSecondSolver), { numRuns: 500, seed: 6946 });
  });

  it("the random sections are worth it: over a tenth condense, over a tenth do not, some evaporate", () => {
    const drawn = fc.sample(profiles(true), { numRuns: 500, seed: 6946 }).map((profile) => own(profile).gain);
    const part = (is: (gain: number) => boolean): number =>
      drawn.filter((gains) => gains.some(is)).length / drawn.length;
    expect(part((gain) => gain > 1e-11)).toBeGreaterThan(0.1);
    expect(part((gain) => gain < -1e-11)).toBeGreaterThan(0.1);
    expect(
      drawn.filter((gains) => gains.every((gain) => Math.abs(gain) < 1e-11)).length / drawn.length,
    ).toBeGreaterThan(0.1);
  });
});

describe("second solver: the dry profile as a linear system by mathjs lusolve", () => {
  it("500 random sections where nothing can condense, within 10⁻⁶ Pa", () => {
    fc.assert(
      fc.property(profiles(false), (profile) => {
        const { sd, inside, outside } = profile;
        const last = sd.length - 1;
        const matrix = Array.from(sd, () => new Array<number>(sd.length).fill(0));
        matrix[0]![0] = 1;
        matrix[last]![last] = 1;
        for (let node = 1; node < last; node += 1) {
          const before = 1 / (sd[node]! - sd[node - 1]!);
          const after = 1 / (sd[node + 1]! - sd[node]!);
          const size = before + after;
          matrix[node]![node - 1] = -before / size;
          matrix[node]![node] = 1;
          matrix[node]![node + 1] = -after / size;
        }
        const given = Array.from(sd, (_, node) => (node === 0 ? inside : node === last ? outside : 0));
        const second = lusolve(matrix, given) as number[][];
        const { pressure, gain } = own({ ...profile, saturation: new Float64Array(sd.length).fill(1e6) });
        for (let node = 0; node <= last; node += 1)
          expect(Math.abs(pressure[node]! - second[node]![0]!)).toBeLessThan(1e-6);
        expect(gain.every((rate) => rate === 0)).toBe(true);
      }),
      { numRuns: 500, seed: 13370 },
    );
  });
});
