import type { SectionCalculation } from "../calculate-build-up.ts";
import { mainInsulation } from "../heat/main-insulation.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { SlicePart } from "../result/types.ts";
import type { Slice } from "../vapour/section-slices.ts";

/** Least sd of a candidate [m] (this project's rule, METHOD.md, Vapour layer). */
export const LEAST_CANDIDATE_SD = 0.5;
/** Least share of a candidate in the total sd, a tight outer skin left out [–]. */
export const LEAST_CANDIDATE_SHARE = 0.1;

/** A tight layer, or adjacent ones, with its place along the section. */
export interface TightLayer {
  /** Layer indices. */
  layers: number[];
  /** Its slices: a faced board has two facings. */
  parts: { layer: number; part: SlicePart }[];
  name: string;
  sd: number;
  /** Resistance [m²·K/W] and sd [m] from the room surface to its inner and outer face. */
  resistanceBefore: number;
  resistanceAfter: number;
  /** Whether it lies at or on the room side of the main insulation's outer face, and at or outside its inner face. */
  roomSide: boolean;
  farSide: boolean;
}

/** Where the main insulation lies along a section [m²·K/W]. */
export interface InsulationPlace {
  layer: number;
  innerFace: number;
  outerFace: number;
}

/**
 * The tight layers of a section: sd at least 0.5 m and a tenth of the total; adjacent ones count as one.
 *
 * The total leaves out the tightest layer beyond the main insulation: otherwise polythene under a steel sheet would be
 * three hundredths of the total and not count as a vapour layer.
 *
 * @param section - the section between framing
 * @param heat - heat figures
 * @returns candidates, tightest first, and the place of the main insulation (null without any resistance)
 * Source: this project's rule (METHOD.md, Vapour layer).
 */
export function tightLayers(
  section: SectionCalculation,
  heat: HeatCalculation,
): { candidates: TightLayer[]; insulation: InsulationPlace | null } {
  const main = mainInsulation(heat.counted);
  const pieces = placeSlices(section.slices, main?.index ?? null);
  const insulation = placeOf(pieces, main?.index ?? null);
  const sized = pieces.filter((piece) => piece.sd >= LEAST_CANDIDATE_SD);
  const isTightEnough = tightEnough(pieces, sized, insulation);
  const candidates = joinTouching(sized.filter(isTightEnough)).map((piece) => withSides(piece, insulation));
  return { candidates: candidates.sort((a, b) => b.sd - a.sd), insulation };
}

/**
 * Every layer, or group of adjacent ones, with at least the given sd, whatever its share of the total: tanking beside a
 * foil is still tight.
 *
 * @param section - the section between framing
 * @param heat - heat figures
 * @param leastSd - least sd [m]
 * @returns layers from the room outwards
 */
export function layersAsTightAs(section: SectionCalculation, heat: HeatCalculation, leastSd: number): TightLayer[] {
  const main = mainInsulation(heat.counted)?.index ?? null;
  const pieces = placeSlices(section.slices, main);
  const insulation = placeOf(pieces, main);
  return joinTouching(pieces.filter(({ sd }) => sd >= leastSd)).map((piece) => withSides(piece, insulation));
}

interface Piece {
  layers: number[];
  parts: { layer: number; part: SlicePart }[];
  name: string;
  sd: number;
  resistanceBefore: number;
  resistanceAfter: number;
  first: number;
  last: number;
  isMain: boolean;
}

/** Slices with their places; adjacent sheets and coatings (without thermal resistance) count as one. */
function placeSlices(slices: readonly Slice[], main: number | null): Piece[] {
  const pieces: Piece[] = [];
  let resistance = 0;
  slices.forEach((slice, index) => {
    const before = resistance;
    resistance += slice.resistance;
    const last = pieces[pieces.length - 1];
    const piece: Piece = {
      layers: [slice.layer],
      parts: [{ layer: slice.layer, part: slice.part }],
      name: slice.name,
      sd: slice.sd,
      resistanceBefore: before,
      resistanceAfter: resistance,
      first: index,
      last: index,
      isMain: slice.layer === main && slice.resistance > 0,
    };
    if (
      last !== undefined &&
      slice.resistance === 0 &&
      last.resistanceBefore === last.resistanceAfter &&
      !last.isMain
    ) {
      join(last, piece);
    } else {
      pieces.push({ ...piece, sd: slice.isAir ? 0 : slice.sd });
    }
  });
  return pieces;
}

function placeOf(pieces: readonly Piece[], main: number | null): InsulationPlace | null {
  const piece = pieces.find(({ isMain }) => isMain);
  if (piece === undefined || main === null) return null;
  return { layer: main, innerFace: piece.resistanceBefore, outerFace: piece.resistanceAfter };
}

function tightEnough(
  pieces: readonly Piece[],
  sized: readonly Piece[],
  insulation: InsulationPlace | null,
): (piece: Piece) => boolean {
  const total = pieces.reduce((sum, piece) => sum + piece.sd, 0);
  const beyond = sized.filter(
    (piece) => insulation !== null && !piece.isMain && piece.resistanceBefore >= insulation.outerFace,
  );
  const skin = beyond.reduce((tightest, piece) => Math.max(tightest, piece.sd), 0);
  return (piece) => piece.sd >= LEAST_CANDIDATE_SHARE * (piece.sd === skin ? total : total - skin);
}

/** Adjacent candidates count as one, unless one of them is the main insulation. */
function joinTouching(candidates: readonly Piece[]): Piece[] {
  const joined: Piece[] = [];
  for (const piece of candidates) {
    const last = joined[joined.length - 1];
    if (last !== undefined && last.last + 1 === piece.first && !last.isMain && !piece.isMain) join(last, piece);
    else joined.push({ ...piece, layers: [...piece.layers], parts: [...piece.parts] });
  }
  return joined;
}

function join(piece: Piece, next: Pick<Piece, "layers" | "parts" | "name" | "sd" | "resistanceAfter" | "last">): void {
  for (const layer of next.layers) if (!piece.layers.includes(layer)) piece.layers.push(layer);
  piece.parts.push(...next.parts);
  if (!piece.name.includes(next.name)) piece.name = `${piece.name} with ${next.name}`;
  piece.sd += next.sd;
  piece.resistanceAfter = next.resistanceAfter;
  piece.last = next.last;
}

function withSides(piece: Piece, insulation: InsulationPlace | null): TightLayer {
  const { layers, parts, name, sd, resistanceBefore, resistanceAfter } = piece;
  const roomSide =
    insulation === null || (resistanceAfter <= insulation.outerFace + SAME_PLACE && !isBeyond(piece, insulation));
  const farSide =
    insulation === null || (resistanceBefore >= insulation.innerFace - SAME_PLACE && !isBefore(piece, insulation));
  return { layers, parts, name, sd, resistanceBefore, resistanceAfter, roomSide, farSide };
}

/** A sheet exactly at the outer face lies outside the insulation; one exactly at the inner face lies inside it. */
function isBeyond(piece: Piece, insulation: InsulationPlace): boolean {
  return !piece.isMain && piece.resistanceBefore >= insulation.outerFace - SAME_PLACE;
}
function isBefore(piece: Piece, insulation: InsulationPlace): boolean {
  return !piece.isMain && piece.resistanceAfter <= insulation.innerFace + SAME_PLACE;
}

/** Two places closer than this are the same [m²·K/W]. */
const SAME_PLACE = 1e-9;
