import type { CheckFindings, TwoSeasonData } from "../../result/types.ts";
import { grams, joined } from "../figures-in-words.ts";
import { gapsInWords } from "./gaps.ts";
import { leakInWords } from "./leak.ts";
import { planeInWords, reasonInWords } from "./two-season.ts";
import type { Wordings } from "./wording.ts";

type Codes = "air-leakage" | "gaps-in-vapour-layer" | "two-season-check" | "variable-resistance";

/** Findings of the checks beside the method. */
export const CHECK_WORDINGS: Wordings<Codes & keyof CheckFindings> = {
  "air-leakage": ({ figures, severity }) => ({
    ...leakInWords(figures),
    advice:
      severity === "note"
        ? null
        : "Close the gap for air on the room side: tape, sealant, a batten over the edge of the sheet, sealed boxes and pipes.",
    source: "orifice flow with a factor of 0.6; outward all the time, all the air cools to the plane: an upper bound",
  }),
  "gaps-in-vapour-layer": ({ figures }, buildUp) => ({
    ...gapsInWords(figures, buildUp),
    advice: figures.kind === "stated" ? "Close the gaps: tape the laps and seal the edges." : null,
    source:
      "laps and holes by the way vapour takes to them, a share alone by conductances in parallel (this project's rule)",
  }),
  "two-season-check": ({ figures }) => ({
    says: `Two-season check: ${outcome(figures)}`,
    more: ["It is a second method and leaves the monthly verdict as it is."],
    advice: figures.applies
      ? null
      : "Take the next step of the standard itself, or an assessment over time to EN 15026.",
    source: `${figures.edition}, Rsi ${figures.surfaceResistanceInside} m²·K/W`,
  }),
  "variable-resistance": ({ figures }, { layers }) => {
    const { verdict, dryVerdict, peak, peakMonth, rounds, tolerance, converged } = figures;
    const names = joined([...new Set(figures.layers.map((layer) => layers[layer]!.name))]);
    const amount = peakMonth === null ? "" : `, at most ${grams(peak)} at the end of ${peakMonth}`;
    return {
      says: `With the vapour resistance of ${names || "no layer"} by the humidity in it: ${verdict}${amount}.`,
      more: [
        `With the dry values, which rule: ${dryVerdict}.`,
        converged
          ? `It settled in at most ${rounds} rounds a month, to ${tolerance} of each value.`
          : `It did not settle within ${rounds} rounds in every month (${tolerance} of each value was asked for): take it as no answer.`,
      ],
      advice:
        verdict !== dryVerdict && converged
          ? "The answer hangs on how these layers change with humidity: ask the maker for the table of sd by relative humidity."
          : null,
      source: "resistance by each layer's mean relative humidity (this project's rule)",
    };
  },
};

function outcome(check: TwoSeasonData): string {
  const { applies, passes, condensate, limit, summerCapacity } = check;
  if (!applies) return `it gives no answer here; ${reasonInWords(check)}.`;
  const plane = planeInWords(check);
  if (plane === null) return "passed, nothing condenses in the winter.";
  const amounts = `${grams(condensate)} condense in the winter ${plane}, the limit there is ${grams(limit)}, and ${grams(summerCapacity)} could dry in the summer`;
  return `${passes ? "passed" : "not passed"}: ${amounts}.`;
}
