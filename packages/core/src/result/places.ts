import type { MONTH_NAMES } from "../constants.ts";

/** A month of the year, January to December. */
export type MonthName = (typeof MONTH_NAMES)[number];

/** A side of a build-up: that of its own room, or the outer side. */
export type Side = "inside" | "outside";

/** The side that vapour comes from over the year. */
export type WarmSide = Side | "neither";

/** A heat-flow path through a build-up: the only one, between framing, or through the framings named. */
export interface SectionId {
  kind: "whole" | "between framing" | "through framing";
  /** Names of framings, in the order of the layers; empty for the other kinds. */
  through: readonly string[];
}

/** A part of a layer: the layer itself, a facing of it, or the framing in its place. */
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

/** A place: one node, or several adjacent ones. */
export interface Place {
  extent: "node" | "zone";
  /** The parts that end and begin there; the same twice inside a part, null at a surface. */
  inner: PartOfLayer | null;
  outer: PartOfLayer | null;
}
