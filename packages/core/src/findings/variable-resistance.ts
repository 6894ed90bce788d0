import { rankOfVerdict } from "../year/verdicts.ts";
import { grams, joined } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The year with vapour resistance by each layer's own humidity, beside the one with dry values that rules.
 * Source: this project's rule (METHOD.md, Vapour resistance of layers).
 */
export function variableResistanceFindings({ checks, calculation }: Evidence): RuledFinding[] {
  const varying = checks.variableResistance;
  if (varying === null) return [];
  const { converged, rounds, tolerance, verdict, peak, layers } = varying;
  const dry = calculation.governing.year.verdict;
  const differs = verdict !== dry;
  const isWorse = rankOfVerdict(verdict) > rankOfVerdict(dry);
  const amount = peak.month === null ? "" : `, at most ${grams(peak.amount)} at the end of ${peak.month}`;
  const names = joined([...new Set(layers.map(({ name }) => name))]);
  const settled = converged
    ? `It settled in at most ${rounds} rounds a month, to ${tolerance} of each value.`
    : `It did not settle within ${rounds} rounds in every month (${tolerance} of each value was asked for): take it as no answer.`;
  return [
    {
      code: "variable-resistance",
      severity: converged && !differs ? "note" : "caution",
      effect: isWorse && converged ? "condition" : "none",
      message:
        `With the vapour resistance of ${names || "no layer"} by the humidity in it: ${verdict}${amount}. ` +
        `With the dry values, which rule: ${dry}. ${settled}`,
      advice:
        differs && converged
          ? "The answer hangs on how these layers change with humidity: ask the maker for the table of sd by relative humidity."
          : null,
      source: "resistance by each layer's mean relative humidity (this project's rule)",
      figures: { verdict, dryVerdict: dry, peak: peak.amount, rounds, tolerance, converged: String(converged) },
    },
  ];
}
