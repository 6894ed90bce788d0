import { CAUTION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The effect of gaps in the vapour layer, as stated or over a thousandth of its area. The framed part appears only in
 * the checks; `vapour-layer-dependence.ts` gives the advice on sealing.
 * Source: METHOD.md, Gaps in the vapour layer (this project's rule).
 */
export function gapsFindings({ checks }: Evidence): RuledFinding[] {
  return checks.gaps
    .filter(({ kind }) => kind !== "framed part")
    .map((gaps) => found("gaps-in-vapour-layer", gaps.kind === "stated" ? CAUTION : NOTE, gaps));
}
