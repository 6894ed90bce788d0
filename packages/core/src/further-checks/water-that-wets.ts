import type { SectionCalculation } from "../calculate-build-up.ts";
import { NOTHING_HELD } from "../year/section-year.ts";

/**
 * Water that framing in a section, or beside it, could take up: the maximum accumulation of a year.
 *
 * @param sections - the section, and the bay beside it
 * @returns [kg/m²]; null (no limit) where moisture remains from year to year and accumulates
 * Source: this project's rule (METHOD.md, Wood moisture).
 */
export function waterThatWets(sections: readonly SectionCalculation[]): number | null {
  return sections.some(addsUp) ? null : Math.max(...sections.map(({ withinMonth }) => withinMonth.peak));
}

function addsUp({ withinMonth, repeating }: SectionCalculation): boolean {
  const clears = repeating?.settles === true && repeating.level <= NOTHING_HELD;
  return withinMonth.verdict === "stays wet" && !clears;
}
