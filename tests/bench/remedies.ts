import { readdirSync, readFileSync } from "node:fs";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { findRemedies } from "../../packages/core/src/remedies/find-remedies.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { median } from "./measure.ts";
import type { Measure } from "./table.ts";

const CASES = "tests/practice/cases";
/** Rounds of every search; the least counts, as nothing but waiting makes one longer. */
const ROUNDS = 3;

/** Searches for remedies over the practice corpus, over one assessment: the twentieth part that takes longest, and the longest. */
export function searchesOverAssessment(): Measure[] {
  const cases = readdirSync(CASES).flatMap((file) => {
    const project = readProjectOrThrow(readFileSync(`${CASES}/${file}`, "utf8"));
    const surroundings = surroundingsOf(project);
    return project.buildUps.map((buildUp) => {
      const assessed = assessBuildUp(buildUp, surroundings);
      return { buildUp, surroundings, assessed, isSearched: false };
    });
  });
  for (const one of cases) one.isSearched = findRemedies(one.buildUp, one.surroundings, one.assessed).calculations > 0;
  const assessment = median(cases.map((one) => timeOf(() => assessBuildUp(one.buildUp, one.surroundings))));
  const searches = cases
    .filter(({ isSearched }) => isSearched)
    .map((one) => timeOf(() => findRemedies(one.buildUp, one.surroundings, one.assessed)))
    .sort((a, b) => a - b);
  return [
    {
      name: "remediesToAssess",
      value: searches[Math.floor(0.95 * searches.length)]! / assessment,
      unit: "times",
      goal: { atMost: 50 },
      what: "a search for remedies over one assessment: 95 of 100 searches of the practice corpus take no longer",
    },
    {
      name: "longestSearch",
      value: searches.at(-1)!,
      unit: "s",
      goal: { atMost: 0.3 },
      what: "the longest of those searches",
    },
  ];
}

/** Processor time [s]. */
function timeOf(work: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    least = Math.min(least, (user + system) / 1e6);
  }
  return least;
}
