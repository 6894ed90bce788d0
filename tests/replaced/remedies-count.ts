import { describe, expect, test } from "vitest";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { findRemedies } from "../../packages/core/src/remedies/find-remedies.ts";
import { corpus } from "../core/corpus.ts";
import { seams } from "./seams.ts";

describe("the calculations of a search are counted, not guessed", () => {
  test("no search takes more calculations than it says, over the whole corpus", () => {
    const searched = corpus().map((one) => {
      seams.calculations = 0;
      const { calculations } = findRemedies(one.buildUp, one.surroundings, one.assessed);
      return { title: one.title, said: calculations, made: seams.calculations };
    });
    expect(searched.some(({ made }) => made > 50)).toBe(true);
    for (const { title, said, made } of searched) expect(made, title).toBeLessThanOrEqual(said);
  });

  test("a wall of thousands of nodes, each calculation of which counts for many, ends at the limit and says so", () => {
    const open = corpus().find(({ title }) => title === "demo: Cold flat roof over the kiln")!;
    const layers = open.buildUp.layers.flatMap((layer) =>
      layer.name.includes("wool") ? Array(12).fill({ ...layer, thickness: 3 }) : [layer],
    );
    const deep = { ...open.buildUp, layers };
    seams.calculations = 0;
    const { calculations, search, remedies } = findRemedies(
      deep,
      open.surroundings,
      assessBuildUp(deep, open.surroundings),
    );
    expect(seams.calculations).toBeLessThan(calculations / 20);
    // What is told of those offered comes on top: three calculations each, each of some forty ordinary ones.
    expect(calculations).toBeLessThanOrEqual(1200 + remedies.length * 3 * 40);
    expect(search).toContain("(the search stopped at 1200 calculations)");
  });

  test("what counts them sees every calculation: an assessment makes at least four", () => {
    const [one] = corpus();
    seams.calculations = 0;
    assessBuildUp(one!.buildUp, one!.surroundings);
    expect(seams.calculations).toBeGreaterThanOrEqual(4);
  });
});
