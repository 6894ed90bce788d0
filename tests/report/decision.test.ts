import { type BuildUpResult, type JudgementWord, meetsTarget } from "@warmside/core";
import { describe, expect, test } from "vitest";
import { type Asked, answerSentence } from "../../packages/report/src/decision/answer-sentence.ts";
import { type Mark, marksOf, worstOf } from "../../packages/report/src/decision/marks.ts";
import { standardWords } from "../../packages/report/src/standard-words.ts";
import { demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";

const JUDGEMENTS: JudgementWord[] = ["sound", "sound with conditions", "change it", "beyond this method"];
const TARGETS = [true, false, null];

/** Every case of one build-up. */
const CASES = JUDGEMENTS.flatMap((judgement) => TARGETS.map((meets) => ({ judgement, meetsTarget: meets })));

/** Every combination of one, two and three build-ups. */
function combinations(): Asked[][] {
  const named = (cases: readonly Omit<Asked, "name">[]): Asked[] =>
    cases.map((one, index) => ({ ...one, name: `Build-up ${index + 1}` }));
  const two = CASES.flatMap((one) => CASES.map((other) => [one, other]));
  const three = two.flatMap((pair) => CASES.map((third) => [...pair, third]));
  return [...CASES.map((one) => [one]), ...two, ...three].map(named);
}

describe("the answer in one sentence, over all combinations of up to three build-ups", () => {
  const all = combinations();

  test("no where anything must change or misses its U-value, else cannot be told, else yes, on conditions, else yes", () => {
    expect(all).toHaveLength(12 + 144 + 1728);
    for (const asked of all) {
      const { word } = answerSentence(asked);
      const has = (judgement: JudgementWord): boolean => asked.some((one) => one.judgement === judgement);
      const refused = has("change it") || asked.some((one) => one.meetsTarget === false);
      const wanted = refused
        ? "No"
        : has("beyond this method")
          ? "No answer"
          : has("sound with conditions")
            ? "Yes, on conditions"
            : "Yes";
      expect(word, JSON.stringify(asked)).toBe(wanted);
    }
  });

  test("begins with its word, is one sentence, and leaves no build-up out", () => {
    for (const asked of all) {
      const { word, sentence } = answerSentence(asked);
      expect(sentence.startsWith(`${word}: `)).toBe(true);
      expect(sentence.match(/\./g)).toHaveLength(1);
      expect(sentence).not.toMatch(/undefined|null| {2}|;\./);
      const spoken = (text: RegExp, count: number): void => {
        expect(text.test(sentence), `${sentence} ${JSON.stringify(asked)}`).toBe(count > 0);
      };
      spoken(/must change/, asked.filter(({ judgement }) => judgement === "change it").length);
      spoken(
        /misse?s? (its|their) U-value|miss their U-value/,
        asked.filter(({ meetsTarget: met }) => met === false).length,
      );
      spoken(/cannot be judged/, asked.filter(({ judgement }) => judgement === "beyond this method").length);
      const rest = asked.filter(({ judgement, meetsTarget: met }) => judgement.startsWith("sound") && met !== false);
      spoken(/may be closed/, rest.length);
      expect(/conditions below/.test(sentence)).toBe(
        rest.some(({ judgement }) => judgement === "sound with conditions"),
      );
    }
  });

  test("reads as it should", () => {
    const of = (...asked: [string, JudgementWord, boolean | null][]): string =>
      answerSentence(asked.map(([name, judgement, met]) => ({ name, judgement, meetsTarget: met }))).sentence;
    expect(of(["Wall", "sound", null])).toBe("Yes: it may be closed as drawn.");
    expect(of(["Wall", "sound", false])).toBe("No: it misses its U-value.");
    expect(of(["Wall", "change it", true], ["Roof", "sound", true])).toBe(
      "No: Wall must change; the other may be closed as drawn.",
    );
    expect(of(["Wall", "sound", true], ["Roof", "sound with conditions", true])).toBe(
      "Yes, on conditions: both build-ups may be closed as drawn or on the conditions below.",
    );
    expect(of(["Pool", "beyond this method", null])).toBe("No answer: it cannot be judged by this method.");
  });
});

describe("the three marks", () => {
  test("the row's colour is the worst of them", () => {
    const marks: Mark[] = ["pass", "conditions", "untold", "fail"];
    for (const moisture of marks)
      for (const surface of marks)
        for (const heat of [...marks, null]) {
          const shown = [moisture, surface, heat].filter((mark) => mark !== null);
          const worst = marks[Math.max(...shown.map((mark) => marks.indexOf(mark)))];
          expect(worstOf({ moisture, surface, heat })).toBe(worst);
        }
  });

  test.each([...demoResult().buildUps, ...everyPart().buildUps].map((buildUp) => [buildUp.name, buildUp] as const))(
    "%s: each from its own figures",
    (_, buildUp) => {
      const { moisture, surface, heat } = marksOf(buildUp);
      const { target, judgement } = buildUp;
      if (buildUp.heat === null) {
        expect([moisture, surface]).toEqual(["untold", "untold"]);
        return;
      }
      expect(heat).toBe(target === null ? null : meetsTarget(buildUp.heat.transmittance, target) ? "pass" : "fail");
      const { temperatureFactor, requiredTemperatureFactor: required } = buildUp.heat;
      if (required !== null && temperatureFactor < required) expect(surface).toBe("fail");
      if (judgement.word === "sound") expect([moisture, surface === "fail"]).toEqual(["pass", false]);
      if (judgement.word === "change it") expect([moisture, surface]).toContain("fail");
      if (judgement.word === "sound with conditions") expect([moisture, surface]).toContain("conditions");
    },
  );
});

describe("the standard's own result", () => {
  const [buildUp] = demoResult().buildUps as [BuildUpResult];
  const of = (verdict: "dry" | "dries out" | "stays wet", within: typeof verdict, word: JudgementWord): boolean => {
    const moisture = buildUp.moisture!;
    const sections = moisture.sections.map((section) => ({
      ...section,
      withinMonth: { ...section.withinMonth, verdict: within },
    }));
    const governing = sections[moisture.governing.index]!;
    const judgement = { ...buildUp.judgement, word };
    return standardWords({ moisture: { ...moisture, verdict, sections, governing }, judgement })!.differs;
  };

  test("stands beside the judgement where it accepts what the judgement does not, or the other way, or reads otherwise", () => {
    expect(of("dry", "dry", "sound")).toBe(false);
    expect(of("dries out", "dries out", "sound with conditions")).toBe(false);
    expect(of("stays wet", "stays wet", "change it")).toBe(false);
    expect(of("dry", "dry", "change it")).toBe(true);
    expect(of("stays wet", "dries out", "sound")).toBe(true);
    expect(of("stays wet", "stays wet", "sound")).toBe(true);
    expect(of("dries out", "dry", "sound")).toBe(true);
  });
});
