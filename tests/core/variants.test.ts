import { describe, expect, it } from "vitest";
import { problemsOf, projectOf } from "./project-texts.ts";

/** A wall with named and unnamed layers; `variants` of it are laid on. */
const wallWith = (variants: string, more = ""): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Studio wall
    element: wall
${more}    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { name: lining, material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs, fit: gaps }
      - { name: sheathing, material: oriented strand board, thickness: 11 mm }
      - { air: 25 mm, ventilation: well }
      - { name: cladding, material: softwood timber, thickness: 20 mm }
    variants:
${variants}`;

const oneVariant = (...changes: string[]): string =>
  wallWith(`      - name: another\n        changes:\n${changes.map((change) => `          - ${change}\n`).join("")}`);

const variantOf = (...changes: string[]) => {
  const [variant] = projectOf(oneVariant(...changes)).buildUps[0]!.variants;
  return { ...variant!, names: variant!.buildUp.layers.map(({ name }) => name) };
};

const ORIGINAL = [
  "lining",
  "polyethylene sheet 0.15 mm",
  "mineral wool slab",
  "sheathing",
  "air layer, 25 mm",
  "cladding",
];

describe("each verb", () => {
  it("set: gives a layer other keys and leaves the rest of it as it was", () => {
    const { buildUp, names, changes } = variantOf("{ set: mineral wool slab, thickness: 200 mm }");
    expect(names).toEqual(ORIGINAL);
    expect(buildUp.layers[2]).toMatchObject({ thickness: 0.2, fit: "gaps", framing: { name: "studs" } });
    expect(changes).toEqual(["mineral wool slab: thickness 200 mm"]);
  });

  it("set: another material keeps the layer's thickness, framing and own name", () => {
    const { buildUp } = variantOf("{ set: sheathing, material: plywood }");
    expect(buildUp.layers[3]).toMatchObject({ name: "sheathing", thickness: 0.011, material: { name: "plywood" } });
  });

  it("swap: another layer in its place, with nothing of the one before", () => {
    const { buildUp, names, changes } = variantOf(
      "{ swap: mineral wool slab, for: { material: wood fibre batt, thickness: 145 mm, framing: studs } }",
    );
    expect(names).toEqual(ORIGINAL.with(2, "wood fibre batt"));
    expect(buildUp.layers[2]).toMatchObject({ thickness: 0.145, fit: "continuous", framing: { name: "studs" } });
    expect(changes).toEqual(["wood fibre batt, 145 mm, with studs in place of mineral wool slab, 140 mm, with studs"]);
  });

  it("add: before or after a layer", () => {
    const sheet = "{ material: breather membrane }";
    expect(variantOf(`{ add: ${sheet}, after: sheathing }`).names).toEqual(
      ORIGINAL.toSpliced(4, 0, "breather membrane"),
    );
    expect(variantOf(`{ add: ${sheet}, before: lining }`).names).toEqual(["breather membrane", ...ORIGINAL]);
  });

  it("remove: the layer is gone", () => {
    const { names, changes } = variantOf("{ remove: polyethylene sheet 0.15 mm }");
    expect(names).toEqual(ORIGINAL.toSpliced(1, 1));
    expect(changes).toEqual(["polyethylene sheet 0.15 mm taken out"]);
  });

  it("move: outwards and inwards, by the layer's own kind of place", () => {
    const outwards = variantOf("{ move: polyethylene sheet 0.15 mm, after: mineral wool slab }");
    expect(outwards.names).toEqual([
      "lining", "mineral wool slab", "polyethylene sheet 0.15 mm", "sheathing", "air layer, 25 mm", "cladding",
    ]); // biome-ignore format: one list
    const inwards = variantOf("{ move: cladding, before: polyethylene sheet 0.15 mm }");
    expect(inwards.names).toEqual(["lining", "cladding", ...ORIGINAL.slice(1, 5)]);
    const before = variantOf("{ move: lining, before: cladding }");
    expect(before.names).toEqual([...ORIGINAL.slice(1, 5), "lining", "cladding"]);
  });
});

describe("what a change's layer means", () => {
  it("a layer of the build-up it belongs to, whatever earlier changes did to it", () => {
    const { names } = variantOf(
      "{ swap: sheathing, for: { material: plywood, thickness: 12 mm } }",
      "{ add: { material: breather membrane }, after: sheathing }",
      "{ move: cladding, before: lining }",
      "{ remove: lining }",
    );
    expect(names).toEqual([
      "cladding", "polyethylene sheet 0.15 mm", "mineral wool slab", "plywood", "breather membrane", "air layer, 25 mm",
    ]); // biome-ignore format: one list
  });

  it("else one that an earlier change put in; changes set one after the other add up", () => {
    const { buildUp } = variantOf(
      "{ add: { name: outer, material: wood fibre insulation board, thickness: 60 mm }, after: sheathing }",
      "{ set: outer, thickness: 80 mm }",
      "{ set: outer, fit: gaps }",
    );
    expect(buildUp.layers[4]).toMatchObject({ name: "outer", thickness: 0.08, fit: "gaps" });
  });

  it("case, hyphens and spaces are forgiven, and a material's name goes where the layer has another", () => {
    expect(variantOf("{ remove: Oriented  Strand-Board }").names).toEqual(ORIGINAL.toSpliced(3, 1));
  });
});

describe("a variant is a whole build-up", () => {
  it("with the keys of the build-up it belongs to, and a name and id of its own", () => {
    const text = wallWith(
      "      - { name: Deeper Studs, changes: [ { set: mineral wool slab, thickness: 200 mm } ] }\n",
      "    target: 0.25 W/(m2 K)\n    area: 24 m2\n    openings: 4 m2\n    length: 8 m\n",
    );
    const [wall] = projectOf(text).buildUps;
    const { buildUp } = wall!.variants[0]!;
    expect(buildUp).toMatchObject({ target: 0.25, area: 24, openings: 4, length: 8, variants: [] });
    expect([buildUp.name, buildUp.slug]).toEqual(["Studio wall: Deeper Studs", "studio-wall-deeper-studs"]);
  });

  it("stated water stays with its layer when the layer moves, and with what is swapped for it", () => {
    const water = "    trapped water: { layer: sheathing, amount: 1 kg/m2 }\n";
    const moved = projectOf(
      wallWith(
        "      - { name: a, changes: [ { move: sheathing, before: lining }, { swap: sheathing, for: { material: plywood, thickness: 9 mm } } ] }\n",
        water,
      ),
    );
    expect(moved.buildUps[0]!.variants[0]!.buildUp.trappedWater).toMatchObject([{ layer: 0, amount: 1 }]);
  });

  it("stated water goes with a layer that goes, and the words say so", () => {
    const water = "    trapped water: { layer: sheathing, amount: 1 kg/m2 }\n";
    const [wall] = projectOf(wallWith("      - { name: a, changes: [ { remove: sheathing } ] }\n", water)).buildUps;
    expect(wall!.variants[0]!.buildUp.trappedWater).toEqual([]);
    expect(wall!.variants[0]!.changes).toEqual(["sheathing taken out", "the water stated for it goes with the layer"]);
  });

  it("a reading of timber does not pass to what is no timber", () => {
    const water = "    trapped water: { layer: sheathing, reading: 28 % }\n";
    const changes = "{ swap: sheathing, for: { material: fibre cement board, thickness: 9 mm } }";
    const text = wallWith(`      - { name: a, changes: [ ${changes} ] }\n`, water).replace(
      "oriented strand board",
      "softwood timber",
    );
    expect(projectOf(text).buildUps[0]!.variants[0]!.buildUp.trappedWater).toEqual([]);
  });

  it("framing that is lost in a swap is noted, and can be accepted", () => {
    const text = oneVariant("{ swap: mineral wool slab, for: { material: wood fibre batt, thickness: 140 mm } }");
    expect(projectOf(text).oddities).toMatchObject([{ code: "framing-left-out", accepted: false }]);
    const accepted = text.replace("climate:", "accept: [framing-left-out]\nclimate:");
    expect(projectOf(accepted).oddities).toMatchObject([{ code: "framing-left-out", accepted: true }]);
    expect(projectOf(oneVariant("{ swap: sheathing, for: { material: plywood, thickness: 9 mm } }")).oddities).toEqual(
      [],
    );
  });
});

describe("problems of changes", () => {
  it("point at the line, column and path of the change", () => {
    const [problem] = problemsOf(oneVariant("{ remove: lining }", "{ set: cladding, thickness: 22 }"));
    expect(problem).toMatchObject({
      line: 20,
      column: 41,
      path: "build-ups[0].variants[0].changes[1].thickness",
      write: ["22 mm"],
    });
  });

  it("are all told, of every variant", () => {
    const text = wallWith(
      "      - { name: a, changes: [ { set: sheeting, thickness: 9 mm }, { remove: clading } ] }\n" +
        "      - { name: b, changes: [ { add: { material: plywod, thickness: 9 mm }, after: lining } ] }\n",
    );
    expect(problemsOf(text).map(({ code, path }) => [code, path])).toEqual([
      ["change-layer-unknown", "build-ups[0].variants[0].changes[0].set"],
      ["change-layer-unknown", "build-ups[0].variants[0].changes[1].remove"],
      ["material-unknown", "build-ups[0].variants[1].changes[0].add.material"],
    ]);
  });
});

describe("prices of the project file", () => {
  const text = (prices: string): string =>
    oneVariant("{ remove: lining }").replace("build-ups:", `currency: £\nprices:\n${prices}build-ups:`);

  it("are read as the table's are: by material, thickness and unit, waste as a share", () => {
    const project = projectOf(
      text(
        "  - { material: mineral wool slab, thickness: 140 mm, per: m2, price: 9.50, waste: 5 %, hours: 0.1 }\n" +
          "  - { material: breather membrane, per: roll, covers: 75 m2, width: 1.5 m, lap: 150 mm }\n",
      ),
    );
    const none = { thickness: null, price: null, covers: null, width: null, lap: null, waste: 0, hours: null };
    expect(project.prices).toEqual({
      currency: "£",
      hourRate: null,
      heatPricePerKilowattHour: null,
      entries: [
        { ...none, material: "mineral wool slab", thickness: 0.14, per: "m2", price: 9.5, waste: 0.05, hours: 0.1 },
        { ...none, material: "breather membrane", per: "roll", covers: 75, width: 1.5, lap: 0.15 },
      ],
    });
  });

  it("of a table take the same columns", () => {
    const table =
      "material,thickness_m,per,price,covers_m2,width_m,lap_m,waste_pct,hours_per_m2\n" +
      "mineral wool slab,0.14,m2,9.50,,,,5,0.1\nbreather membrane,,roll,,75,1.5,0.15,,\n";
    const project = projectOf(oneVariant("{ remove: lining }").replace("build-ups:", "prices: my.csv\nbuild-ups:"), {
      "my.csv": table,
    });
    expect(project.prices?.entries).toMatchObject([
      { material: "mineral wool slab", thickness: 0.14, price: 9.5, waste: 0.05 },
      { material: "breather membrane", price: null, covers: 75, width: 1.5, lap: 0.15 },
    ]);
  });
});
