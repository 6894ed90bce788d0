import type { BuildUpResult, SheetPlaces } from "@warmside/core";
import { keptApart } from "../../label-spacing.ts";

/** A layer as it is drawn: where it begins and ends along the way from the room outwards [px]. */
export interface Band {
  from: number;
  to: number;
}

/** A place for a button, by its upper left corner, with the way its leader takes to the drawing [px]. */
export interface Spot {
  x: number;
  y: number;
  leader: string | null;
}

/**
 * Where everything of the section stands [px]. "Along" is the way from the room outwards, "across" the other one: walls
 * stand, with the room on the left; roofs and floors lie, with the room below or above.
 */
export interface Layout {
  lies: boolean;
  width: number;
  height: number;
  /** +1 where "along" grows to the right or downwards, −1 where it grows upwards. */
  direction: 1 | -1;
  pixelsPerMetre: number;
  /** Along: outer end of the room's air, room face, outer face, outer end of the air beyond. */
  airRoom: number;
  face: number;
  outerFace: number;
  airFar: number;
  /** Across: of the lowest value, and of the highest. */
  low: number;
  high: number;
  bands: Band[];
  flags: Spot[];
  tabs: Spot[];
}

/** How big a flag and a tab are: no target is smaller than 44 px. */
export const FLAG = { standing: { width: 46, height: 60 }, lying: { width: 74, height: 46 } } as const;
export const TAB = { width: 44, height: 46 } as const;
const APART = 2;
/** Between the flags and the drawing, where the names of the two sides stand. */
const HEAD = 46;
const LEADER = 22;
/** Air to both sides of a wall, and above and below a roof. */
const AIR_OF_NARROW = 58;
const AIR_OF_WIDE = 104;
const AIR_OF_LYING = 62;
export const NARROW = 600;
const TALLEST_LYING = 270;
/** A thin build-up is not drawn larger than this [px/m]. */
const LARGEST_SCALE = 3600;

/**
 * Fits a build-up into a width, to scale.
 *
 * @param result - the build-up
 * @param places - the gaps that carry a flag; null without
 * @param width - of the whole [px]
 * @param pixelsPerMetre - a scale to keep while an edge is pulled; null to fit
 * @returns where everything stands
 */
export function layoutOf(
  result: Pick<BuildUpResult, "element" | "layers">,
  places: SheetPlaces | null,
  width: number,
  pixelsPerMetre: number | null,
): Layout {
  const lies = result.element !== "wall" && result.element !== "partition";
  return lies ? lying(result, places, width, pixelsPerMetre) : standing(result, places, width, pixelsPerMetre);
}

/** A point of the drawing: along it, and across it by the share of the range of values. */
export function pointAt(layout: Layout, along: number, share: number): [number, number] {
  const across = layout.low + share * (layout.high - layout.low);
  return layout.lies ? [across, along] : [along, across];
}

/** Where a depth lies along the drawing. */
export function alongAt(layout: Layout, depth: number): number {
  return layout.face + layout.direction * depth * layout.pixelsPerMetre;
}

function standing(
  result: Pick<BuildUpResult, "layers">,
  places: SheetPlaces | null,
  width: number,
  keptScale: number | null,
): Layout {
  const air = width < NARROW ? AIR_OF_NARROW : AIR_OF_WIDE;
  const thickness = thicknessOf(result);
  const scale = keptScale ?? Math.min((width - 2 * air) / thickness, LARGEST_SCALE);
  const face = (width - Math.min(thickness * scale, width - 2 * air)) / 2;
  const { width: flagWidth, height: flagHeight } = FLAG.standing;
  const count = places?.places.length ?? 0;
  const rows = rowsFor(count - 1, flagWidth, width - flagWidth - APART);
  const top = rows * (flagHeight + APART) + (count === 0 ? 0 : 4) + HEAD;
  const bottom = top + (width < NARROW ? 280 : 330);
  const tabRows = rowsFor(result.layers.length, TAB.width, width);
  const bands = bandsFrom(result, face, scale, 1);
  const gaps = gapsOf(places, bands, face);
  const pitch = (flagWidth + APART) / rows;
  const centres = keptApart(gaps.slice(1) as number[], pitch, flagWidth * 1.5 + APART, width - flagWidth / 2);
  const flags = gaps.map((gap, index): Spot => {
    if (gap === null) return { x: 0, y: 0, leader: null };
    const centre = centres[index - 1]!;
    const y = ((index - 1) % rows) * (flagHeight + APART);
    const leader = `M${px(centre)} ${px(y + flagHeight)}V${px(rows * (flagHeight + APART))}L${px(gap)} ${px(top - 8)}V${px(top)}`;
    return { x: centre - flagWidth / 2, y, leader };
  });
  const middles = bands.map(({ from, to }) => (from + to) / 2);
  const tabCentres = keptApart(middles, (TAB.width + APART) / tabRows, TAB.width / 2, width - TAB.width / 2);
  const tabs = middles.map((middle, index): Spot => {
    const y = bottom + LEADER + (index % tabRows) * (TAB.height + APART);
    return {
      x: tabCentres[index]! - TAB.width / 2,
      y,
      leader: `M${px(middle)} ${px(bottom)}V${px(bottom + 5)}L${px(tabCentres[index]!)} ${px(bottom + LEADER - 4)}V${px(y)}`,
    };
  });
  return {
    lies: false,
    width,
    height: bottom + LEADER + tabRows * (TAB.height + APART),
    direction: 1,
    pixelsPerMetre: scale,
    airRoom: 0,
    face,
    outerFace: bands.at(-1)!.to,
    airFar: width,
    low: bottom - 26,
    high: top + 8,
    bands,
    flags,
    tabs,
  };
}

function lying(
  result: Pick<BuildUpResult, "element" | "layers">,
  places: SheetPlaces | null,
  width: number,
  keptScale: number | null,
): Layout {
  const { width: flagWidth, height: flagHeight } = FLAG.lying;
  const direction = result.element === "floor" ? 1 : -1;
  const thickness = thicknessOf(result);
  const scale = keptScale ?? Math.min(TALLEST_LYING / thickness, LARGEST_SCALE);
  const body = Math.min(thickness * scale, TALLEST_LYING);
  const count = places?.places.length ?? 0;
  const height = Math.max(
    body + 2 * AIR_OF_LYING,
    count * (flagHeight + APART),
    result.layers.length * (TAB.height + APART),
  );
  const face = height / 2 - (direction * body) / 2;
  const bands = bandsFrom(result, face, scale, direction);
  const left = count === 0 ? 0 : flagWidth + LEADER;
  const right = width - TAB.width - LEADER;
  const gaps = gapsOf(places, bands, face);
  // The sheet left out stands first on the side of the room, the others from there outwards.
  const centres = spreadAlong(
    [direction === 1 ? 0 : height, ...(gaps.slice(1) as number[])],
    flagHeight,
    height,
    direction,
  );
  const flags = gaps.map((gap, index): Spot => {
    const centre = centres[index]!;
    const leader =
      gap === null ? null : `M${flagWidth} ${px(centre)}H${flagWidth + 4}L${px(left - 6)} ${px(gap)}H${px(left)}`;
    return { x: 0, y: centre - flagHeight / 2, leader };
  });
  const middles = bands.map(({ from, to }) => (from + to) / 2);
  const tabCentres = spreadAlong(middles, TAB.height, height, direction);
  const tabs = middles.map((middle, index): Spot => {
    const centre = tabCentres[index]!;
    const leader = `M${px(right)} ${px(middle)}H${px(right + 5)}L${px(right + LEADER - 4)} ${px(centre)}H${px(right + LEADER)}`;
    return { x: right + LEADER, y: centre - TAB.height / 2, leader };
  });
  return {
    lies: true,
    width,
    height,
    direction,
    pixelsPerMetre: scale,
    airRoom: face - direction * AIR_OF_LYING,
    face,
    outerFace: bands.at(-1)!.to,
    airFar: bands.at(-1)!.to + direction * AIR_OF_LYING,
    low: left + 8,
    high: right - 8,
    bands,
    flags: places === null ? [] : flags,
    tabs,
  };
}

function thicknessOf({ layers }: Pick<BuildUpResult, "layers">): number {
  return Math.max(
    0.001,
    layers.reduce((sum, layer) => sum + layer.thickness, 0),
  );
}

function bandsFrom({ layers }: Pick<BuildUpResult, "layers">, face: number, scale: number, direction: 1 | -1): Band[] {
  let along = face;
  return layers.map(({ thickness }) => {
    const from = along;
    along += direction * thickness * scale;
    return { from, to: along };
  });
}

/** Where each flag's gap lies; null for the sheet left out. */
function gapsOf(places: SheetPlaces | null, bands: readonly Band[], face: number): (number | null)[] {
  if (places === null) return [];
  const others = bands.filter((_, index) => index !== places.own);
  return places.places.map(({ at }) => (at === null ? null : at === 0 ? face : others[at - 1]!.to));
}

/** In how many rows buttons stand that would not fit beside one another. */
function rowsFor(count: number, size: number, room: number): number {
  return Math.max(1, Math.ceil((count * (size + APART) - APART) / room));
}

function spreadAlong(wanted: readonly number[], size: number, height: number, direction: 1 | -1): number[] {
  const rising = direction === 1 ? [...wanted] : [...wanted].reverse();
  const placed = keptApart(rising, size + APART, size / 2, height - size / 2);
  return direction === 1 ? placed : placed.reverse();
}

function px(value: number): string {
  return value.toFixed(1);
}
