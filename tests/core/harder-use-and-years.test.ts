import { describe, expect, test } from "vitest";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import { textOfCase } from "../practice/cases.ts";
import { assessText } from "./corpus.ts";

/** What a harder year or a harder use makes of a build-up counts in its judgement. */
const runOf = (text: string, name: string) => assessText(text).sensitivity.find((run) => run.name === name);

describe("the warmer year of one in ten", () => {
  const cooled = textOfCase("06-cooled-shop-sheet-inside.yaml");
  test("is tried where vapour comes from outdoors, and is that year", () => {
    const warmer = runOf(cooled, "one in ten warmer year")!;
    const asReported = assessText(cooled.replace("climate:", "severity: one in ten warmer\nclimate:"));
    expect(warmer.peak.amount).toBeCloseTo(asReported.moisture!.peak.amount, 12);
    expect(warmer.verdict).toBe(asReported.moisture!.verdict);
  });
  test("is not tried where it comes from the room", () => {
    expect(runOf(textOfCase("01-stud-wall-as-taught.yaml"), "one in ten warmer year")).toBeUndefined();
  });
  test("nor twice", () => {
    const text = cooled.replace("climate:", "severity: one in ten warmer\nclimate:");
    expect(runOf(text, "one in ten warmer year")).toBeUndefined();
    expect(runOf(text, "one in ten colder year")).toBeDefined();
  });
});

test("the colder year is not tried a second time where it is the reported one", () => {
  const text = textOfCase("01-stud-wall-as-taught.yaml");
  expect(runOf(text, "one in ten colder year")).toBeDefined();
  const colder = text.replace("climate:", "severity: one in ten colder\nclimate:");
  expect(runOf(colder, "one in ten colder year")).toBeUndefined();
});

describe("a room that is heated on some days only", () => {
  const wall = (days: string) => `project: Alder Row pottery studio
climate: oslo
indoor: { heating: 20 °C, humidity: class 4${days} }
build-ups:
  - name: Workshop wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: { name: membrane, sd: 1 m } }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: fibre cement board, thickness: 8 mm }
      - { air: 25 mm, ventilation: well }
`;
  const threeDays = wall(", heated days: 3");

  test("is tried heated daily, which is the same room without the days", () => {
    expect(runOf(threeDays, "heated every day")!.peak.amount).toBeCloseTo(
      assessText(wall("")).moisture!.peak.amount,
      12,
    );
    expect(runOf(wall(""), "heated every day")).toBeUndefined();
  });

  test("makes a condition where the build-up is sound only so", () => {
    expect(assessText(wall("")).judgement.word).toBe("change it");
    const { judgement, findings } = assessText(threeDays);
    expect(judgement.word).toBe("sound with conditions");
    const finding = findings.find(isFinding("sound-as-used"))!;
    expect(judgement.reasons).toContain(finding.id);
    expect(finding.figures.amount).toBeGreaterThan(finding.figures.limit);
  });
});
