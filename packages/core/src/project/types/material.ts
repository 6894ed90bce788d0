/** What a material is to mould, corrosion and drops; null when the file does not say. */
export type MaterialKind = "wood" | "board" | "mineral" | "metal" | "plastic" | "paper";

/** How a value came about: given by a maker's declaration, taken from a table, or assumed. */
export type ValueBasis = "declared" | "tabulated" | "assumed";

/** A material with a thickness of its own, or a sheet that has only an sd. */
export interface Material {
  name: string;
  group: string | null;
  kind: MaterialKind | null;
  /** [kg/m³] */
  density: number | null;
  /** λ [W/(m·K)]; null for a sheet. */
  conductivity: number | null;
  /** [J/(kg·K)] */
  specificHeat: number | null;
  /** μ dry and wet [–], ≥ 1; null for a sheet. */
  vapourResistanceFactorDry: number | null;
  /** [–] */
  vapourResistanceFactorWet: number | null;
  /** sd of a sheet [m]; null for a material with a thickness. */
  equivalentAirLayerThickness: number | null;
  /** sd of a sheet against relative humidity: pairs [RH as a fraction, sd in m], RH rising; null when constant. */
  equivalentAirLayerThicknessByHumidity: readonly (readonly [number, number])[] | null;
  /** ε of its faces [–]. */
  emissivity: number;
  /** sd [m] of the facing on the room side and on the outer side; null without facing. */
  facingInner: number | null;
  /** [m] */
  facingOuter: number | null;
  source: string;
  basis: ValueBasis;
  /** How far the values may be off, as the table's row tells; left out: by the basis. */
  spreadClass?: "tabulated" | "common" | "assumed";
  /** The material as its table or the file has it, where μ was raised for a thin layer; left out where it was not. */
  asStated?: Material;
  /** Relative spread of its values for the spread study [–] (0.1 is ±10 %); null: the default of its basis. */
  spread: number | null;
}

/** What something is also called on site. */
export interface EverydayName {
  name: string;
  /** The rows of the material table that may be meant, likeliest first. */
  materials: readonly string[];
  /** What has to be known first; null where the names alone tell. */
  question: string | null;
}
