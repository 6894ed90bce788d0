import { describe, expect, test } from "vitest";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { textOfCase } from "../practice/cases.ts";
import { assessText } from "./corpus.ts";

/**
 * Rules of guidance on both sides of their limits. The practice corpus holds what they say of whole build-ups; here one
 * figure of a build-up is moved over the limit and back.
 */
const codesOf = ({ findings }: BuildUpResult): string[] => findings.map(({ code }) => code);

describe("a tight sheet outside a wall (common practice)", () => {
  const text = textOfCase("05-sheet-on-the-cold-side.yaml");
  const sheet = "      - { material: polyethylene sheet 0.15 mm }\n";
  const withOutside = (millimetres: number): string =>
    text.replace(sheet, `${sheet}      - { material: mineral wool slab, thickness: ${millimetres} mm }\n`);
  test("with less than a third of the resistance outside it is refused by its place", () => {
    expect(text).toContain(sheet);
    expect(codesOf(assessText(text))).toContain("tight-sheet-under-floor");
    expect(codesOf(assessText(withOutside(50)))).toContain("tight-sheet-under-floor");
  });
  test("with more it lies in the insulation, and the numbers decide", () => {
    expect(codesOf(assessText(withOutside(90)))).not.toContain("tight-sheet-under-floor");
  });
});

describe("openings of a ventilated cold flat roof (common practice: 0.6 % of the roof)", () => {
  const text = textOfCase("29-cold-roof-ventilated.yaml");
  test.each([
    [5900, true],
    [6000, false],
  ])("%i mm² per m²: refused %s", (area, refused) => {
    expect(text).toContain("10000 mm2/m2");
    const codes = codesOf(assessText(text.replace("10000 mm2/m2", `${area} mm2/m2`)));
    expect(codes.includes("cold-flat-roof-unventilated")).toBe(refused);
  });
});

describe("water above a ground membrane, in a colder place and a damper room than the case has", () => {
  const text = textOfCase("42-slab-with-membrane.yaml")
    .replace(/climate: .*/, "climate: kassel")
    .replace("class 3", "class 5");
  test("between foam and concrete it is a condition, not a fault", () => {
    const { judgement, findings } = assessText(text);
    expect(judgement.word).toBe("sound with conditions");
    expect(findings.find(({ code }) => code === "stays-wet")?.severity).toBe("caution");
  });
  test("against wood it is a fault", () => {
    const boarded = text.replace(
      "material: concrete 2200, thickness: 100 mm",
      "material: oriented strand board, thickness: 18 mm",
    );
    const { judgement, findings } = assessText(boarded);
    expect(judgement.word).toBe("change it");
    expect(findings.find(({ code }) => code === "stays-wet")?.severity).toBe("fault");
  });
});

describe("what holds vapour back on the warm side", () => {
  const text = textOfCase("46-damp-room-board-only.yaml");
  test("a board too open for the room is no vapour layer; a membrane of sd 2 m is one", () => {
    expect(codesOf(assessText(text))).toContain("no-vapour-layer-warm-side");
    const wool = text.match(/\n.*mineral wool slab.*\n/)![0];
    const sheeted = text.replace(wool, `\n      - { material: vapour control layer sd 2 m }${wool}`);
    expect(codesOf(assessText(sheeted))).not.toContain("no-vapour-layer-warm-side");
  });
});

describe("a tight finish in a cooled building", () => {
  const text = textOfCase("08-cooled-shop-vinyl-wallpaper.yaml");
  test("vinyl wallpaper on the cold side is refused though no water condenses; paper wallpaper is not", () => {
    const vinyl = assessText(text);
    expect([vinyl.moisture!.verdict, vinyl.judgement.word]).toEqual(["dry", "change it"]);
    expect(codesOf(vinyl)).toContain("vapour-layer-cold-side");
    expect(vinyl.vapourLayer!.message).not.toContain("outer skin");
    expect(codesOf(assessText(text.replaceAll("vinyl wallpaper", "paper wallpaper")))).not.toContain(
      "vapour-layer-cold-side",
    );
  });
});

describe("a tight sheet outside what needs to stay dry, with vapour from the room", () => {
  const text = `project: Alder Row
climate: sand-point-alaska
severity: +8 K
humidity margin: 1.168
indoor: { heating: 18.3 °C, humidity: class 3, heated days: 6.3, otherwise: 8 °C }
build-ups:
  - name: Drying rack floor
    element: floor
    faces: void
    void: { area: 33 m2, perimeter: 21 m, wind: 10 m/s, openings: 0 mm2/m, wall thickness: 0.5 m, height: 1.1 m, ground insulation: 1.349 m2 K/W, shelter: exposed }
    layers:
      - { air: 80 mm, ventilation: none }
      - { material: { name: clay sheet, sd: 1.9 m } }
`;
  test("is a caution, as nothing is judged by it: what is sound has no fault", () => {
    const { judgement, findings } = assessText(text);
    expect(judgement.word).toBe("sound");
    const found = findings.find(({ code }) => code === "vapour-layer-cold-side");
    expect(found?.severity).toBe("caution");
  });
});

describe("two tight layers, however tight the tighter one is", () => {
  const text = textOfCase("47-tanked-shower-wall.yaml");
  test("a foil does not hide the tanking beside it", () => {
    const foil = text.replace("polyethylene sheet 0.15 mm", "foil vapour control layer sd 1500 m");
    expect(codesOf(assessText(text))).toContain("two-tight-layers");
    expect(codesOf(assessText(foil))).toContain("two-tight-layers");
  });
});
