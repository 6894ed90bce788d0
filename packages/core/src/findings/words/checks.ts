import type { CheckFindings, TwoSeasonData } from "../../result/types.ts";
import { grams, joined } from "../figures-in-words.ts";
import { gapsInWords } from "./gaps.ts";
import { leakInWords } from "./leak.ts";
import { planeInWords, reasonInWords } from "./two-season.ts";
import type { Named, Wordings } from "./wording.ts";

type Codes = "air-leakage" | "gaps-in-vapour-layer" | "two-season-check" | "variable-resistance";

/** Findings of the checks beside the monthly method. */
export const CHECK_WORDINGS: Wordings<Codes & keyof CheckFindings> = {
  "air-leakage": ({ figures, severity }, buildUp) => ({
    ...leakInWords(figures, buildUp),
    advice:
      severity === "note"
        ? null
        : "Close the gap on the room side: tape, sealant, a batten over the edge of the sheet, sealed boxes and pipes.",
    source: "orifice flow with a factor of 0.6, outwards all the time, all air cooling to the plane: an upper bound",
  }),
  "gaps-in-vapour-layer": ({ figures }, buildUp) => ({
    ...gapsInWords(figures, buildUp),
    advice: figures.kind === "stated" ? "Close the gaps: tape the laps and seal the edges." : null,
    source:
      "laps and holes by the way vapour takes to them, a share alone by conductances in parallel (this project's rule)",
  }),
  "two-season-check": ({ figures }, buildUp) => ({
    says: `Two-season check: ${outcome(figures, buildUp)}`,
    more: ["It is a second method and does not change the monthly verdict."],
    advice: figures.applies ? null : "Follow the standard itself, or ask for a transient assessment to EN 15026.",
    source: `${figures.edition}, Rsi ${figures.surfaceResistanceInside} m²·K/W`,
  }),
  "variable-resistance": ({ figures }, { layers }) => {
    const { verdict, dryVerdict, peak, peakMonth, rounds, tolerance, converged } = figures;
    const names = joined([...new Set(figures.layers.map((layer) => layers[layer]!.name))]);
    const amount = peakMonth === null ? "" : `, at most ${grams(peak)} at the end of ${peakMonth}`;
    return {
      says: `With a vapour resistance of ${names || "no layer"} that follows its humidity: ${verdict}${amount}.`,
      more: [
        `With the dry values, which count: ${dryVerdict}.`,
        converged
          ? `The solution settled in at most ${rounds} rounds a month (tolerance ${tolerance}).`
          : `The solution did not settle within ${rounds} rounds in every month (tolerance ${tolerance}). Not a valid result.`,
      ],
      advice:
        verdict !== dryVerdict && converged
          ? "The answer depends on how these layers change with humidity: ask the maker for sd by relative humidity."
          : null,
      source: "resistance by each layer's mean relative humidity (this project's rule)",
    };
  },
};

function outcome(check: TwoSeasonData, buildUp: Named): string {
  const { applies, passes, condensate, limit, summerCapacity } = check;
  if (!applies) return `not applicable; ${reasonInWords(check, buildUp)}.`;
  const plane = planeInWords(check, buildUp);
  if (plane === null) return "passed, no condensation in winter.";
  const amounts = `${grams(condensate)} condenses in winter ${plane} (limit ${grams(limit)}), and ${grams(summerCapacity)} can evaporate in summer`;
  return `${passes ? "passed" : "not passed"}: ${amounts}.`;
}
