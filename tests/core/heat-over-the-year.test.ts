import { describe, expect, test } from "vitest";
import { DAYS_IN_MONTH } from "../../packages/core/src/constants.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { shippedClimate } from "./build-ups.ts";
import { assessText } from "./corpus.ts";

const floor = (faces: string): BuildUpResult =>
  assessText(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Floor
    element: floor
    ${faces}
    layers:
      - { material: oriented strand board, thickness: 18 mm }
      - { material: mineral wool slab, thickness: 30 mm }
      - { material: breather membrane }
`);
const outdoors = shippedClimate("de-bilt").temperature;
/** Thousands of kelvin hours from 20 °C down to twelve temperatures, summed here on its own. */
const kilokelvinHours = (temperatures: readonly number[]): number =>
  temperatures.reduce((sum, value, month) => sum + (Math.max(0, 20 - value) * 24 * DAYS_IN_MONTH[month]!) / 1000, 0);
const SPACE = "area: 80 m2, perimeter: 36 m";

describe("heat over the year is U times the difference between the two ends that U reaches", () => {
  test("a floor over outdoor air: to outdoors", () => {
    const { heatPerYear, transmittance } = floor("faces: outdoors").heat!;
    expect(heatPerYear).toBeCloseTo(transmittance * kilokelvinHours(outdoors), 9);
  });

  test("a suspended floor's U is from the room to outdoors (ISO 13370:2017), and so is the difference", () => {
    const { heatPerYear, heatPerYearNote, transmittance } = floor(`faces: void\n    void: { ${SPACE} }`).heat!;
    expect(heatPerYear).toBeCloseTo(transmittance * kilokelvinHours(outdoors), 9);
    expect(heatPerYearNote).toContain("to outdoors");
  });

  test("which is what the floor alone loses to the air of the void, over the year", () => {
    const result = floor(`faces: void\n    void: { ${SPACE} }`);
    const ofFloor = 1 / result.heat!.resistance;
    const ofVoid = result.farSide.months.map(({ temperature }) => temperature);
    expect(result.heat!.heatPerYear! / (ofFloor * kilokelvinHours(ofVoid))).toBeCloseTo(1, 9);
  });

  test("where the void's own air is stated the floor's U ends there", () => {
    const stated = "temperature: 8 °C, humidity: 80 %";
    for (const space of [`${SPACE}, ${stated}`, stated]) {
      const { heatPerYear, heatPerYearNote, resistance } = floor(`faces: void\n    void: { ${space} }`).heat!;
      expect(heatPerYear).toBeCloseTo(kilokelvinHours(new Array(12).fill(8)) / resistance, 9);
      if (space !== stated) expect(heatPerYearNote).toContain("the void's stated temperature");
    }
  });
});
