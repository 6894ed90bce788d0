/** A month of the year, January to December. */
export type MonthName =
  | "January"
  | "February"
  | "March"
  | "April"
  | "May"
  | "June"
  | "July"
  | "August"
  | "September"
  | "October"
  | "November"
  | "December";

/** A side of a build-up: that of its own room, or the far one. */
export type Side = "inside" | "outside";

/** The side from which vapour is pushed over the year. */
export type WarmSide = Side | "neither";

/** A straight way through a build-up: all of it, between its framing, or through the framings named. */
export interface SectionId {
  kind: "whole" | "between framing" | "through framing";
  /** Names of framings, in the order of the layers; empty for the other kinds. */
  through: readonly string[];
}

/** Which part of a layer: the layer itself, a facing of it, or the framing in its place. */
export type SlicePart = "whole" | "inner facing" | "outer facing" | "framing";

/** A part of a layer along a section. */
export interface PartOfLayer {
  /** Index of the layer, from 0. */
  layer: number;
  part: SlicePart;
  material: string;
}

/** A piece of wood along a section: a layer, or the framing that runs through it. */
export interface PieceOfWood {
  /** Index of the layer, from 0. */
  layer: number;
  /** The framing's name; null for the layer itself. */
  framing: string | null;
}

/** Where something is: at one node or over several neighbouring ones. */
export interface Place {
  extent: "node" | "zone";
  /** What ends there and what begins there; the same twice inside a part, null at a surface. */
  inner: PartOfLayer | null;
  outer: PartOfLayer | null;
}
