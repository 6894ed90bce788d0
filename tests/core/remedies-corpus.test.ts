import { describe, expect, test } from "vitest";
import { assessBuildUp, judgeBuildUp } from "../../packages/core/src/assess-build-up.ts";
import type { AirLayer, BuildUp, Layer } from "../../packages/core/src/project/types.ts";
import { findRemedies, type RemedySearch } from "../../packages/core/src/remedies/find-remedies.ts";
import { changesOf } from "../../packages/core/src/remedies/kinds.ts";
import { remedyInWords } from "../../packages/core/src/remedies/remedy-in-words.ts";
import type { Change, ChangeStep, Situation } from "../../packages/core/src/remedies/types.ts";
import type { BuildUpResult, Remedy } from "../../packages/core/src/result/types.ts";
import { layerSd } from "../../packages/core/src/vapour/layer-sd.ts";
import { materialNamed } from "./build-ups.ts";
import { type Case, corpus } from "./corpus.ts";
import { rulesBroken } from "./remedy-rules.ts";

/**
 * Every remedy of the practice corpus and of the demo, held against what METHOD.md, Remedies asks of remedies.
 * Nothing of the search is used to judge its outcome: each change is made again and assessed alone.
 */
interface Searched extends Case {
  situation: Situation;
  search: RemedySearch;
}

const cases: Searched[] = corpus().map((one) => ({
  ...one,
  situation: { buildUp: one.buildUp, surroundings: one.surroundings, warmSide: warmSideOf(one.assessed) },
  search: findRemedies(one.buildUp, one.surroundings, one.assessed),
}));
const withRemedies = cases.filter(({ search }) => search.remedies.length > 0);

const RANK = { "beyond this method": 0, "change it": 0, "sound with conditions": 1, sound: 2 } as const;

describe("remedies of the whole corpus", () => {
  test("there are some to look at, singles and pairs", () => {
    expect(withRemedies.length).toBeGreaterThan(20);
    expect(withRemedies.flatMap(({ search }) => search.remedies).some(({ change }) => change.includes("; and "))).toBe(
      true,
    );
  });

  test.each(withRemedies)(
    "$title: assessed alone, each gives what it lists, and is better than now, or meets the target that was all it missed",
    (one) => {
      for (const remedy of one.search.remedies) {
        const { result, step } = again(one, remedy);
        expect(result.judgement.word).toBe(remedy.judgement);
        const better = RANK[remedy.judgement] - RANK[one.assessed.judgement.word];
        if (isForTarget(one)) expect(better >= 0 && !missesTarget(result), remedy.change).toBe(true);
        else expect(better).toBeGreaterThan(0);
        expect(remedy.verdict).toBe(result.moisture!.verdict);
        expect(remedy.transmittance).toBe(result.heat!.transmittance);
        expect(remedy.peak).toEqual(result.moisture!.peak);
        expect(remedy.thicknessInside + remedy.thicknessOutside).toBeCloseTo(
          thicknessOf(step.buildUp) - thicknessOf(one.buildUp),
          9,
        );
      }
    },
  );

  test.each(withRemedies)("$title: sized to the least, one step less of any change does not do", (one) => {
    for (const remedy of one.search.remedies) {
      for (const smaller of oneStepLess(one, remedy)) {
        const result = assessBuildUp(smaller.step.buildUp, smaller.step.surroundings ?? one.surroundings);
        const worse = RANK[result.judgement.word] < RANK[remedy.judgement];
        const colder = smaller.keepsWarmth && rounded(result) > rounded(one.assessed);
        const unfit = brokenBy(one, smaller.step).length > 0;
        const misses = one.search.search!.includes("target") && missesTarget(result);
        expect(worse || colder || unfit || misses, `${remedyInWords(smaller.step.does)} already does`).toBe(true);
      }
    }
  });

  test.each(withRemedies)("$title: each keeps a margin of water, a warm deck, and buries no blamed sheet", (one) => {
    for (const remedy of one.search.remedies) expect(brokenBy(one, again(one, remedy).step), remedy.change).toEqual([]);
  });

  test.each(withRemedies)("$title: each tells what it rests on, and the values of what it brings in", (one) => {
    const known = new Set(one.buildUp.layers.map(({ name }) => name));
    for (const remedy of one.search.remedies) {
      const { result, step } = again(one, remedy);
      expect(remedy.conditions.length > 0, remedy.change).toBe(result.judgement.word === "sound with conditions");
      expect(result.findings.map(({ message }) => message)).toEqual(expect.arrayContaining(remedy.conditions));
      const brought = step.buildUp.layers.filter((layer) => layer.type !== "air" && !known.has(layer.name));
      expect(remedy.materials.map(({ name }) => name)).toEqual(expect.arrayContaining(brought.map(({ name }) => name)));
      for (const { name, conductivity, vapourResistanceFactor, sd } of remedy.materials) {
        const row = materialNamed(name);
        expect({ conductivity, vapourResistanceFactor, sd }).toEqual({
          conductivity: row.conductivity,
          vapourResistanceFactor: row.vapourResistanceFactorDry,
          sd: row.equivalentAirLayerThickness,
        });
      }
    }
  });

  test.each(cases)("$title: no size of any change, found or not, touches what must stay", ({ situation, buildUp }) => {
    for (const step of changesOf(situation).flatMap(({ steps }) => steps)) {
      for (const required of buildUp.layers.filter(isRequired)) expect(step.buildUp.layers).toContain(required);
      expect(ventilated(step.buildUp).length).toBeGreaterThanOrEqual(ventilated(buildUp).length);
      for (const opening of ventilated(buildUp))
        expect(ventilated(step.buildUp).some((air) => isNoTighter(air, opening))).toBe(true);
      if (situation.warmSide === "neither") continue;
      expect(tightBeyondInsulation(step.buildUp, situation)).toBeLessThanOrEqual(
        tightBeyondInsulation(buildUp, situation),
      );
    }
  });

  test.each(cases)(
    "$title: spends at most 1 200 calculations, and says how the search went",
    ({ assessed, search }) => {
      expect(search.calculations).toBeLessThanOrEqual(1200);
      const { word } = assessed.judgement;
      if (word === "sound" && !missesTarget(assessed))
        expect(search).toEqual({ remedies: [], search: null, calculations: 0 });
      if (word === "change it" || assessed.beyond !== null) expect(search.search).toMatch(/^[A-Z].*\.$/);
      if (assessed.beyond !== null) expect(search.remedies).toEqual([]);
    },
  );

  test.each(withRemedies)("$title: the least change first, and the same again when asked again", (one) => {
    const efforts = one.search.remedies.map((remedy) =>
      stepsOf(one, remedy).reduce((sum, { change }) => sum + change.effort, 0),
    );
    expect(efforts).toEqual([...efforts].sort((a, b) => a - b));
    expect(findRemedies(one.buildUp, one.surroundings, one.assessed)).toEqual(one.search);
  });
});

function warmSideOf({ vapourLayer }: BuildUpResult): Situation["warmSide"] {
  const side = vapourLayer!.warmSide;
  return side === "neither" ? "neither" : side === "inside" ? "room" : "far side";
}

/** The step a remedy was made from, found by its words, and its assessment. */
function again(one: Searched, remedy: Remedy): { step: ChangeStep; result: BuildUpResult } {
  const [first, second] = stepsOf(one, remedy);
  const step = second?.step ?? first!.step;
  const surroundings = second?.step.surroundings ?? first!.step.surroundings ?? one.surroundings;
  return { step, result: assessBuildUp(step.buildUp, surroundings) };
}

function missesTarget({ heat, target }: BuildUpResult): boolean {
  return heat !== null && target !== null && Math.round(heat.transmittance * 100) > Math.round(target * 100);
}

/** Whether the search was for the target only, as its sentence says. */
function isForTarget({ search }: Searched): boolean {
  return search.search!.startsWith("Only the target is missed.");
}

/** What a step breaks of the rules that remedies keep to. */
function brokenBy(one: Searched, step: ChangeStep): string[] {
  return rulesBroken(one.assessed, one.situation, judgeBuildUp(step.buildUp, step.surroundings ?? one.surroundings));
}

interface FoundStep {
  change: Change;
  index: number;
  step: ChangeStep;
}

/** One step for a single change; the first and, made after it, the second of a pair. */
function stepsOf(one: Searched, remedy: Remedy): FoundStep[] {
  const words = remedy.change.split("; and ");
  const first = stepCalled(one.situation, words[0]!);
  if (words.length === 1) return [first];
  const after = {
    ...one.situation,
    buildUp: first.step.buildUp,
    surroundings: first.step.surroundings ?? one.surroundings,
  };
  return [first, stepCalled(after, words[1]!)];
}

function stepCalled(situation: Situation, words: string): FoundStep {
  for (const change of changesOf(situation)) {
    const index = change.steps.findIndex((step) => remedyInWords(step.does).toLowerCase() === words.toLowerCase());
    if (index !== -1) return { change, index, step: change.steps[index]! };
  }
  throw new Error(`no change is called "${words}"`);
}

/** The remedy with one of its changes a step smaller. */
function oneStepLess(one: Searched, remedy: Remedy): { step: ChangeStep; keepsWarmth: boolean }[] {
  const [first, second] = stepsOf(one, remedy);
  const keepsWarmth = first!.change.keepsWarmth || second?.change.keepsWarmth === true;
  const smaller: { step: ChangeStep; keepsWarmth: boolean }[] = [];
  if (second === undefined) {
    if (first!.index > 0) smaller.push({ step: first!.change.steps[first!.index - 1]!, keepsWarmth });
    return smaller;
  }
  if (second.index > 0) smaller.push({ step: second.change.steps[second.index - 1]!, keepsWarmth });
  if (first!.index > 0) {
    const less = first!.change.steps[first!.index - 1]!;
    const after = { ...one.situation, buildUp: less.buildUp, surroundings: less.surroundings ?? one.surroundings };
    const beside = changesOf(after).find(({ key }) => key === second.change.key);
    const step = beside?.steps[second.index];
    if (step !== undefined) smaller.push({ step, keepsWarmth });
  }
  return smaller;
}

function thicknessOf(buildUp: BuildUp): number {
  return buildUp.layers.reduce((sum, layer) => sum + layer.thickness, 0);
}

function rounded({ heat }: BuildUpResult): number {
  return Math.round(heat!.transmittance * 100);
}

/** Required by its purpose, or a metal skin: what METHOD.md, Remedies names. */
function isRequired(layer: Layer): boolean {
  if (layer.type === "air") return false;
  return (layer.purpose !== null && layer.purpose !== "vapour layer") || layer.material.kind === "metal";
}

function ventilated(buildUp: BuildUp): AirLayer[] {
  return buildUp.layers.filter((layer): layer is AirLayer => layer.type === "air" && layer.ventilation !== "none");
}

function isNoTighter(air: AirLayer, than: AirLayer): boolean {
  return air.thickness >= than.thickness && (air.ventilation === than.ventilation || air.ventilation === "well");
}

/** Layers of sd 10 m and more on the cold side of the layer that insulates most. */
function tightBeyondInsulation(buildUp: BuildUp, { warmSide }: Situation): number {
  const end = buildUp.layers.findIndex((layer) => layer.type === "air" && layer.ventilation === "well");
  const counted = end === -1 ? buildUp.layers : buildUp.layers.slice(0, end);
  const resistances = counted.map((layer) =>
    layer.type === "material" && layer.material.conductivity! < 0.065
      ? layer.thickness / layer.material.conductivity!
      : 0,
  );
  const main = resistances.indexOf(Math.max(...resistances));
  if (!(resistances[main]! > 0)) return 0;
  return counted.filter(
    (layer, index) => (warmSide === "room" ? index > main : index < main) && layerSd(layer, "dry") >= 10,
  ).length;
}
