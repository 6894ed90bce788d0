import { plainDigits } from "../../quantities/format-quantity.ts";
import type { Material } from "../types.ts";

/** Polythene thinner than this is a sheet [m]. Rule of this project. */
export const THICKEST_POLYTHENE_SHEET = 0.001;

/** Thickness that one gauge of polythene stands for [m]. Source: common practice (1000 gauge is 250 µm). */
export const THICKNESS_OF_GAUGE = 0.25e-6;

/** sd of polythene per metre of thickness [–]: 50 m for 0.15 mm. Source: ISO 10456:2007 Table 5 (from memory). */
export const POLYTHENE_SD_PER_THICKNESS: number = 50 / 0.00015;

/** Least sd of metal and glass [m], that of aluminium foil. Source: ISO 10456:2007 Table 5 (from memory). */
export const LEAST_SD_OF_METAL = 1500;

/**
 * Whether a material is polythene, whose thin sheets are far more open to vapour than the polymer.
 *
 * @param material - any material
 * @returns true for the table's two polyethylenes and for anything whose name begins with polyethylene or polythene
 */
export function isPolythene({ name }: Material): boolean {
  return /^(polyethylene|polythene)\b/i.test(name.trim());
}

/**
 * A polythene sheet of a stated thickness, with an sd from measured sheets, not from the polymer's μ.
 *
 * @param material - polythene with a conductivity
 * @param thickness - [m], > 0
 * @returns the sheet; its source says where its sd comes from
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

/** What a material becomes in a layer of a given thickness. */
export interface MaterialInThickness {
  type: "material" | "sheet";
  material: Material;
  /** [m]; 0 for a sheet. */
  thickness: number;
}

/**
 * A material in a given thickness: thin polythene becomes a sheet, and metal is as tight as a foil, however thin.
 *
 * @param material - one with a conductivity, as in its table or as already made for another thickness
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
 * Makes metal or glass at least as tight as a foil.
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
