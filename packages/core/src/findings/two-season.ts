import type { TwoSeasonResult } from "../result/types.ts";
import { grams } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The two-season check, a second method with its own verdict; it has no part in the judgement.
 * Source: DIN 4108-3, editions since 2014 (from memory).
 */
export function twoSeasonFindings({ checks }: Evidence): RuledFinding[] {
  const check = checks.twoSeasonCheck;
  if (check === null) return [];
  return [
    {
      code: "two-season-check",
      severity: check.passes === false ? "caution" : "note",
      effect: "none",
      message: `Two-season check: ${outcome(check)} It is a second method and leaves the monthly verdict as it is.`,
      advice: check.applies
        ? null
        : "Take the next step of the standard itself, or an assessment over time to EN 15026.",
      source: `${check.edition}, Rsi ${check.surfaceResistanceInside} m²·K/W`,
      figures: {
        condensate: check.condensate,
        limit: check.limit,
        summerCapacity: check.summerCapacity,
        passes: check.passes === null ? null : String(check.passes),
      },
    },
  ];
}

function outcome({ applies, reason, passes, plane, condensate, limit, summerCapacity }: TwoSeasonResult): string {
  if (!applies) return `it gives no answer here; ${reason}.`;
  if (plane === null) return "passed, nothing condenses in the winter.";
  const amounts = `${grams(condensate)} condense in the winter ${plane}, the limit there is ${grams(limit)}, and ${grams(summerCapacity)} could dry in the summer`;
  return `${passes ? "passed" : "not passed"}: ${amounts}.`;
}
