/** Edge insulation of a slab: level (extent is its width) or upright (extent is its depth). */
export interface EdgeInsulation {
  /** Rn [m²·K/W] */
  resistance: number;
  /** dn [m] */
  thickness: number;
  /** D [m] */
  extent: number;
  upright: boolean;
}

/** The soil under a floor; it sets the conductivity of the ground. */
export type Soil = "clay or silt" | "sand or gravel" | "rock" | "unknown";

/** Slab on ground, ISO 13370:2017. */
export interface Ground {
  /** [m²] */
  area: number;
  /** [m] */
  perimeter: number;
  /** [m] */
  wallThickness: number;
  soil: Soil;
  edgeInsulation: EdgeInsulation | null;
  membrane: boolean;
}

/** Ventilated void under a suspended floor, ISO 13370:2017. */
export interface UnderfloorVoid {
  /** [m²] */
  area: number;
  /** [m] */
  perimeter: number;
  /** [m] */
  wallThickness: number;
  soil: Soil;
  /** [m] */
  height: number;
  /** [W/(m²·K)] */
  wallTransmittance: number;
  /** Openings [m²] per metre of perimeter. */
  openings: number;
  /** [m/s] */
  windSpeed: number;
  shelter: "sheltered" | "average" | "exposed";
  /** [m²·K/W] */
  groundInsulation: number;
}

/** A climate stated for the outer side: twelve temperatures [°C] and relative humidities [–]. */
export interface StatedMonths {
  /** [°C] */
  temperature: readonly number[];
  /** [–] */
  relativeHumidity: readonly number[];
}

/** An adjoining unheated space, counted as a resistance: ISO 6946:2017 clause 6.10 (from memory). */
export interface UnheatedSpace {
  /** [m²] */
  area: number;
  external: readonly { area: number; transmittance: number }[];
  /** [1/h] */
  airChanges: number;
  /** [m³] */
  volume: number;
}

/** The roof void above a ceiling, ISO 6946. */
export type RoofSpace = "tiles without underlay" | "felt or boards" | "felt or boards, low emissivity";
