import type { Material } from "./material.ts";

/** How a framing's share was given. */
export type FramingOrigin =
  | { kind: "fraction" }
  | { kind: "width and spacing"; width: number; spacing: number; otherTimber: number; otherTimberByDefault: boolean }
  | { kind: "channel"; channel: Channel; spacing: number };

/** A stud or rail folded from sheet metal: a web as deep as its layer, two flanges, and lips at their edges; [m]. */
export interface Channel {
  /** [m] */
  sheet: number;
  /** [m] */
  flange: number;
  /** [m]; 0 without lips. */
  lip: number;
}

/** Timber (or another bridge) through a layer. The same name in several layers means the same timber. */
export interface Framing {
  name: string;
  material: Material;
  /** Share of the area [–], 0 to 1. */
  share: number;
  origin: FramingOrigin;
  /** True for framing written inside one layer, which belongs to that layer alone. */
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

/** Gaps in a sheet or board: the share of the area that is missing, 0 to 1, and how the file gives it. */
export interface LayerGaps {
  /** [–] */
  share: number;
  /** If given as open laps: width and spacing [m]. The present width follows from the share. */
  laps: { width: number; spacing: number } | null;
  /** If given as round holes: diameter [m] and number [1/m²]. The present size follows from the share. */
  holes?: { diameter: number; perArea: number } | null;
  /** The materials on the two sides, through which vapour converges; without them, only the share counts. */
  around?: readonly StuffBeside[] | null;
}

/** The material on one side of a sheet. */
export interface StuffBeside {
  /** μ [–] */
  factor: number;
  /** [m] */
  depth: number;
}

/** How a layer is taped at its framing: not at all, over the framing, or onto the framing's edges by a reach [m]. */
export type Taping = { kind: "no" } | { kind: "over the framing" } | { kind: "onto the framing"; reach: number };

/** A layer of one material, or a sheet, in a build-up. */
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
  /** Foam without a free outer surface: it adheres fully to the next layer outside. */
  bonded: boolean;
  /** Width of the gap on each side of the framing that interrupts the layer [m]; null when not said. */
  gapBesideFraming: number | null;
  taped: Taping | null;
  /** ε of the room face [–]: the layer's own, otherwise the material's. */
  emissivityInner: number;
  /** ε of the outer face [–]. */
  emissivityOuter: number;
  /** sd of the facing on the room face [m]; 0 without. */
  facingInner: number;
  /** sd of the facing on the outer face [m]; 0 without. */
  facingOuter: number;
}

/** How an air layer is ventilated, ISO 6946. */
export type Ventilation = "none" | "slight" | "well";

/** A layer of air in a build-up. */
export interface AirLayer {
  type: "air";
  name: string;
  /** [m] */
  thickness: number;
  ventilation: Ventilation;
  /** Openings [m²] per metre of length (upright) or per m² (level); null when not given. */
  ventilationArea: number | null;
  open: "both ends" | "one end" | "closed" | null;
  /** Stated thermal resistance [m²·K/W]; null if it is to be calculated. */
  resistance: number | null;
  /** ε of its faces, if stated for the air layer [–]; null if the neighbours' values count. */
  emissivity: number | null;
  framing: Framing | null;
}

/** One layer of a build-up. */
export type Layer = SolidLayer | AirLayer;
