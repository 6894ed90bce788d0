import { assessProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { problemsOf, projectOf } from "./project-texts.ts";

/** A wall with a reading of 28 % in its middle layer, 100 mm thick. */
const wall = (material: string, framing: string): string => `project: readings
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    trapped water: { layer: middle, reading: 28 % }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { name: middle, material: ${material}, thickness: 100 mm${framing === "" ? "" : `, framing: ${framing}`} }
      - { material: plywood, thickness: 9 mm }
`;

const own = (keys: string): string =>
  `{ name: own, conductivity: 0.1 W/(m K), vapour resistance factor: 5${keys === "" ? "" : `, ${keys}`} }`;
const framing = (material: string): string => `{ material: ${material}, fraction: 10 % }`;

const waterIn = (text: string) => assessProject(projectOf(text)).buildUps[0]!.trappedWater;

describe("a moisture meter reads the layer's own timber, else the framing through it", () => {
  it.each([
    ["wood of known density", own("kind: wood, density: 500 kg/m3"), "", "whole", 5],
    ["board of known density", own("kind: board, density: 600 kg/m3"), "", "whole", 6],
    ["board of known density between studs", "particleboard", framing("softwood timber"), "between framing", 6],
    ["wool between studs", "mineral wool slab", framing("softwood timber"), "through softwood timber", 5],
    ["board without a density between studs", own("kind: board"), framing("oak"), "through oak", 7],
    ["wood without a density between studs", own("kind: wood"), framing("oak"), "through oak", 7],
  ])("%s", (_, material, through, section, amount) => {
    const [water] = waterIn(wall(material, through));
    expect(water).toMatchObject({ section, amount: expect.closeTo(amount, 9) });
  });

  it.each([
    ["board without a density", own("kind: board"), "", "reading-needs-density"],
    ["board and studs, both without", own("kind: board"), framing(own("kind: wood")), "reading-needs-density"],
    ["wool between studs without", "mineral wool slab", framing(own("kind: wood")), "reading-needs-density"],
    ["wool between steel", "mineral wool slab", framing("steel"), "reading-not-timber"],
    ["plasterboard", "gypsum plasterboard", "", "reading-not-timber"],
  ])("%s: a problem", (_, material, through, code) => {
    expect(problemsOf(wall(material, through)).map((problem) => problem.code)).toEqual([code]);
  });

  it("a reading goes with its timber where a variant takes the timber out", () => {
    const text = `${wall(own("kind: board"), framing("oak"))}    variants: [ { name: bare, changes: [ { swap: middle, for: { material: mineral wool slab, thickness: 100 mm } } ] } ]\n`;
    const [variant] = projectOf(text).buildUps[0]!.variants;
    expect(variant!.buildUp.trappedWater).toEqual([]);
    expect(variant!.changes).toContain("the water stated for it goes with the layer");
  });
});
