import { readProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { readCounted } from "../../../packages/core/src/read-project.ts";
import { problemsOf, suppliesOf } from "../../core/project-texts.ts";
import { howMany } from "../../how-many.ts";
import { CROWDED_FILES, head, inLayers, many, PLYWOOD, wall } from "./crowded-files.ts";

const stepsOf = (text: string): number => {
  const work = { steps: 0 };
  readCounted(text, undefined, work);
  return work.steps;
};

/** How many of what crowds a file, in the smallest of three. */
const FEW = howMany(200, 500);

describe("reading is linear: twice as much of it takes twice the steps", () => {
  it.each(Object.entries(CROWDED_FILES))("%s", (_, make) => {
    const [one, two, four] = [FEW, 2 * FEW, 4 * FEW].map((count) => stepsOf(make(count))) as [number, number, number];
    expect(one).toBeGreaterThan(0.9 * FEW);
    expect(two / one).toBeLessThan(2.2);
    expect(four / two).toBeLessThan(2.2);
  });

  it("and no file takes more than a thousand steps for each of its characters", () => {
    const most = Object.values(CROWDED_FILES).map((make) => stepsOf(make(4 * FEW)) / make(4 * FEW).length);
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
  const ROWS = howMany(5_000, 19_900);
  const rows = many(ROWS, (index) => `board ${index} of a long table,0.13,5,\n`);
  const files = { "long.csv": `name,conductivity_W_mK,mu_dry,sd_m\n${rows}` };
  const asking = (count: number): string =>
    `materials: long.csv\n${inLayers(50, (index) => (index < count ? `      - { material: bord ${index} of a long table, thickness: 12 mm }\n` : PLYWOOD))}`;

  it(`are looked for in a table of ${ROWS} rows ten times with ten times the steps of once`, () => {
    const steps = (count: number): number => {
      const work = { steps: 0 };
      readCounted(asking(count), suppliesOf(files), work);
      return work.steps;
    };
    const none = steps(0);
    const once = steps(1) - none;
    expect(once / ROWS).toBeLessThan(31 ** 2);
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
