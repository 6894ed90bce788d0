import { assessProject, findVariationLayer, type Project, varyThickness } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { thicknessesOf } from "../../packages/core/src/studies/variation/thicknesses.ts";
import { withThickness } from "../../packages/core/src/studies/variation/with-thickness.ts";
import { changed, projectOf } from "./project-texts.ts";

/** Wool outside the boarding keeps it warm: how much of it the wall needs. */
const WALL = `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms:
  store: { unheated: true }
build-ups:
  - name: Studio wall
    element: wall
    target: 0.25 W/(m2 K)
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: vapour control layer sd 2 m }
      - { material: mineral wool slab, thickness: 90 mm }
      - { material: oriented strand board, thickness: 11 mm }
      - { name: outer wool, material: mineral wool slab, thickness: 60 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
  - name: Store wall
    element: partition
    faces: store
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { name: still air, air: 40 mm, ventilation: none }
      - { material: softwood timber, thickness: 20 mm }
`;

/** A metal less tight than a foil. */
const OWN = "conductivity: 50 W/(m K), vapour resistance factor: 100000";

const project = projectOf(WALL);
const range = (from: number, to: number, step: number | null = null) => ({ buildUp: 0, layer: 4, from, to, step });
const variation = varyThickness(project, range(0, 0.2));

/** The wall as a file that has this thickness of outer wool. */
const written = (millimetres: number): Project =>
  projectOf(
    millimetres === 0
      ? changed("      - { name: outer wool, material: mineral wool slab, thickness: 60 mm }\n", "", WALL)
      : changed("thickness: 60 mm", `thickness: ${millimetres} mm`, WALL),
  );
const judgementOf = (millimetres: number): string => assessProject(written(millimetres)).buildUps[0]!.judgement.word;

describe("a variation", () => {
  it("has both ends, round steps between, and the thickness that is drawn", () => {
    expect(variation.step).toBe(0.01);
    expect(variation.points.map(({ thickness }) => Math.round(thickness * 1000))).toEqual(
      Array.from({ length: 21 }, (_, index) => index * 10),
    );
    expect(variation.points.filter(({ isDrawn }) => isDrawn).map(({ thickness }) => thickness)).toEqual([0.06]);
  });

  it.each([0, 30, 60, 200])("at %i mm is what a file with that thickness gives", (millimetres) => {
    const { heat, moisture, judgement } = assessProject(written(millimetres)).buildUps[0]!;
    const point = variation.points.find(({ thickness }) => Math.round(thickness * 1000) === millimetres)!;
    expect(point).toMatchObject({
      judgement: judgement.word,
      transmittance: expect.closeTo(heat!.transmittance, 12),
      temperatureFactor: expect.closeTo(heat!.temperatureFactor, 12),
      verdict: moisture!.verdict,
      peak: { amount: expect.closeTo(moisture!.peak.amount, 12), month: moisture!.peak.month },
    });
  });

  it("finds where the judgement turns: a tenth of a millimetre less has the one word, there it is the other", () => {
    expect(variation.turns.length).toBeGreaterThan(0);
    for (const { thickness, from, to } of variation.turns) {
      const tenths = Math.round(thickness * 10_000);
      expect(thickness * 10_000).toBeCloseTo(tenths, 6);
      expect(judgementOf(tenths / 10)).toBe(to);
      expect(judgementOf((tenths - 1) / 10)).toBe(from);
    }
    const words = [variation.points[0]!.judgement, ...variation.turns.map(({ to }) => to)];
    expect(words.at(-1)).toBe(variation.points.at(-1)!.judgement);
  });

  it("finds from where the target is met, at two decimals", () => {
    const tenths = Math.round(variation.meetsTargetFrom! * 10_000);
    const u = (millimetres: number) => assessProject(written(millimetres)).buildUps[0]!.heat!.transmittance;
    expect(u(tenths / 10)).toBeLessThan(0.255);
    expect(u((tenths - 1) / 10)).toBeGreaterThanOrEqual(0.255);
  });

  it("says it in words", () => {
    expect(variation.message).toMatch(
      /^outer wool: “[a-z ]+” under \d+ mm(, “[a-z ]+” from \d+ mm)+\. U falls from 0\.34 to 0\.12 W\/\(m²·K\) and meets the target of 0\.25 from \d+ mm\.$/,
    );
    const short = varyThickness(project, range(0.15, 0.2, 0.025));
    expect(short.turns).toEqual([]);
    expect(short.message).toContain(`“${short.points[0]!.judgement}” throughout, from 150 mm to 200 mm`);
  });

  it("tells a target that no thickness meets", () => {
    const demanding = projectOf(changed("target: 0.25", "target: 0.05", WALL));
    const { meetsTargetFrom, message } = varyThickness(demanding, range(0, 0.1));
    expect(meetsTargetFrom).toBeNull();
    expect(message).toContain("and never meets the target of 0.05");
  });

  it("refuses a sheet", () => {
    expect(() => varyThickness(project, { ...range(0, 0.1), layer: 5 })).toThrow(RangeError);
  });
});

describe("the thicknesses of a variation", () => {
  it("the step is the least round one that takes at most twenty", () => {
    expect(thicknessesOf({ from: 0, to: 0.1, step: null }, 1).step).toBe(0.005);
    expect(thicknessesOf({ from: 0, to: 0.101, step: null }, 1).step).toBe(0.01);
    expect(thicknessesOf({ from: 0.1, to: 0.104, step: null }, 1).thicknesses).toEqual([
      0.1, 0.101, 0.102, 0.103, 0.104,
    ]);
  });

  it("a step that does not go up evenly ends at the end all the same; the drawn one is put between", () => {
    expect(thicknessesOf({ from: 0, to: 0.1, step: 0.04 }, 0.05).thicknesses).toEqual([0, 0.04, 0.05, 0.08, 0.1]);
    expect(thicknessesOf({ from: 0, to: 0.1, step: 0.05 }, 0.2).thicknesses).toEqual([0, 0.05, 0.1]);
  });

  it.each([
    [0.1, 0.1, null],
    [0.2, 0.1, null],
    [-0.1, 0.1, null],
    [Number.NaN, 0.1, null],
    [0, 0.1, 0],
    [0, 0.1, Number.NaN],
    [0, 1, 0.001],
  ])("refuses %d to %d m by %d", (from, to, step) => {
    expect(() => thicknessesOf({ from, to, step }, 0.05)).toThrow(RangeError);
  });
});

describe("a layer in another thickness", () => {
  it("taken out, water stated for it goes with it, and other water moves up", () => {
    const [wet] = projectOf(
      changed(
        "    target",
        "    trapped water: [ { layer: outer wool, amount: 1 kg/m2 }, { layer: oriented strand board, amount: 2 kg/m2 } ]\n    target",
        WALL,
      ),
    ).buildUps;
    expect(withThickness(wet!, 4, 0).trappedWater).toMatchObject([{ layer: 3, amount: 2 }]);
    expect(withThickness(wet!, 2, 0).trappedWater).toMatchObject([{ layer: 3 }, { layer: 2 }]);
  });

  it.each([
    ["wood", "material: softwood timber, thickness", 20, 35],
    ["polythene, which is a sheet under a millimetre", "material: polyethylene low density, thickness", 2, 0.3],
    ["polythene with a name", "name: membrane, material: polyethylene low density, thickness", 2, 0.3],
    ["thicker metal, which is as tight as a foil", "material: steel, thickness", 0.7, 3],
    ["thinner metal", "material: steel, thickness", 3, 0.7],
    ["metal as thin as before", "material: aluminium, thickness", 1, 1],
    ["glass", "material: glass, thickness", 4, 10],
    ["metal given on the spot", `material: { name: skin, kind: metal, ${OWN} }, thickness`, 1, 2],
    ["air without a name", "ventilation: none, air", 25, 40],
    ["air with a name", "name: space, ventilation: none, air", 25, 40],
  ])("%s is what the reader makes of that thickness", (_, keys, drawn, swept) => {
    const file = (millimetres: number): string =>
      changed("material: oriented strand board, thickness: 11 mm", `${keys}: ${millimetres} mm`, WALL);
    const [wall] = projectOf(file(drawn)).buildUps;
    expect(withThickness(wall!, 3, swept / 1000).layers[3]).toEqual(projectOf(file(swept)).buildUps[0]!.layers[3]);
  });
});

describe("the layer that is meant", () => {
  it("by name or material, in the one build-up that has it or in the one that is named", () => {
    expect(findVariationLayer(project, "Outer wool", null, 0.2)).toEqual({ buildUp: 0, layer: 4 });
    expect(findVariationLayer(project, "oriented strand board", null, 0.2)).toEqual({ buildUp: 0, layer: 3 });
    expect(findVariationLayer(project, "softwood timber", "store wall", 0.2)).toEqual({ buildUp: 1, layer: 2 });
  });

  it.each([
    ["no layer of that name", "outer wol", null, 0.2, "No layer is called outer wol. Perhaps you mean outer wool."],
    [
      "no build-up of that name",
      "outer wool",
      "Roof",
      0.2,
      "No build-up is called Roof. There are Studio wall and Store wall.",
    ],
    [
      "in several build-ups",
      "gypsum plasterboard",
      null,
      0.2,
      "Several build-ups have a layer called gypsum plasterboard",
    ],
    ["a sheet", "breather membrane", null, 0.2, "breather membrane is a sheet and has no thickness to vary."],
    ["still air past its formula", "still air", null, 0.4, "The formula for still air ends at 300 mm"],
  ])("or why none is: %s", (_, layer, buildUp, thickest, says) => {
    expect(findVariationLayer(project, layer, buildUp, thickest)).toEqual({ refused: expect.stringContaining(says) });
  });

  it("twice in one build-up", () => {
    const twice = projectOf(changed("name: outer wool, ", "", WALL));
    expect(findVariationLayer(twice, "mineral wool slab", null, 0.2)).toEqual({
      refused: expect.stringContaining('Several layers of "Studio wall" are called mineral wool slab'),
    });
  });
});
