import { requireObject } from "../require.ts";
import type { DrawnStuff, PictureBox, PlanePicture } from "../result/types.ts";
import { requireField } from "./given.ts";
import { isolines } from "./isolines.ts";
import type { HeatField } from "./plane-heat.ts";
import type { Box, Scene, Stuff } from "./scene.ts";
import { type Point, thinned } from "./thinned.ts";

export type { DrawnStuff, PictureBox, PlanePicture };

/**
 * Orientation of a scene in a picture, where x runs to the right and y down: a cell with its depth to the right, a
 * junction with its y upwards, or unchanged.
 */
export type PictureView = "depth to the right" | "y upwards" | "y downwards";

/** A field, and what to show of it. */
export interface PictureQuestion {
  field: HeatField;
  /** The part of the scene to show [m]. */
  frame: Box;
  view: PictureView;
  /** Temperature of every node [°C]. */
  temperature: Float64Array;
  /** Water at every node [kg/m]; null without. */
  held: Float64Array | null;
  /** Positions of the labels of the airs in the scene [m]. */
  inside: Point;
  outside: Point;
  coldest: Point | null;
  /** The strip with most water, by its middle and width along x [m]. */
  strip: { middle: number; width: number } | null;
}

/** Rounding of points, and tolerance for thinning lines [m]: finer than any print shows. */
const FINEST = 1e-4;

/** Most dots in a picture [–]. */
const MOST_DOTS = 60;

/** Least water shown, as a share of that of the wettest node [–]. */
const LEAST_SHARE = 0.02;

/** Steps between isotherms [K], and the largest number of isotherms. */
const STEPS = [0.5, 1, 2, 5, 10] as const;
const MOST_ISOTHERMS = 12;

/**
 * A picture as data: materials, isotherms and points with water.
 *
 * @param question - the field, what of it is shown, temperature [°C] and water [kg/m] of its nodes
 * @returns the picture, small enough to be part of a result
 * Source: none; the figures are calculated elsewhere.
 */
export function planePicture(question: PictureQuestion): PlanePicture {
  requireObject(question, "question", ["field", "frame", "view", "temperature", "held", "inside", "outside"]);
  const { field, frame, view, temperature, held, coldest, strip } = question;
  requireField(field);
  const { mesh, net, scene } = field;
  const turn = VIEWS[view];
  const shown = temperature.map((value, node) => (net.active[node] === 1 ? value : Number.NaN));
  const pointInView = (point: Point): [number, number] => {
    const [x, y] = turn(point);
    return [fine(x), fine(y)];
  };
  const at = (point: Point): { x: number; y: number } => {
    const [x, y] = pointInView(point);
    return { x, y };
  };
  return {
    frame: turned(frame, turn),
    stuffs: scene.stuffs.map(drawnStuff),
    rectangles: drawnRectangles(scene, frame).map(({ stuff, box }) => ({ ...turned(box, turn), stuff })),
    isotherms: isolines(mesh, shown, levelsOf(shown))
      .flatMap(({ value, points }) => stretchesWithin(points, frame).map((stretch) => ({ value, stretch })))
      .map(({ value, stretch }) => ({ value, points: thinned(stretch, FINEST).map(pointInView) })),
    water: held === null ? [] : waterOf(field, held, frame).map(({ point, share }) => ({ ...at(point), share })),
    airs: [
      { side: "inside", ...at(question.inside) },
      { side: "outside", ...at(question.outside) },
    ],
    coldest: coldest === null ? null : at(coldest),
    strip:
      strip === null ? null : { y0: fine(strip.middle - strip.width / 2), y1: fine(strip.middle + strip.width / 2) },
  };
}

const VIEWS: Readonly<Record<PictureView, (point: Point) => Point>> = {
  "depth to the right": ([x, y]) => [y, x],
  "y upwards": ([x, y]) => [x, -y],
  "y downwards": (point) => point,
};

function turned({ x0, x1, y0, y1 }: Box, turn: (point: Point) => Point): PictureBox {
  const [one, other] = [turn([x0, y0]), turn([x1, y1])];
  const sorted = (axis: 0 | 1): [number, number] => [
    Math.min(one[axis], other[axis]),
    Math.max(one[axis], other[axis]),
  ];
  const [left, right] = sorted(0);
  const [top, bottom] = sorted(1);
  return { x0: fine(left), x1: fine(right), y0: fine(top), y1: fine(bottom) };
}

function drawnStuff(stuff: Stuff): DrawnStuff {
  const { name, material, isAir, conductivity } = stuff;
  // Only sheets have different conductivities along and across.
  const isSheet = conductivity.x !== conductivity.y;
  return {
    name,
    type: isAir ? "air" : isSheet ? "sheet" : "material",
    kind: material?.kind ?? null,
    group: material?.group ?? null,
    conductivity: isSheet ? null : conductivity.x,
    density: material?.density ?? null,
  };
}

function drawnRectangles({ rectangles }: Scene, frame: Box): { stuff: number; box: Box }[] {
  return rectangles
    .filter(({ filling }) => filling === "stuff")
    .map(({ index, x0, x1, y0, y1 }) => ({
      stuff: index,
      box: {
        x0: Math.max(x0, frame.x0),
        x1: Math.min(x1, frame.x1),
        y0: Math.max(y0, frame.y0),
        y1: Math.min(y1, frame.y1),
      },
    }))
    .filter(({ box }) => box.x1 > box.x0 && box.y1 > box.y0);
}

/** Values of the isotherms between the lowest and the highest temperature [°C]. */
function levelsOf(shown: Float64Array): number[] {
  const [least, greatest] = shown.reduce(
    ([low, high], value) => (Number.isNaN(value) ? [low, high] : [Math.min(low, value), Math.max(high, value)]),
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );
  const step = STEPS.find((each) => (greatest - least) / each <= MOST_ISOTHERMS) ?? STEPS.at(-1)!;
  const first = Math.ceil(least / step + FINEST) * step;
  const count = Math.max(0, Math.floor((greatest - first) / step - FINEST) + 1);
  return Array.from({ length: count }, (_, index) => first + index * step);
}

/** The parts of a line that lie within the frame, cut at its edges. */
function stretchesWithin(points: readonly Point[], frame: Box): Point[][] {
  const stretches: Point[][] = [[]];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    const isInside = isWithin(point, frame);
    if (before !== undefined && isWithin(before, frame) !== isInside)
      stretches.at(-1)!.push(isInside ? atEdge(point, before, frame) : atEdge(before, point, frame));
    if (isInside) stretches.at(-1)!.push(point);
    else if (stretches.at(-1)!.length > 0) stretches.push([]);
  }
  return stretches.filter(({ length }) => length > 1);
}

/** The point where a line leaves the frame, from a point inside it to one outside. */
function atEdge([x, y]: Point, [beyondX, beyondY]: Point, { x0, x1, y0, y1 }: Box): Point {
  const reach = (from: number, to: number, least: number, most: number): number => {
    if (to > most) return (most - from) / (to - from);
    return to < least ? (least - from) / (to - from) : 1;
  };
  const share = Math.max(0, Math.min(reach(x, beyondX, x0, x1), reach(y, beyondY, y0, y1)));
  return [x + share * (beyondX - x), y + share * (beyondY - y)];
}

/** Points with water, the wettest first. */
function waterOf({ mesh, net }: HeatField, held: Float64Array, frame: Box): { point: Point; share: number }[] {
  const most = held.reduce((greatest, amount) => Math.max(greatest, amount), 0);
  if (!(most > 0)) return [];
  return Array.from(held, (amount, node) => ({
    point: [mesh.xs[node % net.columns]!, mesh.ys[Math.floor(node / net.columns)]!] as const,
    share: Math.round((100 * amount) / most) / 100,
  }))
    .filter(({ point, share }) => share >= LEAST_SHARE && isWithin(point, frame))
    .sort((one, other) => other.share - one.share)
    .slice(0, MOST_DOTS);
}

function isWithin([x, y]: Point, { x0, x1, y0, y1 }: Box): boolean {
  return x >= x0 - FINEST && x <= x1 + FINEST && y >= y0 - FINEST && y <= y1 + FINEST;
}

function fine(coordinate: number): number {
  return Math.round(coordinate / FINEST) / Math.round(1 / FINEST) + 0;
}
