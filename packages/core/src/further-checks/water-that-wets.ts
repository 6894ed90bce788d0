import type { SectionCalculation } from "../calculate-build-up.ts";
import { NOTHING_HELD } from "../year/section-year.ts";

/**
 * Most water in a year that framing on a path, or beside it, could absorb.
 *
 * @param sections - the way through, and the bay beside it
 * @returns [kg/m²]; null, without bound, where some of it stays from year to year and adds up
 * Source: this project's rule (METHOD.md, Wood moisture).
 */
export function waterThatWets(sections: readonly SectionCalculation[]): number | null {
  return sections.some(addsUp) ? null : Math.max(...sections.map(({ withinMonth }) => withinMonth.peak));
}

function addsUp({ withinMonth, repeating }: SectionCalculation): boolean {
  const clears = repeating?.settles === true && repeating.level <= NOTHING_HELD;
  return withinMonth.verdict === "stays wet" && !clears;
}
