import { VAPOUR_PERMEABILITY_OF_AIR } from "../constants.ts";
import type { CountedLayer } from "../heat/types.ts";
import type { Framing } from "../project/types.ts";
import { coreSd, SD_OF_AIR_LAYER } from "../vapour/layer-sd.ts";
import type { Stuff } from "./scene.ts";

/** Drawn thickness of sheets, facings and tapes [m]; their sd does not depend on it. */
export const SHEET_THICKNESS = 1e-4;

/** λ across a sheet of that thickness [W/(m·K)]: a negligible R of 10⁻⁵ m²·K/W. */
const ACROSS_A_SHEET = 10;

/** λ [W/(m·K)] and δ [kg/(m·s·Pa)] along a sheet, both negligible. Foil of 50 µm changes U by under 1 %. */
const HEAT_ALONG_A_SHEET = 1e-6;
const VAPOUR_ALONG_A_SHEET = 1e-18;

/** λ of still air in a gap of a few millimetres beside a board, with some radiation [W/(m·K)] (this project's rule). */
const CONDUCTIVITY_OF_GAP = 0.03;

/** Still air in a gap beside framing. */
export const GAP: Stuff = {
  name: "gap beside the framing",
  material: null,
  isAir: true,
  conductivity: evenly(CONDUCTIVITY_OF_GAP),
  permeability: evenly(VAPOUR_PERMEABILITY_OF_AIR),
};

/** The same value in both directions. */
export function evenly(value: number): { x: number; y: number } {
  return { x: value, y: value };
}

/**
 * Stuff with only a λ, for parts without a material in the file; not for calculations of vapour.
 *
 * @param name - its name
 * @param conductivity - λ [W/(m·K)], above 0
 * @returns the stuff
 */
export function plainStuff(name: string, conductivity: number): Stuff {
  const permeability = evenly(VAPOUR_PERMEABILITY_OF_AIR);
  return { name, material: null, isAir: false, conductivity: evenly(conductivity), permeability };
}

/** Least sd of a sheet in the plane, as open as no sheet [m]; much less would swamp other flows by rounding errors. */
const LEAST_SD_OF_SHEET = 1e-4;

/**
 * A sheet across y.
 *
 * @param name - its name
 * @param sd - its equivalent air layer thickness [m], above 0
 * @returns the stuff
 */
export function sheetStuff(name: string, sd: number): Stuff {
  return {
    name,
    material: null,
    isAir: false,
    conductivity: { x: HEAT_ALONG_A_SHEET, y: ACROSS_A_SHEET },
    permeability: {
      x: VAPOUR_ALONG_A_SHEET,
      y: (VAPOUR_PERMEABILITY_OF_AIR * SHEET_THICKNESS) / Math.max(sd, LEAST_SD_OF_SHEET),
    },
  };
}

/** Least R of an air layer in the plane [m²·K/W]: negligible, for layers stated to have no resistance. */
const LEAST_RESISTANCE = 1e-4;

/**
 * The stuff of a counted layer between its framing.
 *
 * @param counted - a layer with a thickness
 * @returns the stuff; air by its equivalent conductivity and an sd of 0.01 m
 */
export function layerStuff({ layer, resistance }: CountedLayer): Stuff {
  const sd = layer.type === "air" ? SD_OF_AIR_LAYER : coreSd(layer, "dry");
  return {
    name: layer.name,
    material: layer.type === "air" ? null : layer.material,
    isAir: layer.type === "air",
    conductivity: evenly(layer.thickness / Math.max(resistance, LEAST_RESISTANCE)),
    permeability: evenly((VAPOUR_PERMEABILITY_OF_AIR * layer.thickness) / sd),
  };
}

/**
 * The stuff of framing.
 *
 * @param framing - of a material with λ and μ
 * @returns the stuff
 */
export function framingStuff({ name, material }: Framing): Stuff {
  return {
    name,
    material,
    isAir: false,
    conductivity: evenly(material.conductivity!),
    permeability: evenly(VAPOUR_PERMEABILITY_OF_AIR / material.vapourResistanceFactorDry!),
  };
}

/** A layer with framing that crosses the plane: the mean of both, weighted by their shares. */
export function layerWithCrossing(counted: CountedLayer, crossing: Framing): Stuff {
  const [between, timber] = [layerStuff(counted), framingStuff(crossing)];
  const mean = (one: number, other: number): number => (1 - crossing.share) * one + crossing.share * other;
  return {
    ...between,
    name: `${between.name} with ${crossing.name}`,
    conductivity: evenly(mean(between.conductivity.x, timber.conductivity.x)),
    permeability: evenly(mean(between.permeability.x, timber.permeability.x)),
  };
}
