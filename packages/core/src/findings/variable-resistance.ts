import { rankOfVerdict } from "../year/verdicts.ts";
import { CAUTION, CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The year with vapour resistance from each layer's own humidity, shown beside the governing one with dry values.
 * Source: this project's rule (METHOD.md, Vapour resistance of layers).
 */
export function variableResistanceFindings({ checks, calculation }: Evidence): RuledFinding[] {
  const varying = checks.variableResistance;
  if (varying === null) return [];
  const { rounds, tolerance, converged, verdict, peak, layers } = varying;
  const dryVerdict = calculation.governing.year.verdict;
  const isWorse = rankOfVerdict(verdict) > rankOfVerdict(dryVerdict);
  const figures = {
    layers: layers.map(({ layer }) => layer),
    verdict,
    dryVerdict,
    peak: peak.amount,
    peakMonth: peak.month,
    rounds,
    tolerance,
    converged,
  };
  const weight = converged && verdict === dryVerdict ? NOTE : isWorse && converged ? CONDITION : CAUTION;
  return [found("variable-resistance", weight, figures)];
}
