import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it, test } from "vitest";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { Framing } from "../../packages/core/src/project/types.ts";
import { air, buildUp, framing, solid } from "./build-up-by-hand.ts";

/** Facts of the trade: common practice, no source to name. */

describe("a studio wall that is called 0.26 W/(m²·K) (common practice; worked to three decimals)", () => {
  // Plasterboard 12.5 mm, foil-faced board 90 mm in 95 mm studs with 5 mm of air, OSB 11 mm, cladding left out, Rse 0.04 as quoted.
  const wall = (board: Framing | null, gap: Framing | null) =>
    calculateHeat(
      buildUp([
        solid(0.0125, 0.25),
        solid(0.09, 0.022, { framing: board }),
        air(0.005, { resistance: 0.11, framing: gap }),
        solid(0.011, 0.13),
      ]),
      "horizontal",
    );

  it("with no studs: 0.222", () => expect(wall(null, null).transmittance).toBeCloseTo(0.222, 3));

  // The quoted figures do not say the timber's λ, nor whether it crosses the air. They come out for λ 0.14, the whole
  // 95 mm of it beside the board, and the air running through: R of timber 0.095/0.14 = 0.67857.
  test.each([
    ["5 %, as the name of 0.26 takes it", 0.05, 0.264],
    ["15 %, as framing at 600 mm with rails and corners has", 0.15, 0.344],
  ])("timber %s (%d), λ 0.14, air running through: %d as quoted", (_, share, quoted) => {
    expect(wall(framing("studs", share, 0.09 / 0.67857), null).transmittance).toBeCloseTo(quoted, 3);
  });

  // With λ 0.13 and the air between the studs, as such a wall is written in a project file; 15 %, by hand:
  // upper 1/(0.85/4.50553 + 0.15/1.03538) = 2.99823; lower 0.30462 + 1/(0.85/4.09091 + 0.15/0.69231)
  //   + 1/(0.85/0.11 + 0.15/0.03846) = 0.30462 + 2.35602 + 0.08601 = 2.74665; U = 2/(2.99823 + 2.74665) = 0.34814
  test.each([
    [0.05, 0.265],
    [0.15, 0.348],
  ])("timber %d, λ 0.13, between air too: %d", (share, expected) => {
    const studs = framing("studs", share);
    const heat = wall(studs, studs);
    expect(heat.transmittance).toBeCloseTo(expected, 3);
    expect(heat.clearTransmittance).toBeCloseTo(0.222, 3);
  });
});

describe("timber as an insulator (common practice)", () => {
  const rows: Record<string, string>[] = parse(
    readFileSync(join(import.meta.dirname, "../../shared/materials.csv"), "utf8"),
    { columns: true },
  );
  const conductivity = (name: string): number => {
    const row = rows.find((each) => each.name === name);
    if (row === undefined) throw new Error(`no row ${name}`);
    return Number(row.conductivity_W_mK);
  };
  const timber = conductivity("softwood timber");

  it("has λ 0.13", () => expect(timber).toBe(0.13));
  it("about 15 times better than dense concrete", () => {
    expect(Math.round(conductivity("concrete 2400") / timber)).toBe(15);
  });
  it("nearly 400 times better than steel", () => {
    const ratio = conductivity("steel") / timber;
    expect(ratio).toBeGreaterThan(375);
    expect(ratio).toBeLessThan(400);
  });
});
