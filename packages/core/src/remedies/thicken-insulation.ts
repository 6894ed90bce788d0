import { replaceLayer } from "./edit-layers.ts";
import { CLOSE_THICKNESSES, thicknessesAbove } from "./insulate-outside.ts";
import { bestInsulation } from "./places.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";

/**
 * Thicker insulation in a floor on the ground, where none can be laid outside: the floor rises, or is dug deeper, by as
 * much.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change, thinnest first; none between framing, whose depth is built already, nor without insulation
 */
export function thickenInsulation({ buildUp }: Situation): Change[] {
  const at = buildUp.faces === "ground" ? bestInsulation(buildUp) : null;
  const layer = at === null ? undefined : buildUp.layers[at];
  if (layer?.type !== "material" || layer.framing !== null) return [];
  const { name, thickness: was } = layer;
  const steps = thicknessesAbove(was).map((thickness) => ({
    does: [{ kind: "insulation thickened" as const, layer: name, thickness, was }],
    buildUp: replaceLayer(buildUp, at!, { ...layer, thickness }),
    surroundings: null,
    thicknessInside: 0,
    thicknessOutside: thickness - was,
  }));
  return changeOf({ key: `${name} thicker`, effort: EFFORT.insulateOutside, steps, closeSteps: CLOSE_THICKNESSES });
}
