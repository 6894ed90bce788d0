import { compareSections } from "../calculate-build-up.ts";
import { grams } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** The way through the framing is worse than the way between. Source: each section is assessed, the worst governs (METHOD.md, Zones of water). */
export function framingFindings({ calculation }: Evidence): RuledFinding[] {
  const { governing, sections } = calculation;
  const between = sections.find(({ path }) => path.through.length === 0);
  if (between === undefined || between === governing || compareSections(governing, between) <= 0) return [];
  return [
    {
      code: "framing-worse",
      severity: "note",
      effect: "none",
      message: `The way ${governing.name} is worse than the one between: ${grams(governing.year.peak)} against ${grams(between.year.peak)} at most. It governs.`,
      advice: null,
      source: "ISO 13788:2012 clause 6, section by section (this project's rule)",
      figures: { governing: governing.name, peak: governing.year.peak, peakBetween: between.year.peak },
    },
  ];
}
