import type { GapsResult } from "../result/types.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * What gaps in the vapour layer do, as stated or with a thousandth missing. The framed part stands in the checks alone;
 * what follows for sealing is said by `vapour-layer-dependence.ts`.
 * Source: conductances in parallel (this project's rule, METHOD.md, Gaps in the vapour layer), an upper bound.
 */
export function gapsFindings({ checks, buildUp }: Evidence): RuledFinding[] {
  const ofLayers = checks.gaps.filter(({ layer, name }) => buildUp.layers[layer]!.name === name);
  return ofLayers.map((entry) => describe(entry, isStated(entry, buildUp.layers)));
}

function isStated({ layer }: GapsResult, layers: Evidence["buildUp"]["layers"]): boolean {
  const stated = layers[layer]!;
  return stated.type !== "air" && stated.gaps !== null;
}

function describe(
  { message, layer, share, sdWhole, sdEffective, verdict, peak }: GapsResult,
  stated: boolean,
): RuledFinding {
  return {
    code: "gaps-in-vapour-layer",
    severity: stated ? "caution" : "note",
    effect: "none",
    message,
    advice: stated ? "Close the gaps: tape the laps and seal the edges." : null,
    source: "conductances in parallel, an upper bound (this project's rule)",
    figures: { layer: layer + 1, share, sdWhole, sdEffective, verdict, peak: peak.amount },
  };
}
