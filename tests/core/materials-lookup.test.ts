import { readFileSync } from "node:fs";
import {
  findInTables,
  materialTable,
  readMaterialTable,
  readPriceTable,
  SHIPPED_EVERYDAY_NAMES,
  SHIPPED_MATERIALS,
  wordProblem,
} from "@warmside/core";
import { describe, expect, it } from "vitest";

const HEADER = "name,group,kind,density_kg_m3,conductivity_W_mK,mu_dry,mu_wet,sd_m,source\n";
const problemsOf = (text: string): string[] => {
  const reading = readMaterialTable(text, "my.csv");
  return reading.ok ? [] : reading.problems.map(({ code, position }) => `${position?.line ?? "-"} ${code}`);
};

describe("the shipped material table", () => {
  const table = materialTable(SHIPPED_MATERIALS);

  it("reads whole: every row a sheet or a material with a thickness", () => {
    const rows = readFileSync("shared/materials.csv", "utf8").trim().split("\n").slice(1);
    expect(SHIPPED_MATERIALS.map(({ name }) => name)).toEqual(rows.map((row) => row.split(",", 1)[0]));
    for (const material of SHIPPED_MATERIALS) {
      const isSheet = material.equivalentAirLayerThickness !== null;
      expect(isSheet, material.name).toBe(material.conductivity === null);
      expect(isSheet, material.name).toBe(material.vapourResistanceFactorDry === null);
      expect(material.source.length, material.name).toBeGreaterThan(5);
    }
  });

  it("gives softwood as printed, and its basis", () => {
    const answer = findInTables("Softwood timber", [table]);
    expect(answer.found).toMatchObject({
      conductivity: 0.13, density: 500, specificHeat: 1600, vapourResistanceFactorDry: 50, vapourResistanceFactorWet: 20,
      kind: "wood", group: "timber", basis: "tabulated", emissivity: 0.9,
    }); // biome-ignore format: one material
  });

  it("finds every one of its names, in capitals and with hyphens for spaces", () => {
    for (const { name } of SHIPPED_MATERIALS) {
      expect(findInTables(name.toUpperCase().replaceAll(" ", "-"), [table]).found?.name).toBe(name);
    }
  });

  it("offers a row of its own for everything that is also called something else", () => {
    const names = new Set(SHIPPED_MATERIALS.map(({ name }) => name));
    expect(SHIPPED_EVERYDAY_NAMES.length).toBeGreaterThanOrEqual(150);
    for (const { name, materials, question } of SHIPPED_EVERYDAY_NAMES) {
      const unknown = materials.filter((material) => !names.has(material));
      expect(unknown, name).toEqual([]);
      expect(materials.length > 0 || question !== null, name).toBe(true);
      expect(findInTables(name, [table]), name).toMatchObject({ found: null, near: materials, question });
    }
  });

  it.each([
    ["Breathable membrane", "breather membrane sd 0.05 m"],
    ["stone-wool", "mineral wool slab"],
    ["breeze blocks", "lightweight block 1000"],
    ["corrugated iron", "galvanised steel sheet new"],
    ["multi-layer foil", "reflective vapour control layer sd 1500 m"],
    ["chipboard", "particleboard"],
    ["tongue-and-groove", "softwood weatherboarding"],
    ["shiplap", "softwood weatherboarding"],
    ["damp-proof course", "polythene damp-proof membrane 0.3 mm"],
    ["roofing felt", "bitumen sheet"],
    ["plastic vapour barrier", "polyethylene sheet 0.15 mm"],
  ])("%s may mean %s", (name, material) => {
    expect(findInTables(name, [table])).toMatchObject({ found: null, near: expect.arrayContaining([material]) });
  });

  it("a name of several meanings is asked about in the problem", () => {
    const answer = findInTables("breeze block", [table]);
    if (answer.found !== null) throw new Error("found");
    const { near, question } = answer;
    const problem = { code: "material-unknown" as const, path: [], position: null, received: null };
    const worded = wordProblem({ ...problem, details: { name: "breeze block", near, alike: [], question } });
    expect(worded.likelySlip).toContain("which density");
    expect(worded.likelySlip).toContain("dense block");
  });

  it.each(Object.getOwnPropertyNames(Object.prototype))("%s, which every object has, is no material", (name) => {
    const answer = findInTables(name, [table]);
    expect(answer.found).toBeNull();
    expect(answer).toMatchObject({ near: [], alike: [] });
  });

  it.each([
    ["OSB", "oriented strand board"],
    ["OSB 3", "oriented strand board"],
    ["OSB/3", "oriented strand board"],
    ["18 mm OSB", "oriented strand board"],
    ["plasterboard", "gypsum plasterboard"],
    ["mineral wool", "mineral wool slab"],
    ["breather membrain", "breather membrane"],
    ["softwod timber", "softwood timber"],
  ])("%s is near %s", (name, near) => {
    const answer = findInTables(name, [table]);
    expect(answer.found).toBeNull();
    if (answer.found === null) expect(answer.near[0]).toBe(near);
  });

  it.each([
    ["bitumen roofing felt", ["roofing underlay felt bituminous"]],
    [
      "brickwork pier",
      ["facing brick", "inner leaf brick", "solid clay brick 1800", "engineering brick", "sand-lime brick 1800"],
    ],
    ["unobtainium", []],
    ["a b c", []],
  ])("nothing is near %s: rows that share most of its words are shown", (name, alike) => {
    expect(findInTables(name, [table])).toEqual({ found: null, near: [], question: null, alike });
  });
});

describe("a material table of the user's own", () => {
  it("needs only the columns that make a material, in any order, with origin in # lines", () => {
    const reading = readMaterialTable(
      "# mine\nsd_m,name,mu_dry,conductivity_W_mK\n,board,5,0.1\n40,sheet,,\n",
      "my.csv",
    );
    if (!reading.ok) throw new Error("not read");
    expect(reading.value).toMatchObject([
      {
        name: "board",
        conductivity: 0.1,
        vapourResistanceFactorDry: 5,
        vapourResistanceFactorWet: 5,
        basis: "assumed",
      },
      {
        name: "sheet",
        equivalentAirLayerThickness: 40,
        conductivity: null,
        source: "the table my.csv, which names no source",
      },
    ]);
  });

  it.each([
    ["", "- table-empty"],
    [HEADER, "- table-empty"],
    ["name,source\nboard,x\n", "1 column-missing"],
    [`${HEADER.trim()},colour\n`, "1 column-unknown"],
    [`${HEADER.trim()},name\n`, "1 column-twice"],
    [HEADER.replaceAll(",", ";"), "1 table-separator"],
    [`${HEADER}board,,,,0.1,5,5\n`, "2 row-length"],
    [`${HEADER}board,,,,0,1,5,5,,x\n`, "2 row-length"],
    [`${HEADER}board,,,,"0,1",5,5,,x\n`, "2 cell-decimal-comma"],
    [`${HEADER}board,,,,0.1 W/mK,5,5,,x\n`, "2 cell-not-number"],
    [`${HEADER}board,,,,-0.1,5,5,,x\n`, "2 cell-impossible"],
    [`${HEADER}board,,,,0.1,0.5,1,,x\n`, "2 cell-impossible"],
    [`${HEADER}board,,stone,,0.1,5,5,,x\n`, "2 cell-not-one-of"],
    [`${HEADER},,,,0.1,5,5,,x\n`, "2 row-without-name"],
    [`${HEADER}board,,,,0.1,5,5,2,x\n`, "2 row-mixed"],
    [`${HEADER}board,,,,0.1,,,,x\n`, "2 row-incomplete"],
    [`${HEADER}board,,,,0.1,5,5,,x\nBoard ,,,,0.1,5,5,,x\n`, "3 row-twice"],
    [`${HEADER}"board,,,,0.1,5,5,,x\n`, "2 table-quotes"],
    ["name\0,x\n", "- table-not-text"],
    [`# ${"x".repeat(2_000_001)}`, "- table-too-large"],
  ])("%j: %s", (text, problem) => {
    expect(problemsOf(text)).toContain(problem);
  });

  it("tells all of its problems at once, with lines", () => {
    const text = `# origin\n${HEADER}board,,,,0.1,0.5,1,,x\n\nsheet,,,,,,,many,x\n,,,,0.1,5,5,,x\n`;
    expect(problemsOf(text)).toEqual(["3 cell-impossible", "5 cell-not-number", "6 row-without-name"]);
  });
});

describe("a price table", () => {
  it("reads what a square metre, a roll or a metre costs", () => {
    const reading = readPriceTable("material,per,price,covers_m2\nwool,m2,4.5,\nmembrane,roll,60,50\n", "p.csv");
    expect(reading).toEqual({
      ok: true,
      value: [
        {
          material: "wool",
          per: "m2",
          price: 4.5,
          covers: null,
          waste: 0,
          hours: null,
          thickness: null,
          width: null,
          lap: null,
        },
        {
          material: "membrane",
          per: "roll",
          price: 60,
          covers: 50,
          waste: 0,
          hours: null,
          thickness: null,
          width: null,
          lap: null,
        },
      ],
    });
  });

  it.each([
    ["material,per,price\nwool,bag,4\n", "2 cell-not-one-of"],
    ["material,per,price\nwool,m2,-4\n", "2 cell-impossible"],
    ["material,per,price\nwool,m2,\n", "2 cell-empty"],
    ["material,per,price\n,m2,4\n", "2 row-without-name"],
    ["material,per,price,covers_m2\nmembrane,roll,60,\n", "2 price-needs-cover"],
  ])("%j: %s", (text, problem) => {
    const reading = readPriceTable(text, "p.csv");
    const found = reading.ok ? [] : reading.problems.map(({ code, position }) => `${position?.line ?? "-"} ${code}`);
    expect(found).toContain(problem);
  });
});
