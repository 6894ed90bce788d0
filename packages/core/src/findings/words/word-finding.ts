import type { Finding, FindingCode } from "../../result/types.ts";
import type { RuledFindingOf } from "../types.ts";
import { ASSUMPTION_WORDINGS } from "./assumptions.ts";
import { BEYOND_WORDINGS } from "./beyond-method.ts";
import { CHECK_WORDINGS } from "./checks.ts";
import { HEAT_WORDINGS } from "./heat.ts";
import { PLANE_WORDINGS } from "./plane.ts";
import { RAIN_WORDINGS } from "./rain.ts";
import { ROOF_WORDINGS } from "./roofs.ts";
import { SURFACE_WORDINGS } from "./surface.ts";
import { TIGHT_LAYER_WORDINGS } from "./tight-layers.ts";
import { TRAPPED_WATER_WORDINGS } from "./trapped-water.ts";
import { VAPOUR_LAYER_WORDINGS } from "./vapour-layer.ts";
import { WATER_WORDINGS } from "./water.ts";
import type { Named, Wordings } from "./wording.ts";

/** All wordings, by code. */
const WORDINGS: Wordings<FindingCode> = {
  ...WATER_WORDINGS,
  ...VAPOUR_LAYER_WORDINGS,
  ...TIGHT_LAYER_WORDINGS,
  ...SURFACE_WORDINGS,
  ...HEAT_WORDINGS,
  ...PLANE_WORDINGS,
  ...RAIN_WORDINGS,
  ...ROOF_WORDINGS,
  ...BEYOND_WORDINGS,
  ...CHECK_WORDINGS,
  ...TRAPPED_WATER_WORDINGS,
  ...ASSUMPTION_WORDINGS,
};

/**
 * Puts a finding into words.
 *
 * @param ruled - as a rule gives it
 * @param buildUp - its build-up, for names
 * @returns the finding in one sentence and in full, the advice, and the source
 */
export function wordFinding<Code extends FindingCode>(
  ruled: RuledFindingOf<Code>,
  buildUp: Named,
): Pick<Finding, "short" | "message" | "advice" | "source"> {
  const { says, more = [], advice = null, source } = WORDINGS[ruled.code](ruled, buildUp);
  const message = [says, ...more].filter((sentence) => sentence !== "").join(" ");
  return { short: says, message, advice, source };
}
