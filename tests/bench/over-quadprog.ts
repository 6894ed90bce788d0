import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { DrivenSection } from "../../packages/core/src/year/month-balance.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { ratioOf } from "./measure.ts";
import { WALLS } from "./over-floor.ts";
import { sixLayerWall, surroundings } from "./six-layer-wall.ts";
import type { Measure } from "./table.ts";
import { yearByQuadprog } from "./year-by-quadprog.ts";

/** The standard's year of one section by a general-purpose solver over our own. */
export function quadprogOverOurs(): Measure[] {
  const section = wetSection();
  const theirs = { work: () => yearByQuadprog(section).peak, calls: 10 };
  const ours = { work: () => ourYear(section).peak, calls: 2000 };
  const { ratio } = ratioOf(theirs, ours);
  return [
    {
      name: "solverRatio",
      value: ratio,
      unit: "times",
      goal: { atLeast: 300 },
      what: "the same year by the solver quadprog over ours",
    },
  ];
}

/** The section between framing of the wall whose water dries out: 22 nodes. */
export function wetSection(): DrivenSection {
  const { sections } = calculateBuildUp(sixLayerWall(WALLS["dries out"]), surroundings().sites.reported);
  return { sd: sections[0]!.line.sd, climate: sections[0]!.climate };
}

/** Our year of a section, from its climate. */
export function ourYear(section: DrivenSection): ReturnType<typeof sectionYear> {
  return sectionYear(section, yearFromDry(section), "standard");
}
