import { describe, expect, test, vi } from "vitest";

/** How often a build-up was calculated, whoever asked for it. */
const counted = vi.hoisted(() => ({ calculations: 0 }));

vi.mock("../../packages/core/src/calculate-build-up.ts", async (original) => {
  const actual = await original<typeof import("../../packages/core/src/calculate-build-up.ts")>();
  return {
    ...actual,
    figuresOfBuildUp: (...given: Parameters<typeof actual.figuresOfBuildUp>) => {
      counted.calculations += 1;
      return actual.figuresOfBuildUp(...given);
    },
  };
});

const { findRemedies } = await import("../../packages/core/src/remedies/find-remedies.ts");
const { corpus } = await import("./corpus.ts");
const { assessBuildUp } = await import("../../packages/core/src/assess-build-up.ts");

describe("the calculations of a search are counted, not guessed", () => {
  test("no search takes more calculations than it says, over the whole corpus", () => {
    const searched = corpus().map((one) => {
      counted.calculations = 0;
      const { calculations } = findRemedies(one.buildUp, one.surroundings, one.assessed);
      return { title: one.title, said: calculations, made: counted.calculations };
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
    counted.calculations = 0;
    const { calculations, search, remedies } = findRemedies(
      deep,
      open.surroundings,
      assessBuildUp(deep, open.surroundings),
    );
    expect(counted.calculations).toBeLessThan(calculations / 20);
    // What is told of those offered comes on top: three calculations each, each of some forty ordinary ones.
    expect(calculations).toBeLessThanOrEqual(1200 + remedies.length * 3 * 40);
    expect(search).toContain("(the search stopped at 1200 calculations)");
  });

  test("what counts them sees every calculation: an assessment makes at least four", () => {
    const [one] = corpus();
    counted.calculations = 0;
    assessBuildUp(one!.buildUp, one!.surroundings);
    expect(counted.calculations).toBeGreaterThanOrEqual(4);
  });
});
