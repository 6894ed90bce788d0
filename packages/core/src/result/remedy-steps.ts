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

/** What a board that comes to lie outermost needs over it, cladding and covering ventilated; null where something lies over it already. */
export type OuterProtection = "lining" | "cladding" | "roof covering" | null;

/** How a room is kept drier: by class, by points of relative humidity [–], by its use, by air changes [1/s]. */
export type DrierBy =
  | { kind: "class"; class: number; was: number }
  | { kind: "points"; less: number }
  | { kind: "use" }
  | { kind: "air changes"; airChanges: number; was: number };

/** What one change of a remedy does, by its kind: layers by name, thicknesses [m]. */
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
      /** The layer that it comes to lie on; null on the frame itself. */
      outside: string | null;
      /** The vapour layer that it lies on, where one is put in. */
      sheet: NamedSheet | null;
      protection: OuterProtection;
      isRoof: boolean;
      /** Sheets taken out with it. */
      takenOut: readonly string[];
    }
  | { kind: "room kept drier"; room: string; by: DrierBy };
