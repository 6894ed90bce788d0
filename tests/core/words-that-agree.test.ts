import { describe, expect, test } from "vitest";
import { assessProject } from "../../packages/core/src/assess-project.ts";
import type { SectionCalculation } from "../../packages/core/src/calculate-build-up.ts";
import { placeInWords } from "../../packages/core/src/findings/words/places.ts";
import { waterThatWets } from "../../packages/core/src/further-checks/water-that-wets.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import type { PartOfLayer, Place, SlicePart } from "../../packages/core/src/result/places.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { verdictInWords } from "../../packages/report/src/cli/answers/verdict-in-words.ts";
import { textOfCase } from "../practice/cases.ts";
import { demoResult } from "../report/demo.ts";

/** What is said of a build-up agrees with its figures, sentence by sentence. */
const answers = (text: string): BuildUpResult[] => assessProject(readProjectOrThrow(text)).buildUps;
const one = (element: string, layers: string, more = ""): BuildUpResult =>
  answers(`project: Alder Row pottery studio
climate: heathrow
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: One
    element: ${element}
${more}    layers:
${layers}`)[0]!;
const saidBy = (result: BuildUpResult, code: string): string[] =>
  result.findings.filter((finding) => finding.code === code).map(({ message, advice }) => `${message} ${advice}`);
const verdictOf = (result: BuildUpResult): string => verdictInWords({ ...result, moisture: result.moisture! });

describe("a verdict of the inside is never told alone", () => {
  test("beside drops on a surface", () => {
    const steel = one("pitched roof\n    pitch: 15 °", "      - { material: steel, thickness: 0.7 mm }\n");
    expect(verdictOf(steel)).toBe("Verdict: dry inside in every month of the year; drops on the surface in 5 months.");
  });
  test("beside water built in", () => {
    const frame = (reading: string): BuildUpResult =>
      one(
        "wall",
        `      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { air: 25 mm, ventilation: well }
`,
        `    trapped water: { layer: mineral wool slab${reading} }
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }
`,
      );
    expect(verdictOf(frame(""))).toMatch(
      /^Verdict: dry inside .*; the 1000\sg\/m² built in takes \d+ days to leave\.$/,
    );
    expect(verdictOf(frame(", reading: 35 %"))).toMatch(/built in does not leave within ten years\.$/);
    expect(verdictOf(frame(", reading: 35 %"))).toContain(
      "; in the studs, for each square metre of their own face, the ",
    );
  });
  test("in as many days as the finding says", () => {
    const [store] = demoResult().buildUps.filter(({ trappedWater }) => trappedWater.length > 0);
    const said = saidBy(store!, "trapped-water")[0]!;
    const days = / gone after (\d+) days/.exec(said)![1];
    expect(verdictOf(store!)).toContain(` built in takes ${days} days to leave.`);
  });
  test("and alone where nothing stands beside it", () => {
    const [first] = answers(textOfCase("01-stud-wall-as-taught.yaml"));
    expect(verdictOf(first!)).toBe("Verdict: dry, in every month of the year.");
  });
});

describe("what ISO 13788 does not pass", () => {
  test("and drying within the month clears: nothing is said to stay", () => {
    const roof = one(
      "pitched roof\n    pitch: 30 °",
      `      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: softwood timber, thickness: 20 mm }
      - { material: mineral wool roof board, thickness: 160 mm }
      - { material: polyurethane foam unfaced, thickness: 45 mm }
      - { material: bitumen sheet, thickness: 5 mm }
`,
    );
    expect(roof.moisture!.verdict).toBe("stays wet");
    expect(roof.moisture!.governing.withinMonth.verdict).toBe("dries out");
    expect(roof.judgement.message).toContain("is gone within the year");
    expect(roof.judgement.message).toContain("With drying within the month, which conserves water, all of it does");
    expect(roof.judgement.message).not.toContain("What stays");
  });
  test("and a trace a year stays: how much, and how long it takes", () => {
    const [panel] = answers(textOfCase("97-cold-store.yaml"));
    expect(panel!.judgement.message).toMatch(/What stays is [\d.]+ g\/m² a year/);
  });
});

describe("a condition asks for what there is to keep", () => {
  test("no unbroken layer is asked for in masonry, straw between plasters and sprayed foam", () => {
    const [, straw, cavity] = answers(textOfCase("81-straw-and-filled-cavity.yaml"));
    const foam = answers(textOfCase("82-sprayed-foam-on-steel.yaml"));
    for (const each of [straw!, cavity!, ...foam]) {
      const said = saidBy(each, "condensation-dries-out");
      for (const words of said) expect(words, each.name).not.toContain("Keep the layer that holds back the vapour");
    }
    expect(saidBy(cavity!, "condensation-dries-out").length).toBeGreaterThan(0);
  });
  test("it is where a board or sheet holds the vapour back", () => {
    const roof = one(
      "flat roof\n    pitch: 2 °",
      `      - { material: plywood, thickness: 18 mm }
      - { material: mineral wool roof board, thickness: 150 mm }
      - { material: bitumen sheet, thickness: 5 mm }
`,
    );
    expect(saidBy(roof, "condensation-dries-out").join()).toContain("Keep the layer that holds back the vapour");
  });
  test("a condition that two findings share is told once", () => {
    for (const result of answers(textOfCase("80-steel-container.yaml")))
      expect(new Set(result.judgement.conditions).size).toBe(result.judgement.conditions.length);
  });
  test("a partition beside a cold store is not told to ventilate a room that is dry enough", () => {
    const partition = answers(textOfCase("96-one-step-beside-walls-and-roofs.yaml")).find(({ name }) =>
      name.endsWith("store, no sheet"),
    )!;
    const said = partition.findings.map(({ advice }) => advice ?? "").join("\n");
    expect(said).not.toContain("damper room");
    expect(said).toContain("tighter vapour layer");
  });
});

describe("water that framing could take up", () => {
  const section = (verdict: string, peak: number, level: number | null): SectionCalculation =>
    ({
      withinMonth: { verdict, peak },
      repeating: level === null ? null : { settles: true, years: 1, level, growthPerYear: 0 },
    }) as unknown as SectionCalculation;
  test("is the most of a year that ends dry, be it in the ordinary years after a rare one", () => {
    expect(waterThatWets([section("dries out", 0.017, null)])).toBe(0.017);
    expect(waterThatWets([section("stays wet", 0.017, 0)])).toBe(0.017);
  });
  test("is without bound where some stays and adds up", () => {
    expect(waterThatWets([section("stays wet", 0.017, 0.004)])).toBeNull();
    expect(waterThatWets([section("stays wet", 0.017, null)])).toBeNull();
  });
});

describe("a year of one in ten over DIN's limits", () => {
  const text = textOfCase("81-straw-and-filled-cavity.yaml");
  const cavity = (changed: string): BuildUpResult => answers(changed)[2]!;
  const codes = ({ findings }: BuildUpResult): string[] => findings.map(({ code }) => code);
  const tooMuchIn = (result: BuildUpResult): string[] => saidBy(result, "condensation-too-much");
  test("condemns no masonry with an inner leaf in a winter like DIN's", () => {
    expect(codes(cavity(text))).not.toContain("condensation-too-much");
  });
  const filled = "  - name: Filled cavity wall\n    element: wall\n";
  test("condemns it where boards lined inside take the place of the inner leaf, and the two-season check fails", () => {
    const boards = text
      .replace("aerated block 460, thickness: 100 mm", "gypsum plasterboard, thickness: 40 mm")
      .replace(filled, `${filled}    wetted by rain: no\n`);
    const wall = cavity(boards);
    expect(wall.twoSeasonCheck!.passes).toBe(false);
    expect(tooMuchIn(wall)).not.toEqual([]);
  });
  test("condemns it where the coldest month is colder than DIN's winter", () => {
    const project = readProjectOrThrow(text);
    const january = (degrees: number): BuildUpResult => {
      const temperature = project.climate.temperature.map((was, month) => (month === 0 ? degrees : was + 1));
      return assessProject({ ...project, climate: { ...project.climate, temperature } }).buildUps[2]!;
    };
    expect(tooMuchIn(january(-4.9))).toEqual([]);
    expect(tooMuchIn(january(-5.1)).join()).toContain("In a cold year (1 in 10)");
  });
});

describe("where built-in water goes", () => {
  const wall = (amount: string): string =>
    saidBy(
      one(
        "wall",
        `      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { name: batt, material: wood fibre batt, thickness: 100 mm }
      - { material: breather membrane }
`,
        `    trapped water: { layer: batt, amount: ${amount} }
`,
      ),
      "trapped-water",
    )[0]!;
  test("of a tenth of a gram nothing is told: nothing needs to dry", () => {
    expect(wall("0.0001 kg/m2")).toMatch(/nothing needs to dry\. The layer is not between/);
  });
  test("what dries to both sides adds up", () => {
    const [open] = answers(textOfCase("12-wet-blown-wool.yaml")).slice(1);
    const water = open!.trappedWater[0]!;
    expect(water.toRoom + water.toFarSide).toBeGreaterThan(0.99 * water.amount);
    expect(saidBy(open!, "trapped-water")[0]).toContain("leaves to the room, the rest outwards.");
  });
  test("what does not dry leaves no rest", () => {
    const [between] = answers(textOfCase("12-wet-blown-wool.yaml"));
    expect(saidBy(between!, "trapped-water")[0]).toContain("Meanwhile 73 g/m² left to the room and 379 g/m² left");
  });
});

describe("a place in words", () => {
  const layers = [
    { name: "board", material: "foil-faced PIR board" },
    { name: "batt", material: "wood fibre batt" },
  ];
  const part = (layer: number, of: SlicePart): PartOfLayer => ({
    layer,
    part: of,
    material: of === "framing" ? "softwood timber" : layers[layer]!.material,
  });
  const at = (inner: PartOfLayer | null, outer: PartOfLayer | null, extent: Place["extent"] = "node"): string =>
    placeInWords({ extent, inner, outer }, { layers });
  test.each([
    [at(part(1, "whole"), part(0, "inner facing")), "between batt and board"],
    [at(part(0, "whole"), part(0, "outer facing")), "behind the outer facing of board"],
    [at(part(0, "inner facing"), part(0, "whole")), "behind the inner facing of board"],
    [at(part(1, "framing"), part(0, "whole")), "between softwood timber and board"],
    [at(part(1, "whole"), part(1, "whole")), "inside batt"],
    [at(part(1, "whole"), null), "at the face of batt"],
    [at(null, part(1, "whole")), "at the face of batt"],
    [at(null, null), "at the face of the build-up"],
    [at(part(0, "whole"), part(1, "whole"), "zone"), "in a zone from board to batt"],
    [at(part(1, "whole"), part(1, "whole"), "zone"), "in a zone inside batt"],
  ])("%s", (said, expected) => {
    expect(said).toBe(expected);
  });
});
