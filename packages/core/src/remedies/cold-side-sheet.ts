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
 * Part of the resistance that lies on the cold side of a sheet left where it is [–] (common practice: at most a third of
 * it on the warm side of a vapour layer).
 */
export const LEAST_BEYOND_SHEET: number = 2 / 3;

/** Two sums of the same layers may differ in the last digit. */
const ROUNDING = 1e-9;

/** Whether the findings name a sheet for lying on the cold side: outside always, under a floor where it is a fault. */
export function blamesColdSheet({ findings }: Pick<BuildUpResult, "findings">): boolean {
  return findings.some(
    ({ code, severity }) =>
      code === "vapour-layer-cold-side" || (code === "tight-sheet-under-floor" && severity === "fault"),
  );
}

/**
 * Whether every sheet that holds vapour back lies warm: at least two thirds of the resistance on its cold side, the main
 * insulation among it. What answers a fault about a sheet on the cold side takes it out, moves it or leaves it so; more
 * insulation beyond it alone would only bury it deeper.
 *
 * @param buildUp - the remedied build-up
 * @param counted - its counted layers with their resistances [m²·K/W]
 * @param warmSide - the side that vapour comes from
 * @returns true when all sheets do, those that must stay left out
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
