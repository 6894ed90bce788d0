import type { Layer, Material, SolidLayer } from "../../project/types.ts";
import type { SpreadInput } from "./types.ts";
import { factorAt, type Width, widthsOf } from "./widths.ts";

/** Least μ, that of still air [–]. Source: METHOD.md, Vapour resistance of layers. */
const LEAST_VAPOUR_RESISTANCE_FACTOR = 1;

/** All places of one material in the working copy; they vary together, because it is one product. */
interface MaterialPlaces {
  material: Material;
  /** Its name, followed by its place if another material has the same name. */
  name: string;
  /** Its places in words: "layer 3", or the framing's name. */
  where: Set<string>;
  /** The layers made of it, because a layer may state facings of its own. */
  layers: SolidLayer[];
  copies: Material[];
}

/**
 * The inputs of a build-up's materials, framing included.
 *
 * @param layers - the counted layers of the working copy
 * @returns conductivity and vapour resistance of each material with a thickness, and sd of each sheet. One material in
 *   several layers gives one input; a different material of the same name gives another
 */
export function materialInputs(layers: readonly Layer[]): SpreadInput[] {
  return placesOfMaterials(layers).flatMap((places) => {
    const widths = widthsOf(places.material);
    return [...conductivityInput(places, widths.conductivity), ...vapourInput(places, widths.vapourResistance)];
  });
}

/** Groups materials by values: two materials of the file, or one metal in two thicknesses, may share a name. */
function placesOfMaterials(layers: readonly Layer[]): MaterialPlaces[] {
  const byValues = new Map<string, MaterialPlaces>();
  const note = (copy: Material, layer: SolidLayer | null, where: string): void => {
    const values = JSON.stringify(copy);
    const known = byValues.get(values) ?? {
      material: structuredClone(copy),
      name: copy.name,
      where: new Set(),
      layers: [],
      copies: [],
    };
    byValues.set(values, known);
    known.where.add(where);
    if (!known.copies.includes(copy)) known.copies.push(copy);
    if (layer !== null) known.layers.push(layer);
  };
  for (const [index, layer] of layers.entries()) {
    if (layer.type !== "air") note(layer.material, layer, `layer ${index + 1}`);
    if (layer.framing !== null) note(layer.framing.material, null, layer.framing.name);
  }
  return namedApart([...byValues.values()]);
}

function namedApart(places: readonly MaterialPlaces[]): MaterialPlaces[] {
  return places.map((one) => {
    const isOnly = places.every((other) => other === one || other.name !== one.name);
    return isOnly ? one : { ...one, name: `${one.name} (${[...one.where].join(", ")})` };
  });
}

function conductivityInput({ material, name: called, copies }: MaterialPlaces, width: Width): SpreadInput[] {
  const stated = material.conductivity;
  if (stated === null) return [];
  const set = (quantile: number): void => {
    for (const copy of copies) copy.conductivity = stated * factorAt(width, quantile);
  };
  const name = `conductivity of ${called}`;
  return [{ description: { name, kind: "conductivity", unit: "W/(m·K)", ...ends(stated, width) }, set }];
}

/** The dry and the wet μ, sd and facings of a material vary together. */
function vapourInput({ material, name: called, layers, copies }: MaterialPlaces, width: Width): SpreadInput[] {
  const facings = layers.map((layer) => ({ layer, inner: layer.facingInner, outer: layer.facingOuter }));
  const set = (quantile: number): void => {
    const factor = factorAt(width, quantile);
    for (const copy of copies) {
      copy.vapourResistanceFactorDry = varied(material.vapourResistanceFactorDry, factor);
      copy.vapourResistanceFactorWet = varied(material.vapourResistanceFactorWet, factor);
      const sd = material.equivalentAirLayerThickness;
      copy.equivalentAirLayerThickness = sd === null ? null : sd * factor;
      const byHumidity = material.equivalentAirLayerThicknessByHumidity;
      copy.equivalentAirLayerThicknessByHumidity =
        byHumidity?.map(([humidity, value]) => [humidity, value * factor] as const) ?? null;
    }
    for (const { layer, inner, outer } of facings) {
      layer.facingInner = inner * factor;
      layer.facingOuter = outer * factor;
    }
  };
  const name = `vapour resistance of ${called}`;
  const sd = material.equivalentAirLayerThickness;
  if (sd !== null) return [{ description: { name, kind: "sd", unit: "m", ...ends(sd, width) }, set }];
  const factor = material.vapourResistanceFactorDry;
  if (factor === null) return [];
  const description = { name, kind: "vapour resistance factor" as const, unit: "–" as const, ...ends(factor, width) };
  return [{ description: { ...description, low: Math.max(LEAST_VAPOUR_RESISTANCE_FACTOR, description.low) }, set }];
}

function varied(value: number | null, factor: number): number | null {
  return value === null ? null : Math.max(LEAST_VAPOUR_RESISTANCE_FACTOR, value * factor);
}

/** A stated value, with the two ends of its spread. */
export function ends(stated: number, width: Width): { stated: number; low: number; high: number; origin: string } {
  return { stated, low: stated * width.low, high: stated * width.high, origin: width.origin };
}
