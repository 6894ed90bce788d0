import { USUAL_EMISSIVITY, VAPOUR_PERMEABILITY_OF_AIR } from "../../constants.ts";
import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenMaterial } from "../schema/written-project.ts";
import type { Material } from "../types.ts";

/**
 * Finds a material of the table, or makes the one given on the spot.
 *
 * @param written - its name or its values
 * @param path - where it stands
 * @param context - tables and problems
 * @returns the material, or null after adding a problem
 */
export function resolveMaterial(
  written: string | WrittenMaterial,
  path: ProblemPath,
  context: ReadingContext,
): Material | null {
  return typeof written === "string" ? findMaterial(written, path, context) : materialOnTheSpot(written, path, context);
}

/**
 * Looks a material up by name.
 *
 * @param name - as written
 * @param path - where the name stands
 * @param context - tables and problems
 * @returns the material, or null after adding a problem with near names
 */
export function findMaterial(name: string, path: ProblemPath, context: ReadingContext): Material | null {
  const answer = context.findMaterial(name);
  if (answer.found === null) {
    context.collector.add("material-unknown", path, { name, near: answer.near, alike: answer.alike });
  }
  return answer.found;
}

function materialOnTheSpot(written: WrittenMaterial, path: ProblemPath, context: ReadingContext): Material | null {
  const byHumidity = written["sd by humidity"]?.map(([humidity, sd]) => [humidity.value, sd.value] as const) ?? null;
  if (byHumidity !== null && !isRising(byHumidity.map(([humidity]) => humidity))) {
    context.collector.add("sd-by-humidity-order", [...path, "sd by humidity"]);
    return null;
  }
  const dry = written["vapour resistance factor"]?.value ?? null;
  const facing = written["facing sd"]?.value ?? null;
  return {
    name: written.name,
    group: null,
    kind: written.kind ?? null,
    density: written.density?.value ?? null,
    conductivity: written.conductivity?.value ?? null,
    specificHeat: written["specific heat"]?.value ?? null,
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: written["wet vapour resistance factor"]?.value ?? dry,
    equivalentAirLayerThickness: sdOfSheet(written) ?? byHumidity?.[0]?.[1] ?? null,
    equivalentAirLayerThicknessByHumidity: byHumidity,
    emissivity: (written["facing emissivity"] ?? written.emissivity)?.value ?? USUAL_EMISSIVITY,
    facingInner: facing,
    facingOuter: facing,
    source: written.source ?? "given in the project file",
    basis: written.basis ?? (written.source === undefined ? "assumed" : "declared"),
    spread: written.spread?.value ?? null,
  };
}

/** sd of a sheet from whichever of the three was given [m]. */
function sdOfSheet(written: WrittenMaterial): number | null {
  if (written.sd !== undefined) return written.sd.value;
  if (written["vapour resistance"] !== undefined)
    return written["vapour resistance"].value * VAPOUR_PERMEABILITY_OF_AIR;
  if (written.permeance !== undefined) return VAPOUR_PERMEABILITY_OF_AIR / written.permeance.value;
  return null;
}

function isRising(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value > values[index - 1]!);
}
