import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { DrivenSection } from "../../packages/core/src/year/month-balance.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { ratioOf } from "./measure.ts";
import { WALLS } from "./over-floor.ts";
import { sixLayerWall, surroundings } from "./six-layer-wall.ts";
import type { Measure } from "./table.ts";
import { yearByQuadprog } from "./year-by-quadprog.ts";

/** Parts of at most this much resistance make the same section of 90 nodes [m²·K/W]. */
export const FINE_PART = 0.05;

/** The standard's year of one section by a general-purpose solver over our own. */
export function quadprogOverOurs(): Measure[] {
  const what = "the same year by the solver quadprog over ours";
  return [
    {
      name: "solverRatio",
      value: ratioFor(wetSection(), 10),
      unit: "times",
      goal: { atLeast: 110 },
      what: `${what}, cut as the standard asks (22 nodes)`,
    },
    {
      name: "solverRatioFine",
      value: ratioFor(wetSection(FINE_PART), 1),
      unit: "times",
      goal: { atLeast: 800 },
      what: `${what}, cut five times finer (90 nodes)`,
    },
  ];
}

function ratioFor(section: DrivenSection, callsOfTheirs: number): number {
  const theirs = { work: () => yearByQuadprog(section).peak, calls: callsOfTheirs };
  const ours = { work: () => ourYear(section).peak, calls: 2000 };
  return ratioOf(theirs, ours).ratio;
}

/** The section between framing of the wall whose water dries out. */
export function wetSection(largestPart?: number): DrivenSection {
  const { sections } = calculateBuildUp(sixLayerWall(WALLS["dries out"]), surroundings().sites.reported, {
    largestPart,
  });
  return { sd: sections[0]!.line.sd, climate: sections[0]!.climate };
}

/** Our year of a section, from its climate. */
export function ourYear(section: DrivenSection): ReturnType<typeof sectionYear> {
  return sectionYear(section, yearFromDry(section), "standard");
}
