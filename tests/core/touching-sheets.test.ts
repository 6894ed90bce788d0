import { describe, expect, it } from "vitest";
import { assessText } from "./corpus.ts";

/** METHOD.md, Vapour layer: touching layers count as one, from an sd of 0.5 m. */
const wall = (sheets: readonly string[]): string => `project: Alder Row
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
${sheets.map((sheet) => `      - { material: ${sheet} }\n`).join("")}      - { material: mineral wool slab, thickness: 140 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;

describe("sheets that touch each other", () => {
  const open = "{ name: felt, sd: 0.3 m }";

  it("are one vapour layer with the sd of both, though neither is one by itself", () => {
    const { vapourLayer } = assessText(wall([open, "{ name: paper, sd: 0.25 m }"]));
    expect(vapourLayer).toMatchObject({ present: true, layers: [1, 2] });
    expect(vapourLayer!.sd).toBeCloseTo(0.55, 12);
  });

  it("are none where both together are more open than 0.5 m", () => {
    expect(assessText(wall([open, "{ name: paper, sd: 0.15 m }"])).vapourLayer!.present).toBe(false);
    expect(assessText(wall([open])).vapourLayer!.present).toBe(false);
  });
});
