import type { AirLayer, InsulationFit, LayerPurpose, MaterialKind, ValueBasis, Ventilation } from "../project/types.ts";

/** A layer with the properties used and their origin, in SI. */
export interface LayerResult {
  /** Number as in the report: from 1, from the room outwards. */
  number: number;
  name: string;
  type: "material" | "sheet" | "air";
  kind: MaterialKind | null;
  group: string | null;
  /** [m] */
  thickness: number;
  /** [W/(m·K)] */
  conductivity: number | null;
  /** Of the layer's own material, between framing [m²·K/W]. */
  resistance: number;
  /** [–] */
  vapourResistanceFactor: number | null;
  /** [m], the dry value used */
  sd: number;
  /** [m], the unfavourable value of the sensitivity run */
  sdUnfavourable: number;
  /** The parts of `sd` where the layer has facings [m]; null without. */
  sdParts: { innerFacing: number; core: number; outerFacing: number } | null;
  /** [kg/m³] */
  density: number | null;
  /** [–] */
  emissivityInner: number | null;
  /** [–] */
  emissivityOuter: number | null;
  source: string;
  basis: ValueBasis;
  framing: string | null;
  ventilation: Ventilation | null;
  /** Openings [m² per m or m²] and where they are, as stated. */
  ventilationArea: number | null;
  open: AirLayer["open"];
  /** The rule that gave an air layer its resistance, in words; null for materials. */
  airRule: string | null;
  fit: InsulationFit | null;
  purpose: LayerPurpose | null;
  /** False from a well-ventilated layer outwards: left out of the sums. */
  counted: boolean;
}

/** A framing with its share of the area and the origin of that share. */
export interface FramingResult {
  name: string;
  material: string;
  /** [W/(m·K)] */
  conductivity: number;
  /** μ, dry [–]; null for metal and mineral framing, which counts for heat only. */
  vapourResistanceFactor: number | null;
  source: string;
  basis: ValueBasis;
  /** [–] */
  share: number;
  /** Origin of the share, in words with its numbers. */
  origin: string;
  /** The usual share in such an element, for comparison, in words (common practice). */
  usual: string;
  /** Indices, from 0, of the layers it runs through. */
  layers: number[];
  /** Width and spacing, centre to centre [m]; null or absent when only the share was given. */
  width?: number | null;
  /** [m] */
  spacing?: number | null;
}
