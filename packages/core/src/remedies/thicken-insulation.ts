import type { BuildUp, SolidLayer } from "../project/types.ts";
import { replaceLayer } from "./edit-layers.ts";
import { CLOSE_THICKNESSES, THICKEST_BOARD, THICKNESS_STEP } from "./insulate-outside.ts";
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
  const steps = thicker(was).map((thickness) => ({
    does: [{ kind: "insulation thickened" as const, layer: name, thickness, was }],
    buildUp: withThickness(buildUp, at!, layer, thickness),
    surroundings: null,
    thicknessInside: 0,
    thicknessOutside: thickness - was,
  }));
  return changeOf({ key: `${name} thicker`, effort: EFFORT.insulateOutside, steps, closeSteps: CLOSE_THICKNESSES });
}

/** Thicknesses above the present one, in whole steps [m]. */
function thicker(was: number): number[] {
  const most = Math.round(THICKEST_BOARD / THICKNESS_STEP);
  const least = Math.floor(was / THICKNESS_STEP + ROUNDING) + 1;
  return Array.from(
    { length: Math.max(0, most - least + 1) },
    (_, step) => ((least + step) * THICKNESS_STEP * 1e3) / 1e3,
  );
}

/** Keeps a thickness of whole steps from counting as a little less. */
const ROUNDING = 1e-9;

function withThickness(buildUp: BuildUp, at: number, layer: SolidLayer, thickness: number): BuildUp {
  return replaceLayer(buildUp, at, { ...layer, thickness });
}
