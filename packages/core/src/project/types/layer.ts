import type { Material } from "./material.ts";

/** Where a framing's share comes from. */
export type FramingOrigin =
  | { kind: "fraction" }
  | { kind: "width and spacing"; width: number; spacing: number; otherTimber: number; otherTimberByDefault: boolean }
  | { kind: "channel"; channel: Channel; spacing: number };

/** A stud or rail folded from sheet metal: a web as deep as its layer, two flanges, and lips at their edges; all [m]. */
export interface Channel {
  /** [m] */
  sheet: number;
  /** [m] */
  flange: number;
  /** 0 without lips [m]. */
  lip: number;
}

/** Timber (or another bridge) running through a layer. The same name through several layers is the same timber. */
export interface Framing {
  name: string;
  material: Material;
  /** Part of the area [–], 0 to 1. */
  share: number;
  origin: FramingOrigin;
  /** True for a framing written inside one layer: it belongs to that layer alone. */
  ofOneLayer: boolean;
}

/** ISO 6946 Annex F levels, in words: 0 continuous, 1 gaps, 2 gaps and air behind. */
export type InsulationFit = "continuous" | "gaps" | "gaps and air behind";

/** What a layer is for; all but the vapour layer are required and never removed. */
export type LayerPurpose =
  | "vapour layer"
  | "deck"
  | "damp-proof membrane"
  | "radon membrane"
  | "gas membrane"
  | "weather skin"
  | "tanking";

/** Fasteners through an insulation, ISO 6946 Annex F. */
export interface Fasteners {
  /** [1/m²] */
  perArea: number;
  /** [m] */
  diameter: number;
  /** [W/(m·K)] */
  conductivity: number;
  /** Depth by which the fastener stops short of the layer's face [m]; less than the layer's thickness in a file. */
  recess: number;
}

/** What is missing of a sheet: an area share 0 to 1, with the words of the file. */
export interface LayerGaps {
  /** [–] */
  share: number;
  /** Open laps, when given so: width and spacing [m]. The share tells how wide they are now. */
  laps: { width: number; spacing: number } | null;
  /** Round holes, when given so: diameter [m] and number [1/m²]. The share tells how wide they are now. */
  holes?: { diameter: number; perArea: number } | null;
  /** The material on either side, from which vapour converges; null or left out: only the share counts. */
  around?: readonly StuffBeside[] | null;
}

/** What lies on one side of a sheet. */
export interface StuffBeside {
  /** μ [–] */
  factor: number;
  /** [m] */
  depth: number;
}

/** How a layer that framing interrupts is taped: not, over the framing from board to board, or onto its edges by a reach [m]. */
export type Taping = { kind: "no" } | { kind: "over the framing" } | { kind: "onto the framing"; reach: number };

/** A layer of one material, or a sheet, as it stands in a build-up. */
export interface SolidLayer {
  type: "material" | "sheet";
  name: string;
  material: Material;
  /** [m]; 0 for a sheet. */
  thickness: number;
  framing: Framing | null;
  fit: InsulationFit;
  fasteners: Fasteners | null;
  gaps: LayerGaps | null;
  purpose: LayerPurpose | null;
  /** Foam without a free surface: it sticks to what lies outside it all over. */
  bonded: boolean;
  /** Width of the gap on each side of the framing that interrupts the layer [m]; null when not said. */
  gapBesideFraming: number | null;
  taped: Taping | null;
  /** ε of the two faces, after the material and the layer's own keys [–]. */
  emissivityInner: number;
  /** [–] */
  emissivityOuter: number;
  /** sd [m] of facings on the two faces; 0 without. */
  facingInner: number;
  /** [m] */
  facingOuter: number;
}

/** How an air layer is ventilated, ISO 6946. */
export type Ventilation = "none" | "slight" | "well";

/** A layer of air, as it stands in a build-up. */
export interface AirLayer {
  type: "air";
  name: string;
  /** [m] */
  thickness: number;
  ventilation: Ventilation;
  /** Openings [m²] per metre of length (upright) or per m² (level); null when not given. */
  ventilationArea: number | null;
  open: "both ends" | "one end" | "closed" | null;
  /** Stated thermal resistance [m²·K/W]; null: calculated. */
  resistance: number | null;
  /** ε of its faces when the file states it for the air layer [–]; null: the neighbours'. */
  emissivity: number | null;
  framing: Framing | null;
}

/** One layer of a build-up. */
export type Layer = SolidLayer | AirLayer;
