import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import type { CountedLayer } from "../heat/types.ts";
import type { BuildUp } from "../project/types.ts";
import type { BuildUpResult } from "../result/types.ts";
import { sdOf } from "./places.ts";
import { WORTH_TAKING_OUT } from "./take-out-sheet.ts";
import type { WarmSide } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/**
 * Least share of the resistance on the cold side of a sheet that is left in place [–] (common practice: at most a third
 * on the warm side of a vapour layer).
 */
export const LEAST_BEYOND_SHEET: number = 2 / 3;

/** Two sums of the same layers may differ in the last digit. */
const ROUNDING = 1e-9;

/** Whether a finding objects to a sheet on the cold side; one about a sheet under a floor counts only as a fault. */
export function blamesColdSheet({ findings }: Pick<BuildUpResult, "findings">): boolean {
  return findings.some(
    ({ code, severity }) =>
      code === "vapour-layer-cold-side" || (code === "tight-sheet-under-floor" && severity === "fault"),
  );
}

/**
 * Whether every sheet that holds vapour back lies warm: at least two thirds of the resistance, and the main insulation,
 * are on its cold side. A remedy for a sheet on the cold side must remove it, move it or make it lie warm.
 *
 * @param buildUp - the remedied build-up
 * @param counted - its counted layers with their resistances [m²·K/W]
 * @param warmSide - the side that vapour comes from
 * @returns true when all sheets do, apart from those that must stay
 * Source: common practice (a third); this project's rule for remedies.
 */
export function sheetsLieWarm(buildUp: BuildUp, counted: readonly CountedLayer[], warmSide: WarmSide): boolean {
  if (warmSide === "neither") return true;
  const total = sumOfResistances(counted);
  const main = mainInsulation(counted)?.index ?? null;
  return counted.every(({ index, layer }) => {
    if (layer.type !== "sheet" || sdOf(layer) < WORTH_TAKING_OUT || mustStay(buildUp, index)) return true;
    const isBeyond = (other: number): boolean => (warmSide === "room" ? other > index : other < index);
    const beyond = sumOfResistances(counted.filter((other) => isBeyond(other.index)));
    return main !== null && isBeyond(main) && beyond >= LEAST_BEYOND_SHEET * total - ROUNDING;
  });
}
