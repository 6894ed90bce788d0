import { plainDigits } from "../../quantities/format-quantity.ts";
import type { Material } from "../types.ts";

/** Polythene thinner than this is a sheet [m]. Rule of this project. */
export const THICKEST_POLYTHENE_SHEET = 0.001;

/** Thickness that one gauge of polythene stands for [m]. Source: common practice (1000 gauge is 250 µm). */
export const THICKNESS_OF_GAUGE = 0.25e-6;

/** sd of a polythene sheet for each metre of its thickness [–]: 50 m for 0.15 mm. Source: ISO 10456:2007 Table 5 (from memory). */
export const POLYTHENE_SD_PER_THICKNESS: number = 50 / 0.00015;

/** Least sd of metal and glass whatever the thickness [m]. Source: ISO 10456:2007 Table 5 (from memory), as aluminium foil. */
export const LEAST_SD_OF_METAL = 1500;

/**
 * Whether a material is polythene, whose thin sheets are far more open than the polymer.
 *
 * @param material - any
 * @returns true for the table's two polyethylenes and for anything called so
 */
export function isPolythene({ name }: Material): boolean {
  return /^(polyethylene|polythene)\b/i.test(name.trim());
}

/**
 * A polythene sheet of a stated thickness, by its sd and never by the polymer's μ.
 *
 * @param material - polythene with a conductivity
 * @param thickness - [m], > 0
 * @returns the sheet; its source says how its sd came about
 * Source: common practice (1000 gauge is 250 µm); ISO 10456:2007 Table 5 (from memory) for 50 m at 0.15 mm.
 */
export function sheetOfPolythene(material: Material, thickness: number): Material {
  const sd = thickness * POLYTHENE_SD_PER_THICKNESS;
  return {
    ...material,
    name: `${material.name} ${plainDigits(thickness * 1000)} mm`,
    conductivity: null,
    vapourResistanceFactorDry: null,
    vapourResistanceFactorWet: null,
    equivalentAirLayerThickness: sd,
    source: `sd 50 m for each 0.15 mm of sheet: ISO 10456:2007 Table 5 (from memory); thickness from the project file`,
  };
}

/** What a material is in a layer of some thickness. */
export interface MaterialInThickness {
  type: "material" | "sheet";
  material: Material;
  /** [m]; 0 for a sheet. */
  thickness: number;
}

/**
 * A material in a thickness: thin polythene is a sheet, and metal is as tight as a foil however thin.
 *
 * @param material - with a conductivity, as its table has it or as it is in another thickness
 * @param thickness - [m], > 0
 * @returns what the layer is made of
 */
export function inThickness(material: Material, thickness: number): MaterialInThickness {
  const stated = material.asStated ?? material;
  if (isPolythene(stated) && thickness < THICKEST_POLYTHENE_SHEET)
    return { type: "sheet", material: sheetOfPolythene(stated, thickness), thickness: 0 };
  return { type: "material", material: asTightAsMetal(stated, thickness), thickness };
}

/**
 * Metal or glass, at least as tight as a foil.
 *
 * @param material - any material with a thickness, as its table has it
 * @param thickness - [m], > 0
 * @returns the material itself, or with μ raised so that sd is 1500 m; its source then says so
 */
function asTightAsMetal(material: Material, thickness: number): Material {
  const isTight = material.kind === "metal" || material.group === "metal" || material.group === "glass";
  const least = LEAST_SD_OF_METAL / thickness;
  if (!isTight || !(material.vapourResistanceFactorWet! < least)) return material;
  return {
    ...material,
    vapourResistanceFactorDry: Math.max(material.vapourResistanceFactorDry!, least),
    vapourResistanceFactorWet: Math.max(material.vapourResistanceFactorWet!, least),
    source: `${material.source}; sd taken as at least 1500 m whatever the thickness`,
    asStated: material,
  };
}
