import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The standard's year and the year with drying inside the month give different verdicts.
 * Source: ISO 13788:2012 clause 6.4 (from memory) against this project's rule that conserves water (METHOD.md, Drying within the month).
 */
export function differingYears({ calculation }: Evidence): RuledFinding[] {
  const { year, withinMonth, name } = calculation.governing;
  if (year.verdict === withinMonth.verdict) return [];
  return [
    {
      code: "two-verdicts",
      severity: "note",
      effect: "none",
      message:
        `By the standard's month-end rule the build-up (${name}) ${verdictPhrase(year.verdict)}; with drying inside the month, ` +
        `which loses and invents no water, it ${verdictPhrase(withinMonth.verdict)}. The judgement follows the second.`,
      advice: null,
      source: "ISO 13788:2012 clause 6.4 (from memory); drying inside the month is beyond the standard",
      figures: { standard: year.verdict, insideTheMonth: withinMonth.verdict },
    },
  ];
}

function verdictPhrase(verdict: string): string {
  return verdict === "dry" ? "stays dry" : verdict;
}
