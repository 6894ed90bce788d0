import { CAUTION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The effect of gaps in the vapour layer, as stated or with a thousandth of it missing. The framed part appears in the
 * checks only; `vapour-layer-dependence.ts` gives the consequences for sealing.
 * Source: METHOD.md, Gaps in the vapour layer (this project's rule).
 */
export function gapsFindings({ checks }: Evidence): RuledFinding[] {
  return checks.gaps
    .filter(({ kind }) => kind !== "framed part")
    .map((gaps) => found("gaps-in-vapour-layer", gaps.kind === "stated" ? CAUTION : NOTE, gaps));
}
