import { compareSections } from "../calculate-build-up.ts";
import { found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The section through the framing is worse than the section between.
 * Source: each section is assessed, the worst governs (METHOD.md, Zones of water).
 */
export function framingFindings({ calculation }: Evidence): RuledFinding[] {
  const { governing, sections } = calculation;
  const between = sections.find(({ path }) => path.through.length === 0);
  if (between === undefined || between === governing || compareSections(governing, between) <= 0) return [];
  const figures = { governing: governing.id, peak: governing.year.peak, peakBetween: between.year.peak };
  return [found("framing-worse", NOTE, figures)];
}
