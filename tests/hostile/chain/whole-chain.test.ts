import type { ProjectResult } from "@warmside/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { howMany } from "../../how-many.ts";
import { lawsBroken } from "./lawful-result.ts";
import { projectFiles } from "./random-project-files.ts";
import { resultOf } from "./run-chain.ts";

const COUNT = howMany(150, 2000);

describe("random valid project files always come to a finite, lawful result", () => {
  const seen = {
    verdicts: new Set<string>(),
    judgements: new Set<string>(),
    elements: new Set<string>(),
    far: 0,
    wet: 0,
  };

  it(`${COUNT} of them`, () => {
    const property = fc.property(projectFiles, (file) => {
      const result = resultOf(file);
      fc.pre(result !== null);
      for (const { element, judgement, moisture, faces, trappedWater } of result.buildUps) {
        seen.elements.add(element);
        seen.judgements.add(judgement.word);
        seen.verdicts.add(moisture?.verdict ?? "beyond");
        seen.far += faces === "outdoors" ? 0 : 1;
        seen.wet += trappedWater.length;
      }
    });
    fc.assert(property, { numRuns: COUNT, seed: 2000, endOnFailure: true });
  });

  it("and they are worth it: every element, every judgement and every verdict was among them", () => {
    expect([...seen.elements].sort()).toEqual(["flat roof", "floor", "partition", "pitched roof", "wall"]);
    expect([...seen.verdicts].sort()).toEqual(["beyond", "dries out", "dry", "stays wet"]);
    expect(seen.judgements.size).toBeGreaterThanOrEqual(4);
    expect(seen.far).toBeGreaterThan(0.15 * COUNT);
    expect(seen.wet).toBeGreaterThan(0.1 * COUNT);
  });

  it("a broken law would be seen", () => {
    const wet = firstThatStaysWet();
    const spoilt = (change: (copy: typeof wet) => void): string[] => {
      const copy = structuredClone(wet);
      change(copy);
      return lawsBroken(copy);
    };
    const wetSection = ({ buildUps }: typeof wet) =>
      buildUps.flatMap(({ moisture }) => moisture?.sections ?? []).find(({ verdict }) => verdict === "stays wet")!;
    const faults: Record<string, (copy: typeof wet) => unknown> = {
      "a verdict": (copy) => Object.assign(wetSection(copy), { verdict: "dry" }),
      "a peak": (copy) => Object.assign(wetSection(copy).peak, { amount: wetSection(copy).peak.amount + 1e-6 }),
      "a reason": (copy) => Object.assign(copy.buildUps[0]!.judgement, { reasons: ["nowhere/nothing"] }),
      "a judgement": (copy) =>
        Object.assign(copy.buildUps.find(({ moisture }) => moisture?.verdict === "stays wet")!, {
          judgement: { word: "sound", reasons: [], message: "No water.", conditions: [] },
          findings: [],
        }),
      "a number": (copy) => Object.assign(copy.buildUps[0]!.layers[0]!, { sd: Number.NaN }),
    };
    expect(spoilt(() => undefined)).toEqual([]);
    for (const [name, fault] of Object.entries(faults)) expect(spoilt(fault), name).not.toEqual([]);
  });
});

function firstThatStaysWet(): ProjectResult {
  for (const file of fc.sample(projectFiles, { numRuns: 200, seed: 7 })) {
    const result = resultOf(file);
    if (result?.buildUps.some(({ moisture }) => moisture?.verdict === "stays wet")) return result;
  }
  throw new Error("none of them stays wet");
}
