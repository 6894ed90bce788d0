import { type BuildUpCalculation, figuresOfBuildUp } from "../calculate-build-up.ts";
import { MORE_OPEN } from "../further-checks/trapped-water/drying-variants.ts";
import type { BuildUp } from "../project/types.ts";
import type { SensitivityName } from "../result/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import type { AssessmentSites } from "../surroundings/surroundings.ts";
import { vapourDrive } from "../vapour/warm-side.ts";
import type { TightLayer } from "../vapour-layer/candidates.ts";
import { withVapourLayerOpened } from "./opened-vapour-layer.ts";

/** A build-up calculated under another assumption. */
export interface SensitivityRun {
  name: SensitivityName;
  calculation: BuildUpCalculation;
}

/** The 1-in-10 years. They can rule a build-up out; other runs make a condition at most (a test ensures this). */
export const HARDER_YEARS = ["one in ten colder year", "one in ten warmer year"] as const;

/** Whether a run is a harder year. */
export function isHarderYear(name: SensitivityName): name is (typeof HARDER_YEARS)[number] {
  return HARDER_YEARS.some((year) => year === name);
}

/** Every run, in order. */
export const ALL_RUNS: readonly SensitivityName[] = [
  ...HARDER_YEARS,
  "heated every day",
  "unfavourable vapour resistance",
  "wetter room",
  "vapour layer ten times more open",
  "no vapour layer",
];

/** The runs that the judgement uses; the others are reported beside it (a test ensures they never change it). */
export const RUNS_THAT_JUDGE: readonly SensitivityName[] = [
  ...HARDER_YEARS,
  "heated every day",
  "vapour layer ten times more open",
];

/**
 * Calculates the build-up again: in a colder and a warmer year, heated every day, with unfavourable μ, with the vapour
 * layer more open and left out, and with a wetter room.
 *
 * @param calculation - the reported figures
 * @param sites - the sites of the runs
 * @param tightLayer - the vapour layer, null without any
 * @param names - which runs
 * @param known - runs already calculated
 * @returns those runs, in the order of `ALL_RUNS`; without those that need a missing vapour layer or in which nothing
 *   differs; the warmer year only where vapour comes from outdoors
 * Source: ISO 13788:2012 clause 4.2 for the 1-in-10 year (from memory); the others are this project's rules.
 */
export function sensitivityRuns(
  calculation: BuildUpCalculation,
  sites: AssessmentSites,
  tightLayer: TightLayer | null,
  names: readonly SensitivityName[] = ALL_RUNS,
  known: readonly SensitivityRun[] = [],
): SensitivityRun[] {
  return ALL_RUNS.filter((name) => names.includes(name)).flatMap((name) => {
    const there = known.find((run) => run.name === name);
    if (there !== undefined) return [there];
    const again = runOf(name, calculation, sites, tightLayer);
    return again === null ? [] : [{ name, calculation: again }];
  });
}

function runOf(
  name: SensitivityName,
  calculation: BuildUpCalculation,
  { reported, mean, colder, warmer, wetter, heatedDaily }: AssessmentSites,
  tightLayer: TightLayer | null,
): BuildUpCalculation | null {
  const { buildUp } = calculation;
  const run = (site: Site): BuildUpCalculation => figuresOfBuildUp(buildUp, site, { runOn: false });
  const inSameHeat = { sameHeat: calculation, runOn: false } as const;
  const once = (site: Site): BuildUpCalculation => figuresOfBuildUp(buildUp, site, { yearsAfter: mean });
  const opened = (factor: number): BuildUpCalculation | null =>
    tightLayer === null
      ? null
      : figuresOfBuildUp(withVapourLayerOpened(buildUp, tightLayer, factor), reported, inSameHeat);
  switch (name) {
    case "one in ten colder year":
      return isSameYear(reported, colder) ? null : once(colder);
    case "one in ten warmer year":
      return isSameYear(reported, warmer) || !isDrivenFromOutside(buildUp, reported) ? null : once(warmer);
    case "heated every day":
      return isOtherAir(buildUp, reported, heatedDaily) ? run(heatedDaily) : null;
    case "unfavourable vapour resistance":
      return figuresOfBuildUp(buildUp, reported, { ...inSameHeat, vapourResistance: "unfavourable" });
    case "wetter room":
      return isOtherAir(buildUp, reported, wetter) ? run(wetter) : null;
    case "vapour layer ten times more open":
      return opened(MORE_OPEN);
    case "no vapour layer":
      return opened(Number.POSITIVE_INFINITY);
  }
}

/** Whether the air of a room on either side of the build-up differs in any month. */
function isOtherAir({ room, faces }: BuildUp, reported: Site, other: Site): boolean {
  return [room, faces].some((name) => {
    const before = reported.rooms.get(name);
    const after = other.rooms.get(name);
    return (
      before !== undefined &&
      (before.vapourPressure.some(differsFrom(after!.vapourPressure)) ||
        before.temperature.some(differsFrom(after!.temperature)))
    );
  });
}

function isSameYear(reported: Site, other: Site): boolean {
  return !reported.outdoor.temperature.some(differsFrom(other.outdoor.temperature));
}

function differsFrom(others: readonly number[]): (value: number, month: number) => boolean {
  return (value, month) => others[month] !== value;
}

/** Where vapour comes from outdoors, the warm year is the unfavourable one. */
function isDrivenFromOutside({ room, faces }: BuildUp, { rooms, outdoor }: Site): boolean {
  return faces === "outdoors" && vapourDrive(rooms.get(room)!, outdoor).year === "outside";
}
