/** What a material is made of, for the rules on mould, corrosion and drops. */
export type MaterialKind = "wood" | "board" | "mineral" | "metal" | "plastic" | "paper";

/** Where a value comes from: declared by the maker, taken from a table, or assumed. */
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
  /** μ, dry [–], ≥ 1; null for a sheet. */
  vapourResistanceFactorDry: number | null;
  /** μ, wet [–], ≥ 1; null for a sheet. */
  vapourResistanceFactorWet: number | null;
  /** sd of a sheet [m]; null for a material with a thickness. */
  equivalentAirLayerThickness: number | null;
  /** sd of a sheet by relative humidity: pairs [RH as a fraction, sd in m], in order of RH; null when constant. */
  equivalentAirLayerThicknessByHumidity: readonly (readonly [number, number])[] | null;
  /** ε of its faces [–]. */
  emissivity: number;
  /** sd of the facing on the room side [m]; null without facing. */
  facingInner: number | null;
  /** sd of the facing on the outer side [m]; null without facing. */
  facingOuter: number | null;
  source: string;
  basis: ValueBasis;
  /** How far the values may be off, from the table's row; if left out, the basis decides. */
  spreadClass?: "tabulated" | "common" | "assumed";
  /** The material as its table or the file has it, if μ was raised for a thin layer; otherwise left out. */
  asStated?: Material;
  /** Relative spread of its values for the spread study [–] (0.1 is ±10 %); null for the default of its basis. */
  spread: number | null;
}

/** A name used on site, and the materials it may mean. */
export interface EverydayName {
  name: string;
  /** The rows of the material table that it may mean, likeliest first. */
  materials: readonly string[];
  /** What to ask before choosing; null where the names alone are enough. */
  question: string | null;
}
