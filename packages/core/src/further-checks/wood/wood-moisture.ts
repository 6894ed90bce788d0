import type { BuildUpCalculation, SectionCalculation } from "../../calculate-build-up.ts";
import { MONTH_NAMES } from "../../constants.ts";
import type { Layer } from "../../project/types.ts";
import type { PieceOfWood, WoodResult } from "../../result/types.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import { humidityAtNode } from "../section-nodes/humidity-at-node.ts";
import { isThroughFraming, materialOfSlice } from "../section-nodes/material-of-slice.ts";
import { type Faces, facesOfSlices } from "../section-nodes/places.ts";
import { equilibriumMoisture } from "./equilibrium-moisture.ts";

/** Fibre saturation [fraction of dry mass]: wood that stays at it decays. Source: common practice. */
export const FIBRE_SATURATION = 0.28;

/** Moisture content above which wood can rot [fraction of dry mass]. Source: common practice. */
export const WOOD_MOISTURE_LIMIT = 0.2;

/** A wooden piece along a section: a layer of wood or board, or the framing in a layer's place. */
export interface WoodenPiece {
  section: SectionCalculation;
  slice: Slice;
  faces: Faces;
  /** The bay beside framing, at the depth of the piece; null for layers. */
  beside: { section: SectionCalculation; faces: Faces } | null;
  piece: PieceOfWood;
}

/**
 * Moisture of every wooden layer, and of the framing where a section runs through it, month by month at both faces.
 *
 * @param calculation - the build-up's figures
 * @returns one entry for each wooden layer and section: the equilibrium with the air at its faces
 * Source: this project's rule (METHOD.md, Wood moisture). An equilibrium overstates short wet spells.
 */
export function woodMoisture(calculation: BuildUpCalculation): WoodResult[] {
  return woodenPieces(calculation).map((piece) => {
    const months = MONTH_NAMES.map((month, index) => ({
      month,
      inner: moistureOfPiece(piece, "inner", index),
      outer: moistureOfPiece(piece, "outer", index),
    }));
    return {
      section: piece.section.name,
      sectionId: piece.section.id,
      sectionIndex: calculation.sections.indexOf(piece.section),
      layer: piece.slice.layer,
      name: pieceInWords(piece.piece, calculation.buildUp.layers),
      months,
      monthsOverLimit: months.filter(({ inner, outer }) => Math.max(inner, outer) > WOOD_MOISTURE_LIMIT).length,
    };
  });
}

/** The wooden pieces of every section, from the room outwards. */
export function woodenPieces(calculation: BuildUpCalculation): WoodenPiece[] {
  return calculation.sections.flatMap((section) => {
    const faces = facesOfSlices(section.line, section.slices);
    return section.slices.flatMap((slice, index) => {
      const kind = materialOfSlice(slice, calculation.buildUp, section.path)?.kind;
      if (kind !== "wood" && kind !== "board") return [];
      const layer = calculation.buildUp.layers[slice.layer]!;
      const piece = pieceOf(slice.layer, layer, section);
      const beside = piece.framing === null ? null : besideFraming(calculation, slice.layer);
      return [{ section, slice, faces: faces[index]!, piece, beside }];
    });
  });
}

/** The bay beside a stud in the same layer: its section and the faces of its filling; null without either. */
function besideFraming({ sections }: BuildUpCalculation, layer: number): WoodenPiece["beside"] {
  const section = sections.find(({ path }) => path.through.length === 0);
  if (section === undefined) return null;
  const faces = facesOfSlices(section.line, section.slices).filter(
    (_, index) => section.slices[index]!.layer === layer,
  );
  const [first] = faces;
  return first === undefined ? null : { section, faces: { inner: first.inner, outer: faces.at(-1)!.outer } };
}

/**
 * Equilibrium moisture content at a face of a piece; for a stud, the wetter of its own section and the bay beside it at
 * the same depth.
 *
 * @param piece - a wooden piece
 * @param face - which face
 * @param month - 0 to 11
 * @returns fraction of dry mass [–]
 * Source: METHOD.md, Wood moisture (this project's rule).
 */
export function moistureOfPiece(
  { section, faces, beside }: WoodenPiece,
  face: "inner" | "outer",
  month: number,
): number {
  const own = moistureAt(section, faces[face], month);
  return beside === null ? own : Math.max(own, moistureAt(beside.section, beside.faces[face], month));
}

function pieceOf(index: number, layer: Layer, section: SectionCalculation): PieceOfWood {
  return { layer: index, framing: isThroughFraming(layer, section.path) ? layer.framing!.name : null };
}

/** A piece of wood in words: "studs in mineral wool slab", "plywood". */
export function pieceInWords({ layer, framing }: PieceOfWood, layers: readonly { name: string }[]): string {
  const { name } = layers[layer]!;
  return framing === null ? name : `${framing} in ${name}`;
}

/** Equilibrium moisture content at a node in a month of the section's year [fraction of dry mass]. */
export function moistureAt({ year, climate }: SectionCalculation, node: number, month: number): number {
  const humidity = humidityAtNode(year.pressure[month]!, climate.saturation[month]!, node);
  return equilibriumMoisture(climate.temperature[month]![node]!, humidity);
}
