import { readProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { readCounted } from "../../../packages/core/src/read-project.ts";
import { problemsOf, suppliesOf } from "../../core/project-texts.ts";

const head = "project: P\nclimate: de-bilt\nindoor: { heating: 20 °C, humidity: class 3 }\n";
const PLYWOOD = "      - { material: plywood, thickness: 12 mm }\n";
const wall = (name: string, layers: string): string => `  - name: ${name}\n    element: wall\n    layers:\n${layers}`;
const many = (count: number, make: (index: number) => string, joint = ""): string =>
  Array.from({ length: count }, (_, index) => make(index)).join(joint);
/** Build-ups of fifty layers each. */
const inLayers = (count: number, make: (index: number) => string): string =>
  `${head}build-ups:\n${many(count / 50, (index) =>
    wall(
      `W${index}`,
      many(50, (layer) => make(index * 50 + layer)),
    ),
  )}`;

/** Files that took seconds to minutes before, for a number of the thing that they are full of. */
const SHAPES: Readonly<Record<string, (count: number) => string>> = {
  "a part repeated": (count) => `project: &a P\nclimate: [${"*a,".repeat(count)}]\n`,
  "keys without values in braces": (count) =>
    `${head}build-ups: [ { name: W, element: wall, ${many(count, (index) => `${index + 10_000} m`, ", ")} } ]\n`,
  "keys joined to their values": (count) =>
    `${head}build-ups: [ { ${many(count, (index) => `a${index + 10_000}:b`, ", ")} } ]\n`,
  "unknown keys": (count) =>
    `${head}${many(count, (index) => `key${index + 10_000}: 1\n`)}build-ups:\n${wall("W", PLYWOOD)}`,
  "misspelt keys": (count) => inLayers(count, () => "      - { materal: plywood, thicknes: 12 mm }\n"),
  "unknown materials": (count) =>
    inLayers(count, (index) => `      - { material: plywod ${index + 10_000}, thickness: 12 mm }\n`),
  "unknown framings": (count) =>
    inLayers(count, (index) => `      - { material: plywood, thickness: 12 mm, framing: studz ${index + 10_000} }\n`),
  "quantities without units": (count) => inLayers(count, () => "      - { material: plywood, thickness: 12 }\n"),
  "build-ups": (count) => `${head}build-ups:\n${many(count, (index) => wall(`W${index + 10_000}`, PLYWOOD))}`,
  "lines indented with tabs": (count) => "a:\n\tb: c\n".repeat(count / 2),
  "marks without meaning": (count) => "!a ".repeat(count),
};

const stepsOf = (text: string): number => {
  const work = { steps: 0 };
  readCounted(text, undefined, work);
  return work.steps;
};

describe("reading is linear: twice as much of it takes twice the steps", () => {
  it.each(Object.entries(SHAPES))("%s", (_, make) => {
    const [one, two, four] = [500, 1000, 2000].map((count) => stepsOf(make(count))) as [number, number, number];
    expect(one).toBeGreaterThan(450);
    expect(two / one).toBeLessThan(2.2);
    expect(four / two).toBeLessThan(2.2);
  });

  it("and no file takes more than a thousand steps for each of its characters", () => {
    const most = Object.values(SHAPES).map((make) => stepsOf(make(2000)) / make(2000).length);
    expect(Math.max(...most)).toBeLessThan(1000);
  });

  it("2 MB without a line or a comma are refused before they are read as YAML", () => {
    for (const sign of ["!a ", "*a ", "&a ", "? "]) {
      const text = sign.repeat(660_000);
      expect(problemsOf(text).map(({ code }) => code)).toEqual(["too-many-values"]);
      expect(stepsOf(text)).toBe(0);
    }
  });
});

describe("near names", () => {
  const rows = many(19_900, (index) => `board ${index} of a long table,0.13,5,\n`);
  const files = { "long.csv": `name,conductivity_W_mK,mu_dry,sd_m\n${rows}` };
  const asking = (count: number): string =>
    `materials: long.csv\n${inLayers(50, (index) => (index < count ? `      - { material: bord ${index} of a long table, thickness: 12 mm }\n` : PLYWOOD))}`;

  it("are looked for in a table of 19900 rows ten times with ten times the steps of once", () => {
    const steps = (count: number): number => {
      const work = { steps: 0 };
      readCounted(asking(count), suppliesOf(files), work);
      return work.steps;
    };
    const none = steps(0);
    const once = steps(1) - none;
    expect(once / 19_900).toBeLessThan(31 ** 2);
    expect(steps(10) - none).toBeLessThan(11 * once);
  });

  it("are not looked for after the first sixty unknown names of a file", () => {
    const problems = readProject(inLayers(200, () => "      - { material: plywod, thickness: 12 mm }\n"));
    if (problems.ok) throw new Error("read");
    const offered = problems.problems.filter(({ details }) => (details.near as string[]).length > 0);
    expect(problems.problems).toHaveLength(200);
    expect(offered.length).toBeGreaterThan(50);
    expect(offered.length).toBeLessThanOrEqual(60);
  });
});

describe("ways through a build-up", () => {
  const framed = (count: number, name: (index: number) => string): string =>
    `${head}build-ups:\n${wall(
      "W",
      many(count, (index) => `      - { material: mineral wool slab, thickness: 20 mm, framing: ${name(index)} }\n`),
    ).replace("    layers:", "    framings: { studs: { material: softwood timber, fraction: 10 % } }\n    layers:")}`;
  const inline = (): string => "{ material: softwood timber, fraction: 10 % }";

  it("are 64 with six framings that cross, and refused with seven", () => {
    expect(problemsOf(framed(6, inline))).toEqual([]);
    const [problem, ...others] = problemsOf(framed(7, inline));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "too-many-ways", path: "build-ups[0].layers", line: 9 });
    expect(problem!.likelySlip).toContain("Layers 1, 2, 3, 4, 5, 6 and 7 have the same softwood timber");
  });

  it("stay two where one named framing runs through a hundred layers", () => {
    expect(problemsOf(framed(100, () => "studs").replaceAll("20 mm", "5 mm"))).toEqual([]);
  });

  it("are refused in a variant that adds the seventh", () => {
    const added = `{ add: { material: plywood, thickness: 12 mm, framing: ${inline()} }, after: lining }`;
    const text = `${framed(6, inline)}      - { name: lining, material: plywood, thickness: 12 mm }\n    variants: [ { name: seven, changes: [ ${added} ] } ]\n`;
    expect(problemsOf(text).map(({ code, path }) => [code, path])).toEqual([
      ["too-many-ways", "build-ups[0].variants[0].changes"],
    ]);
  });
});
