/** A place between two layers, by their names; null at a face of the build-up. */
export interface BetweenLayers {
  inner: string | null;
  outer: string | null;
}

/** A sheet by its name and sd [m]. */
export interface NamedSheet {
  name: string;
  /** [m] */
  sd: number;
}

/** The ventilated protection that a new outermost board needs; null where a layer already covers it. */
export type OuterProtection = "lining" | "cladding" | "roof covering" | null;

/** How a room is kept drier: by class, by points of relative humidity [–], by its use, by air changes [1/s]. */
export type DrierBy =
  | { kind: "class"; class: number; was: number }
  | { kind: "points"; less: number }
  | { kind: "use" }
  | { kind: "air changes"; airChanges: number; was: number };

/** One change of a remedy, by kind: layers by name, thicknesses [m]. */
export type RemedyStep =
  | { kind: "gaps closed"; layers: readonly string[] }
  | { kind: "leak closed" }
  | { kind: "framing taped over"; framing: string; layers: readonly string[] }
  | { kind: "left out"; layer: string }
  | { kind: "sheet added"; sheet: NamedSheet; place: BetweenLayers }
  | { kind: "sheet exchanged"; sheet: NamedSheet; for: string }
  | { kind: "outer sheet opened"; sheet: NamedSheet; for: string }
  | { kind: "outer board opened"; board: string; sd: number; for: string }
  | { kind: "sheet moved"; layer: string; place: BetweenLayers; leaves: string | null }
  | { kind: "air widened"; thickness: number }
  | { kind: "cavity"; thickness: number; place: BetweenLayers; withSheet: boolean; needsBracing: boolean }
  | { kind: "insulation thickened"; layer: string; thickness: number; was: number }
  | { kind: "insulated outside"; board: string; thickness: number; place: BetweenLayers; protection: OuterProtection }
  | {
      kind: "insulation moved";
      board: string;
      thickness: number;
      /** The layer on which it is placed; null on the frame itself. */
      outside: string | null;
      /** The vapour layer under it, where one is added. */
      sheet: NamedSheet | null;
      protection: OuterProtection;
      isRoof: boolean;
      /** Sheets removed with it. */
      takenOut: readonly string[];
    }
  | { kind: "room kept drier"; room: string; by: DrierBy };
