import type { AirLayer, BuildUp, Framing, Layer, Material, SolidLayer } from "../../packages/core/src/project/types.ts";

/** A material by λ [W/(m·K)] and μ [–] alone, for cases that name no product. */
export function material(conductivity: number, vapourResistanceFactor = 1, more: Partial<Material> = {}): Material {
  return {
    name: `material of ${conductivity} W/(m K)`,
    group: null,
    kind: null,
    density: null,
    conductivity,
    specificHeat: null,
    vapourResistanceFactorDry: vapourResistanceFactor,
    vapourResistanceFactorWet: vapourResistanceFactor,
    equivalentAirLayerThickness: null,
    equivalentAirLayerThicknessByHumidity: null,
    emissivity: 0.9,
    facingInner: null,
    facingOuter: null,
    source: "case",
    basis: "tabulated",
    spread: null,
    ...more,
  };
}

/** A layer of a thickness [m] and λ [W/(m·K)]. */
export function solid(thickness: number, conductivity: number, more: Partial<SolidLayer> = {}): SolidLayer {
  return {
    type: "material",
    name: `${thickness * 1000} mm of ${conductivity} W/(m K)`,
    material: material(conductivity),
    thickness,
    framing: null,
    fit: "continuous",
    fasteners: null,
    gaps: null,
    purpose: null,
    bonded: false,
    gapBesideFraming: null,
    taped: null,
    emissivityInner: 0.9,
    emissivityOuter: 0.9,
    facingInner: 0,
    facingOuter: 0,
    ...more,
  };
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
  return {
    type: "air",
    name: `${thickness * 1000} mm of air`,
    thickness,
    ventilation: "none",
    ventilationArea: null,
    open: null,
    resistance: null,
    emissivity: null,
    framing: null,
    ...more,
  };
}

/** Framing by its share of the area, λ 0.13 unless said. */
export function framing(name: string, share: number, conductivity = 0.13): Framing {
  const itself = material(conductivity, 50, { name, kind: "wood" });
  return { name, material: itself, share, origin: { kind: "fraction" }, ofOneLayer: false };
}

/** A wall to the open air of these layers, from the room outwards. */
export function buildUp(layers: readonly Layer[], more: Partial<BuildUp> = {}): BuildUp {
  return {
    name: "case",
    slug: "case",
    element: "wall",
    room: "indoor",
    faces: "outdoors",
    target: null,
    pitch: null,
    span: null,
    clearSky: false,
    layers,
    ground: null,
    void: null,
    voidClimate: null,
    space: null,
    roofSpace: null,
    area: null,
    openings: null,
    length: null,
    wettedByRain: null,
    rainOfHeatingSeason: null,
    unheatedSkin: false,
    junctionFactors: [],
    oddEnds: null,
    twoSeasonCheck: false,
    leak: null,
    trappedWater: [],
    variableResistance: false,
    variants: [],
    ...more,
  };
}
