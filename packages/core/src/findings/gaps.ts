import { CAUTION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * What gaps in the vapour layer do, as stated or with a thousandth missing. The framed part stands in the checks alone;
 * what follows for sealing is said by `vapour-layer-dependence.ts`.
 * Source: METHOD.md, Gaps in the vapour layer (this project's rule).
 */
export function gapsFindings({ checks }: Evidence): RuledFinding[] {
  return checks.gaps
    .filter(({ kind }) => kind !== "framed part")
    .map((gaps) => found("gaps-in-vapour-layer", gaps.kind === "stated" ? CAUTION : NOTE, gaps));
}
