import { describe, expect, test } from "vitest";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import type { BuildUpResult, FindingCode } from "../../packages/core/src/result/types.ts";
import { textOfCase } from "../practice/cases.ts";
import { assessText } from "./corpus.ts";

/** What a build-up is judged by, where a rule could overlook it. Invented build-ups; limits by METHOD.md, Amounts of water. */
const file = (buildUp: string, more = "indoor: { heating: 20 °C, humidity: class 3 }"): string =>
  `project: Alder Row pottery studio\nclimate: de-bilt\n${more}\nbuild-ups:\n${buildUp}`;
const atOslo = (text: string): string => text.replace("climate: de-bilt", "climate: oslo");
const codesOf = ({ findings }: BuildUpResult): string[] => findings.map(({ code }) => code);
const findingOf = <Code extends FindingCode>({ findings }: BuildUpResult, code: Code) => findings.find(isFinding(code));

describe("water is judged in every zone of every section", () => {
  const slab = (summer: number): string =>
    file(
      `  - name: Slab
    element: floor
    faces: ground
    ground: { area: 80 m2, perimeter: 36 m, membrane: true }
    layers:
      - { material: wood fibre insulation board, thickness: 60 mm }
      - { material: vapour control layer sd 2 m }
      - { material: extruded polystyrene, thickness: 20 mm }
      - { material: concrete 2200, thickness: 100 mm }
      - { material: polythene damp-proof membrane 0.3 mm }
`,
      `indoor: { temperature: 18 °C, humidity: [ 75 %, 75 %, 75 %, ${Array(6).fill(`${summer} %`).join(", ")}, 75 %, 75 %, 75 % ] }`,
    );

  test.each([50, 53, 56])("a wetter summer (%i %%) never makes a milder judgement", (summer) => {
    const result = assessText(atOslo(slab(summer)));
    expect(result.judgement.word).toBe("change it");
    const tooMuch = findingOf(result, "condensation-too-much")!;
    expect(tooMuch.figures.limitBy).toMatchObject({ kind: "dry mass", material: "wood fibre insulation board" });
    expect(tooMuch.figures.amount).toBeGreaterThan(tooMuch.figures.limit);
  });

  test("over its limit between the joists is told, though less stays for good through them", () => {
    const result = assessText(
      file(`  - name: Roof
    element: flat roof
    framings: { joists: { material: softwood timber, width: 45 mm, spacing: 400 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 150 mm, framing: joists }
      - { material: oriented strand board, thickness: 18 mm }
      - { material: vapour control layer sd 100 m }
      - { material: expanded polystyrene, thickness: 60 mm }
      - { material: { name: roof sheet, sd: 300 m }, purpose: weather skin }
`),
    );
    const between = result.moisture!.sections.find(({ name }) => name === "between framing")!;
    const tooMuch = findingOf(result, "condensation-too-much")!;
    expect(tooMuch.figures.amount).toBeGreaterThan(0.99 * between.withinMonth.peak.amount);
    expect(tooMuch.message).toContain("(between the framing)");
  });
});

describe("the colder year counts where it weighs more than the reported one", () => {
  const wall = (sd: number): string =>
    file(`  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: { name: membrane, sd: ${sd} m } }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, thickness: 11 mm }
`);

  test("a wall whose board passes its limit only then is to be changed, and the colder year is named", () => {
    const { judgement, findings } = assessText(wall(1.5));
    const reported = findings.find(isFinding("condensation-dries-out"));
    const colder = findings.find(isFinding("condensation-too-much"));
    expect(reported).toMatchObject({ severity: "caution" });
    expect(colder!.figures.year).toBe("one in ten colder year");
    expect(reported!.figures.amount).toBeLessThan(reported!.figures.limit);
    expect(colder!.message).toMatch(/^In a cold year \(1 in 10\), too much water/);
    expect(colder!.figures.amount).toBeGreaterThan(colder!.figures.limit);
    expect(judgement.word).toBe("change it");
    expect(judgement.reasons[0]).toBe(colder!.id);
  });

  test("it is not told where it changes nothing", () => {
    const { findings } = assessText(wall(0.5));
    expect(findings.filter(({ code }) => code.startsWith("condensation"))).toHaveLength(1);
  });
});

describe("the years until what is left makes 200 g/m² are told only while it is less", () => {
  test.each(["24-steel-box-drying-clay.yaml", "26-warm-roof-no-vapour-layer.yaml"])("%s holds more already", (name) => {
    const { findings } = assessText(textOfCase(name));
    const { message, figures } = findings.find(isFinding("stays-wet"))!;
    expect(figures.amount).toBeGreaterThan(0.2);
    expect(message).toContain("of the first year");
    expect(message).toContain("It grows by");
    expect(message).not.toContain("until");
  });
});

describe("a tight layer is a tight outer skin only beyond the insulation, where vapour comes from the room", () => {
  const store = file(
    `  - name: Store wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 100 mm }
      - { material: oriented strand board, thickness: 11 mm }
      - { air: 25 mm, ventilation: well }
`,
    "indoor: { unheated: true }",
  );

  test("where nothing drives vapour there is none, and no cold side", () => {
    const result = assessText(store);
    expect(result.vapourLayer!.outerSkin).toBeNull();
    expect(codesOf(result)).not.toContain("tight-outer-skin");
    expect(codesOf(result)).not.toContain("vapour-layer-cold-side");
    expect(result.judgement.word).toBe("sound");
  });

  test("a sheet on the room side of a cooled shop is a layer on the cold side, and nothing has to be bonded to it", () => {
    const result = assessText(textOfCase("06-cooled-shop-sheet-inside.yaml"));
    expect(codesOf(result)).toContain("vapour-layer-cold-side");
    expect(codesOf(result)).not.toContain("tight-outer-skin");
  });

  test("only foam is to be bonded to a skin; the room side is sealed before wool, and under a roof's skin", () => {
    const adviceOf = (name: string) => findingOf(assessText(textOfCase(name)), "tight-outer-skin")!.advice;
    expect(adviceOf("24-steel-box-drying-clay.yaml")).toMatch(
      /^Seal the room side: room air must not reach the skin. Look behind/,
    );
    expect(adviceOf("26-warm-roof-no-vapour-layer.yaml")).toBe("Seal the room side: room air must not reach the skin.");
  });
});

describe("what guidance refuses forgives nothing, and a required layer is never said to be needless", () => {
  test.each(["30-cold-roof-filled.yaml", "31-cold-roof-foil-boards-still-air.yaml", "47-tanked-shower-wall.yaml"])(
    "%s",
    (name) => {
      expect(codesOf(assessText(textOfCase(name)))).not.toContain("forgives-gaps");
    },
  );
});

describe("the deck of a flat roof", () => {
  const roof = (layers: readonly string[], framings = ""): BuildUpResult =>
    assessText(
      file(`  - name: Roof
    element: flat roof
${framings}    layers:
${layers.map((layer) => `      - { ${layer} }\n`).join("")}`),
    );
  const skin = "material: { name: roof sheet, sd: 300 m }, purpose: weather skin";
  const warm = ["material: oriented strand board, thickness: 18 mm", "material: vapour control layer sd 100 m"];

  test("is no insulating board over the foam: a warm roof stays one", () => {
    const foam = "material: expanded polystyrene, thickness: 120 mm";
    const plain = roof([...warm, foam, skin]);
    const covered = roof([...warm, foam, "material: perlite board, thickness: 15 mm", skin]);
    expect(codesOf(covered)).not.toContain("cold-flat-roof-unventilated");
    expect(covered.judgement.word).toBe(plain.judgement.word);
  });

  test("is no decking over the weather skin", () => {
    const decked = roof([
      ...warm, "material: expanded polystyrene, thickness: 120 mm", skin, "material: softwood timber, thickness: 25 mm",
    ]); // biome-ignore format: one roof
    expect(codesOf(decked)).not.toContain("cold-flat-roof-unventilated");
  });

  test("is no boarded ceiling: insulation below the deck is counted as without one", () => {
    const joists = "    framings: { joists: { material: softwood timber, width: 45 mm, spacing: 400 mm } }\n";
    const rest = [
      "material: mineral wool slab, thickness: 150 mm, framing: joists", ...warm,
      "material: expanded polystyrene, thickness: 60 mm", skin,
    ]; // biome-ignore format: one roof
    const lined = roof(["material: gypsum plasterboard, thickness: 12.5 mm", ...rest], joists);
    const boarded = roof(["material: softwood timber, thickness: 12 mm", ...rest], joists);
    for (const result of [lined, boarded]) {
      expect(findingOf(result, "insulation-below-deck")).toMatchObject({ severity: "fault" });
    }
  });
});

describe("a foil facing takes up no water, whatever the board behind it", () => {
  const wall = (layers: string): BuildUpResult =>
    assessText(
      file(`  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: { name: membrane, sd: 3 m } }
      - { material: mineral wool slab, thickness: 140 mm }
${layers}      - { material: foil-faced PIR board, thickness: 30 mm }
`),
    );
  test("wool against it has the limit of wool against a foil", () => {
    const limitOf = ({ findings }: BuildUpResult) =>
      (findings.find(isFinding("condensation-dries-out")) ?? findings.find(isFinding("condensation-too-much")))!.figures
        .limit;
    expect(limitOf(wall(""))).toBe(0.2);
    expect(limitOf(wall("      - { material: aluminium foil facing 0.05 mm }\n"))).toBe(0.2);
  });
});
