import {
  airLayer,
  assessProject,
  buildUp,
  framing,
  layer,
  material,
  ProblemsError,
  problemInText,
  project,
  readProject,
  readProjectOrThrow,
  room,
  wordProblem,
} from "@warmside/core";
import { describe, expect, it } from "vitest";

const WRITTEN = `
project: Kiln shed
climate: heathrow
indoor: { heating: 19 °C, humidity: class 2 }
build-ups:
  - name: Kiln wall
    element: wall
    target: 0.30 W/(m2 K)
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;

describe("a wall of plain functions", () => {
  it("is assessed in under fifteen lines, as its project file is", () => {
    const studs = framing({ width: 0.045, spacing: 0.6 });
    const layers = [
      layer("gypsum plasterboard", 0.0125),
      layer("polyethylene sheet 0.15 mm"),
      layer("mineral wool slab", 0.14, { framing: studs }),
      layer("oriented strand board", 0.011),
      airLayer(0.025, "well"),
      layer("softwood timber", 0.02),
    ];
    const wall = buildUp({ name: "Kiln wall", target: 0.3, layers });
    const rooms = [room({ heating: 19, humidityClass: 2 })];
    const result = assessProject(project({ name: "Kiln shed", climate: "heathrow", rooms, buildUps: [wall] }));

    const read = assessProject(readProjectOrThrow(WRITTEN));
    expect(result.buildUps[0]!.heat).toEqual(read.buildUps[0]!.heat);
    expect(result.buildUps[0]!.moisture).toEqual(read.buildUps[0]!.moisture);
    expect(result.buildUps[0]!.judgement).toEqual(read.buildUps[0]!.judgement);
  });

  it("framing has the other timber of the element", () => {
    const joists = framing({ name: "joists", width: 0.045, spacing: 0.45 });
    const floor = buildUp({ element: "floor", layers: [layer("mineral wool slab", 0.1, { framing: joists })] });
    expect(floor.layers[0]!.framing!.share).toBeCloseTo(0.045 / 0.45 + 0.01, 12);
    const stated = framing({ width: 0.045, spacing: 0.45, otherTimber: 0.05 });
    const wall = buildUp({ layers: [layer("mineral wool slab", 0.1, { framing: stated })] });
    expect(wall.layers[0]!.framing!.share).toBeCloseTo(0.15, 12);
  });

  it("materials of one's own", () => {
    const felt = material({ name: "felt board", conductivity: 0.045, vapourResistanceFactor: 3, density: 150 });
    expect(layer(felt, 0.06)).toMatchObject({ type: "material", name: "felt board", thickness: 0.06 });
    expect(layer({ name: "film", sd: 4 })).toMatchObject({ type: "sheet", thickness: 0 });
  });
});

describe("what cannot be is refused in the words of the project file's reader", () => {
  const wordsOf = (make: () => unknown): string[] => {
    try {
      make();
    } catch (error) {
      if (error instanceof ProblemsError) return error.problems.map((problem) => problemInText(wordProblem(problem)));
    }
    return [];
  };
  const wordsOfFile = (text: string): string[] => {
    const reading = readProject(text);
    return reading.ok ? [] : reading.problems.map((problem) => problemInText(wordProblem(problem)));
  };
  /** The sentence without its place. */
  const core = (text: string): string =>
    /(thickness|heating|conductivity|spacing) cannot be .*?\. Expected .*?\.(?= |$)/.exec(text)![0];

  it.each([
    [() => layer("mineral wool slab", 14), WRITTEN.replace("140 mm", "14 m"), "thickness cannot be"],
    [() => layer({ name: "x", conductivity: 900, vapourResistanceFactor: 1 }, 0.1), null, "conductivity cannot be"],
    [() => framing({ width: 0.045, spacing: 20 }), null, "spacing cannot be"],
  ])("case %#", (make, file, says) => {
    const [told] = wordsOf(make);
    expect(told).toContain(says);
    if (file !== null) expect(core(told!).replace("14000 mm", "14 m")).toBe(core(wordsOfFile(file)[0]!));
  });

  it("a material or a place that is not known", () => {
    expect(wordsOf(() => layer("minral wool slab", 0.1))[0]).toContain("Write `mineral wool slab`");
    expect(wordsOf(() => project({ climate: "heatrow", buildUps: [] }))[0]).toContain("heathrow");
  });

  it("a layer without λ, a class that is none, a list that is none", () => {
    const bare = { name: "x" } as unknown as Parameters<typeof material>[0];
    expect(wordsOf(() => layer(bare, 0.1)).length).toBeGreaterThan(0);
    expect(wordsOf(() => room({ humidityClass: 6 as 5 }))[0]).toContain("class cannot be 6");
  });
});
