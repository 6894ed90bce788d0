import {
  type AirLayer,
  airLayer,
  type BuildUp,
  buildUp as built,
  type Framing,
  type Layer,
  layer,
  type Material,
  material as made,
  type SolidLayer,
} from "@warmside/core";

/** Things with nothing special about them: a case says what differs, within what can be built or not. */
const MATERIAL = made({ name: "case", conductivity: 1, vapourResistanceFactor: 1, source: "case" });
const SOLID = layer(MATERIAL, 0.1);
const AIR = airLayer(0.1, "none");
const WALL = built({ name: "case", layers: [SOLID] });

/** A material by λ [W/(m·K)] and μ [–] alone, for cases that name no product. */
export function material(conductivity: number, vapourResistanceFactor = 1, more: Partial<Material> = {}): Material {
  return {
    ...MATERIAL,
    name: `material of ${conductivity} W/(m K)`,
    conductivity,
    vapourResistanceFactorDry: vapourResistanceFactor,
    vapourResistanceFactorWet: vapourResistanceFactor,
    basis: "tabulated",
    ...more,
  };
}

/** A layer of a thickness [m] and λ [W/(m·K)]. */
export function solid(thickness: number, conductivity: number, more: Partial<SolidLayer> = {}): SolidLayer {
  const name = `${thickness * 1000} mm of ${conductivity} W/(m K)`;
  return { ...SOLID, name, material: material(conductivity), thickness, ...more };
}

/** A layer given by its resistance [m²·K/W] alone: 0.1 m of the conductivity that makes it. */
export function resisting(resistance: number, framing: Framing | null = null): SolidLayer {
  return solid(0.1, 0.1 / resistance, { framing });
}

/** A sheet of an sd [m]. */
export function sheet(sd: number, more: Partial<SolidLayer> = {}): SolidLayer {
  const itself = material(0, 1, {
    name: `sheet of sd ${sd} m`,
    conductivity: null,
    vapourResistanceFactorDry: null,
    vapourResistanceFactorWet: null,
    equivalentAirLayerThickness: sd,
  });
  return solid(0, 1, { type: "sheet", name: itself.name, material: itself, ...more });
}

/** An air layer of a thickness [m]. */
export function air(thickness: number, more: Partial<AirLayer> = {}): AirLayer {
  return { ...AIR, name: `${thickness * 1000} mm of air`, thickness, ...more };
}

/** Framing by its share of the area, λ 0.13 unless said. */
export function framing(name: string, share: number, conductivity = 0.13): Framing {
  const itself = material(conductivity, 50, { name, kind: "wood" });
  return { name, material: itself, share, origin: { kind: "fraction" }, ofOneLayer: false };
}

/** A wall to the open air of these layers, from the room outwards. */
export function buildUp(layers: readonly Layer[], more: Partial<BuildUp> = {}): BuildUp {
  return { ...WALL, layers, ...more };
}
