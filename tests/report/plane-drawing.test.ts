import { readFileSync } from "node:fs";
import { assessProject, readProjectOrThrow } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { junctionsAnnex } from "../../packages/report/src/annex/junctions.ts";
import { planeFigure } from "../../packages/report/src/annex/plane.ts";

const result = assessProject(
  readProjectOrThrow(`${readFileSync("shared/alder-row-pottery.yaml", "utf8")}
junctions:
  - { name: Eaves <1>, roof edge: [Studio wall, Cold flat roof over the kiln], blocking: 45 mm, plates: 2 }
`),
);
const wall = result.buildUps.find(({ plane }) => plane !== null)!;

describe("the picture of the plane", () => {
  it("has a title, a description, numbers on its lines, water as dots and the worst strip in words", async () => {
    const { text } = await planeFigure(wall, wall.plane!, "plane");
    const { picture, asBuilt } = wall.plane!;
    expect(text).toContain("<title");
    expect(text).toContain("<desc");
    for (const { value } of picture.isotherms.slice(0, 3)) expect(text).toContain(`>${value}</text>`);
    expect(text.match(/<circle [^>]*stroke=/g)!.length).toBeGreaterThanOrEqual(picture.water.length);
    expect(text).toContain(`${(1000 * asBuilt.strip!.amount).toFixed(0)}\u00a0g/m²`);
    expect(text).toContain("of 50 mm");
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("is small as data, and every place of it lies in its frame", () => {
    const { picture } = wall.plane!;
    expect(JSON.stringify(picture).length).toBeLessThan(12_000);
    const { x0, x1, y0, y1 } = picture.frame;
    const places = [...picture.isotherms.flatMap(({ points }) => points), ...picture.water.map(({ x, y }) => [x, y])];
    expect(places.length).toBeGreaterThan(20);
    for (const [x, y] of places as [number, number][]) {
      expect(x >= x0 - 2e-4 && x <= x1 + 2e-4, `x ${x}`).toBe(true);
      expect(y >= y0 - 2e-4 && y <= y1 + 2e-4, `y ${y}`).toBe(true);
    }
  });

  it("isotherms fall from the room outwards", () => {
    const { isotherms } = wall.plane!.picture;
    const meanDepth = isotherms.map(({ points }) => points.reduce((sum, [x]) => sum + x, 0) / points.length);
    const byValue = isotherms.map(({ value }, index) => ({ value, depth: meanDepth[index]! }));
    const inOrder = byValue.sort((one, other) => other.value - one.value).map(({ depth }) => depth);
    expect(inOrder).toEqual([...inOrder].sort((one, other) => one - other));
  });

  it("a junction's name cannot act in the page", async () => {
    const made = await junctionsAnnex(result);
    expect(made!.text).toContain("Eaves &lt;1&gt;");
    expect(made!.text).not.toContain("<1>");
    expect(await junctionsAnnex({ ...result, junctions: [] })).toBeNull();
  });
});
