import { found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The standard's year and the year with drying within the month give different verdicts.
 * Source: ISO 13788:2012 clause 6.4 (from memory); this project's rule, which conserves water (METHOD.md, Drying
 *   within the month).
 */
export function differingYears({ calculation }: Evidence): RuledFinding[] {
  const { id, year, withinMonth } = calculation.governing;
  if (year.verdict === withinMonth.verdict) return [];
  return [found("two-verdicts", NOTE, { section: id, standard: year.verdict, insideTheMonth: withinMonth.verdict })];
}
