import { drawnFraming } from "../field/repeating-cell.ts";
import { countedLayers } from "../heat/counted-layers.ts";
import { interruptedLayers } from "../plane-checks/interrupted-layers.ts";
import type { BuildUp } from "../project/types.ts";
import { replaceLayer } from "./edit-layers.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";

/**
 * Tapes over the framing that interrupts tight layers, from board to board, with foil tape.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for all such layers, in one size; none if they are already taped like this
 */
export function tapeFraming({ buildUp }: Situation): Change[] {
  const { counted } = countedLayers(buildUp, "horizontal");
  const framing = drawnFraming(counted);
  if (framing === null || framing.origin.kind === "channel") return [];
  const open = interruptedLayers(counted, framing).filter(({ layer }) => layer.taped?.kind !== "over the framing");
  if (open.length === 0) return [];
  const taped = open.reduce<BuildUp>(
    (changed, { index, layer }) => replaceLayer(changed, index, { ...layer, taped: { kind: "over the framing" } }),
    buildUp,
  );
  const layers = open.map(({ layer }) => layer.name);
  const does = [{ kind: "framing taped over" as const, framing: framing.name, layers }];
  const step = { does, buildUp: taped, surroundings: null, thicknessInside: 0, thicknessOutside: 0 };
  return changeOf({ key: "taped over the framing", effort: EFFORT.tapeFraming, steps: [step] });
}
