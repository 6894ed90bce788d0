import { calculateBuildUp, readProject, surroundingsOf } from "@warmside/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sectionName, sectionOfPath } from "../../../packages/core/src/heat/paths.ts";
import { projectOf } from "../../core/project-texts.ts";

/** A wall of two insulated layers, each with framing of the same timber written inside it or named. */
const wall = (studs: string, battens: string, framings = ""): string => `project: two layers
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
${framings}    layers:
      - { material: mineral wool slab, thickness: 140 mm, framing: ${studs} }
      - { material: mineral wool slab, thickness: 50 mm, framing: ${battens} }
`;

const heatOf = (text: string) => {
  const project = projectOf(text);
  return calculateBuildUp(project.buildUps[0]!, surroundingsOf(project).sites.reported).heat;
};

describe("framing written inside a layer is of that layer alone, whatever its timber", () => {
  const timber = (fraction: string): string => `{ material: softwood timber, fraction: ${fraction} }`;
  const named = `    framings:\n      studs: ${timber("15 %")}\n      battens: ${timber("10 %")}\n`;

  it("two of one timber cross as two named ones do: four ways through, the same U", () => {
    const inside = heatOf(wall(timber("15 %"), timber("10 %")));
    const byName = heatOf(wall("studs", "battens", named));
    expect(inside.paths).toHaveLength(4);
    expect(inside.upperLimit).toBeCloseTo(byName.upperLimit, 12);
    expect(inside.transmittance).toBeCloseTo(byName.transmittance, 12);
    expect(inside.upperLimit).toBeGreaterThan(inside.lowerLimit);
  });

  it("also beside a framing that is called after the same timber", () => {
    const called = `    framings:\n      softwood timber: ${timber("15 %")}\n`;
    expect(heatOf(wall("softwood timber", timber("10 %"), called)).paths).toHaveLength(4);
    expect(heatOf(wall("softwood timber", "softwood timber", called)).paths).toHaveLength(2);
  });

  it("and in a variant", () => {
    const variants = `${wall(timber("15 %"), timber("10 %"))}    variants:\n      - { name: thicker, changes: [ { set: mineral wool slab 0.032, thickness: 100 mm } ] }\n`;
    const project = projectOf(
      variants.replace("mineral wool slab, thickness: 50", "mineral wool slab 0.032, thickness: 50"),
    );
    const [variant] = project.buildUps[0]!.variants;
    expect(new Set(variant!.buildUp.layers.map(({ framing }) => framing!.name)).size).toBe(2);
  });
});

describe("ways through of one name", () => {
  const words = fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom("studs", "battens", "&", "of layer 2", " ", "android") },
    { weight: 1, arbitrary: fc.constantFrom("and", "And") },
  );
  const names = fc.array(words, { minLength: 1, maxLength: 4 }).map((some) => some.join(" "));
  const framing = (material: unknown, percent: number) => ({ material, fraction: `${percent} %` });
  const wood = (name: string) => ({
    name,
    conductivity: "0.13 W/(m K)",
    "vapour resistance factor": 50,
    kind: "wood",
  });
  const files = fc
    .tuple(fc.uniqueArray(names, { minLength: 1, maxLength: 3 }), fc.array(names, { minLength: 1, maxLength: 3 }))
    .map(([named, inside]) => ({
      project: "ways",
      climate: "de-bilt",
      indoor: { heating: "20 °C", humidity: "class 3" },
      "build-ups": [
        {
          name: "Wall",
          element: "wall",
          framings: Object.fromEntries(named.map((name, at) => [name, framing("oak", 5 + at)])),
          layers: [...named, ...inside.map((name, at) => framing(wood(name), 10 + at))].map((through) => ({
            material: "mineral wool slab",
            thickness: "50 mm",
            framing: through,
          })),
        },
      ],
    }));

  it("there are none in any file that is read", () => {
    let read = 0;
    fc.assert(
      fc.property(files, (file) => {
        const text = JSON.stringify(file);
        if (!readProject(text).ok) return;
        read += 1;
        const { paths } = heatOf(text);
        expect(paths).toHaveLength(2 ** file["build-ups"][0]!.layers.length);
        const printed = paths.map((path) => sectionName(sectionOfPath(path, true)).replace(/\s+/g, " ").trim());
        expect(new Set(printed).size).toBe(paths.length);
      }),
      { numRuns: 300, seed: 300 },
    );
    expect(read).toBeGreaterThan(50);
  });
});
