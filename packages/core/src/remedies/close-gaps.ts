import type { BuildUp } from "../project/types.ts";
import { replaceLayer } from "./edit-layers.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";

/**
 * Closes the gaps of all sheets and boards.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for all layers with gaps, in one size
 */
export function closeGaps({ buildUp }: Situation): Change[] {
  const open = buildUp.layers.flatMap((layer, index) => (layer.type !== "air" && layer.gaps !== null ? [index] : []));
  if (open.length === 0) return [];
  const closed = open.reduce<BuildUp>((changed, index) => replaceLayer(changed, index, whole(changed, index)), buildUp);
  const layers = open.map((index) => buildUp.layers[index]!.name);
  const does = [{ kind: "gaps closed" as const, layers }];
  const step = { does, buildUp: closed, surroundings: null, thicknessInside: 0, thicknessOutside: 0 };
  return changeOf({ key: "gaps closed", effort: EFFORT.closeGaps, steps: [step] });
}

/**
 * Closes the stated air leak: no change of layers can make up for air that leaks past them.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change in one size, if a leak is stated
 */
export function closeLeak({ buildUp }: Situation): Change[] {
  if (buildUp.leak === null) return [];
  const closed = { ...buildUp, leak: null };
  const does = [{ kind: "leak closed" as const }];
  const step = { does, buildUp: closed, surroundings: null, thicknessInside: 0, thicknessOutside: 0 };
  return changeOf({ key: "leak closed", effort: EFFORT.closeGaps, steps: [step] });
}

function whole(buildUp: BuildUp, index: number): BuildUp["layers"][number] {
  const layer = buildUp.layers[index]!;
  return layer.type === "air" ? layer : { ...layer, gaps: null };
}
