import { checkLayer } from "../given/build-up.ts";
import type { AirLayer, Material, SolidLayer, Ventilation } from "../project/types.ts";
import { checked } from "./given-or-thrown.ts";
import { type MaterialValues, material } from "./material.ts";

/**
 * A layer of one material, or a sheet.
 *
 * @param of - a name of the shipped table, values, or a material
 * @param thickness - [m], 0.00001 to 3; left out for a sheet
 * @param more - framing, name, gaps, purpose and anything else a layer may have
 * @returns the layer
 * @throws ProblemsError with every problem, in the words of the project file's reader
 * @example layer("mineral wool slab", 0.14).material.conductivity // 0.035
 */
export function layer(
  of: string | MaterialValues | Material,
  thickness = 0,
  more: Partial<Omit<SolidLayer, "type" | "material" | "thickness">> = {},
): SolidLayer {
  const itself = typeof of === "object" && "basis" in of ? of : material(of);
  const made: SolidLayer = {
    type: itself.equivalentAirLayerThickness === null ? "material" : "sheet",
    name: itself.name,
    material: itself,
    thickness,
    framing: null,
    fit: "continuous",
    fasteners: null,
    gaps: null,
    purpose: null,
    bonded: false,
    gapBesideFraming: null,
    taped: null,
    emissivityInner: itself.emissivity,
    emissivityOuter: itself.emissivity,
    facingInner: itself.facingInner ?? 0,
    facingOuter: itself.facingOuter ?? 0,
    ...more,
  };
  return checked(made, checkLayer, made.name);
}

/**
 * A layer of air.
 *
 * @param thickness - [m], 0.001 to 3
 * @param ventilation - none, slight or well
 * @param more - openings, framing, a stated resistance and anything else an air layer may have
 * @returns the layer
 * @throws ProblemsError with every problem, in the words of the project file's reader
 * @example airLayer(0.025, "well").name // "air layer"
 */
export function airLayer(
  thickness: number,
  ventilation: Ventilation,
  more: Partial<Omit<AirLayer, "type" | "thickness" | "ventilation">> = {},
): AirLayer {
  const made: AirLayer = {
    type: "air",
    name: "air layer",
    thickness,
    ventilation,
    ventilationArea: null,
    open: null,
    resistance: null,
    emissivity: null,
    framing: null,
    ...more,
  };
  return checked(made, checkLayer, made.name);
}
