import { describe, expect, it } from "vitest";
import { changed, problemsOf } from "../../core/project-texts.ts";

/** Layers that resist more than can be built are refused: their nodes would take the calculation minutes. */
const slip =
  "{ material: { name: aerogel, conductivity: 0.002 W/(m K), vapour resistance factor: 5 }, thickness: 3 m }";

describe("layers that together resist more than can be built are refused, and the greatest is named", () => {
  it("in a build-up", () => {
    const [problem, ...others] = problemsOf(changed("{ material: gypsum plasterboard, thickness: 12.5 mm }", slip));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "resists-too-much", path: "build-ups[0].layers", line: 12 });
    expect(problem!.message).toContain("the layers together have a resistance of 1504 m2 K/W, most of it in aerogel");
    expect(problem!.message).toContain("0 to 50 m2 K/W, and more cannot be built");
  });

  it("in a variant, whose build-up is sound", () => {
    const variants = `    variants:\n      - { name: thicker, changes: [ { add: ${slip}, after: gypsum plasterboard } ] }\n    layers:`;
    expect(problemsOf(changed("    layers:", variants)).map(({ code, path }) => [code, path])).toEqual([
      ["resists-too-much", "build-ups[0].variants[0].changes"],
    ]);
  });

  it("a metre and a half of wool is not", () => {
    expect(problemsOf(changed("thickness: 140 mm", "thickness: 1.5 m"))).toEqual([]);
  });
});
