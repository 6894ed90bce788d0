import { DAYS_IN_MONTH, MONTHS_PER_YEAR, SECONDS_PER_DAY } from "../../packages/core/src/constants.ts";

/** A long floor on the ground, half of it: a plane of symmetry in its middle, a wall at its edge, open ground beyond. */
export interface FloorOnGround {
  /** Half the width between the walls [m], and the thickness of the wall [m]. */
  halfWidth: number;
  wall: number;
  /** Rsi and Rf [m²·K/W]. */
  surfaceInside: number;
  floor: number;
  /** Rse [m²·K/W]. */
  surfaceOutside: number;
  /** λ [W/(m·K)] and ρ·c [J/(m³·K)] of the ground. */
  conductivity: number;
  heatCapacity: number;
}

/** Room and outdoor air, twelve months [°C]. */
interface Air {
  inside: readonly number[];
  outside: readonly number[];
}

/** What a year of the floor comes to: month means [°C] and the heat it loses in a year's mean [W/m²]. */
export interface YearOfFloor {
  /** Mean over the floor, and at its edge. */
  surface: number[];
  edge: number[];
  meanFlow: number;
}

/** Extent of the ground beside and below [m]: far enough that twice as much changes nothing shown. */
const FAR = 20;
const FINEST = 0.01;
const GROWTH = 1.2;

/**
 * A floor on the ground in two dimensions over a year that repeats itself: heat conduction by finite volumes, implicit
 * in each direction in turn, one day a step. A general solution of Fourier's equation; nothing in it is of ISO 13370.
 *
 * @param floor - the floor and its ground
 * @param air - twelve months of room and outdoor air [°C], read as straight lines between the middles of months
 * @returns the surface month by month in a year that has settled
 */
export function yearOfFloor(floor: FloorOnGround, air: Air): YearOfFloor {
  const across = [...widths(floor.halfWidth, true), floor.wall / 2, floor.wall / 2, ...widths(FAR, false)];
  const down = widths(FAR, false);
  const centre = across.map((width, at) => across.slice(0, at).reduce((sum, other) => sum + other, 0) + width / 2);
  const field = new Float64Array(across.length * down.length).fill(mean(air.outside));
  const air0 = (inside: number, outside: number) => ({ inside, outside });
  for (let year = 0; year < 400; year += 1)
    step(field, across, down, centre, floor, air0(mean(air.inside), mean(air.outside)), 365 * SECONDS_PER_DAY);
  const surface = new Array<number>(MONTHS_PER_YEAR).fill(0);
  const edge = new Array<number>(MONTHS_PER_YEAR).fill(0);
  let flow = 0;
  for (let year = 0; year < 4; year += 1) {
    for (let month = 0, day = 0; month < MONTHS_PER_YEAR; month += 1) {
      for (let date = 0; date < DAYS_IN_MONTH[month]!; date += 1, day += 1) {
        const now = air0(onDay(air.inside, day), onDay(air.outside, day));
        step(field, across, down, centre, floor, now, SECONDS_PER_DAY);
        if (year < 3) continue;
        const flows = floorFlows(field, down, centre, floor, now.inside);
        const whole = flows.reduce((sum, each, at) => sum + each * across[at]!, 0) / floor.halfWidth;
        surface[month]! += (now.inside - whole * floor.surfaceInside) / DAYS_IN_MONTH[month]!;
        edge[month]! += (now.inside - flows.at(-1)! * floor.surfaceInside) / DAYS_IN_MONTH[month]!;
        flow += whole / 365;
      }
    }
  }
  return { surface, edge, meanFlow: flow };
}

/** Cells that grow away from one end; the fine end is the far one where `reversed`. */
function widths(extent: number, reversed: boolean): number[] {
  const cells: number[] = [];
  let width = FINEST;
  let left = extent;
  while (left > width * 1.5) {
    cells.push(width);
    left -= width;
    width = Math.min(width * GROWTH, 1.5);
  }
  cells.push(left);
  return reversed ? cells.reverse() : cells;
}

function mean(months: readonly number[]): number {
  return months.reduce((sum, value, month) => sum + (value * DAYS_IN_MONTH[month]!) / 365, 0);
}

/** Straight lines between the middles of months. */
function onDay(months: readonly number[], day: number): number {
  const middles = DAYS_IN_MONTH.map(
    (days, month) => DAYS_IN_MONTH.slice(0, month).reduce((a, b) => a + b, 0) + days / 2,
  );
  const at = day + 0.5;
  const next = middles.findIndex((middle) => middle > at);
  const to = next === -1 ? 0 : next;
  const from = (to + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR;
  const span = (middles[to]! - middles[from]! + 365) % 365;
  const share = ((at - middles[from]! + 365) % 365) / span;
  return months[from]! + share * (months[to]! - months[from]!);
}

/** Heat into the ground through each cell of the floor [W/m²]. */
function floorFlows(
  field: Float64Array,
  down: number[],
  centre: number[],
  floor: FloorOnGround,
  inside: number,
): number[] {
  return centre.flatMap((x, at) =>
    x > floor.halfWidth
      ? []
      : [(inside - field[at]!) / (floor.surfaceInside + floor.floor + down[0]! / 2 / floor.conductivity)],
  );
}

/** One step, implicit across and then down (the two halves of an alternating-direction scheme, each fully implicit). */
function step(
  field: Float64Array,
  across: number[],
  down: number[],
  centre: number[],
  floor: FloorOnGround,
  air: { inside: number; outside: number },
  seconds: number,
): void {
  const { conductivity, heatCapacity } = floor;
  const columns = across.length;
  for (let row = 0; row < down.length; row += 1) {
    solveLine(field, row * columns, 1, across, conductivity, heatCapacity / seconds, null);
  }
  for (let column = 0; column < columns; column += 1) {
    const half = down[0]! / 2 / conductivity;
    const x = centre[column]!;
    const top =
      x < floor.halfWidth
        ? { conductance: 1 / (floor.surfaceInside + floor.floor + half), temperature: air.inside }
        : x < floor.halfWidth + floor.wall
          ? null
          : { conductance: 1 / (floor.surfaceOutside + half), temperature: air.outside };
    solveLine(field, column, columns, down, conductivity, heatCapacity / seconds, top);
  }
}

/** Solves one line of cells implicitly, with what lies before its first cell; nothing passes its last. */
function solveLine(
  field: Float64Array,
  start: number,
  stride: number,
  width: number[],
  conductivity: number,
  storage: number,
  first: { conductance: number; temperature: number } | null,
): void {
  const count = width.length;
  const factor = new Float64Array(count);
  const right = new Float64Array(count);
  const between = (one: number, other: number): number => (2 * conductivity) / (width[one]! + width[other]!);
  for (let cell = 0; cell < count; cell += 1) {
    const before = cell === 0 ? 0 : between(cell - 1, cell);
    const after = cell === count - 1 ? 0 : between(cell, cell + 1);
    const outer = cell === 0 && first !== null ? first.conductance : 0;
    const own = storage * width[cell]! + before + after + outer;
    const known = storage * width[cell]! * field[start + cell * stride]! + (outer > 0 ? outer * first!.temperature : 0);
    const pivot = own - before * (cell === 0 ? 0 : factor[cell - 1]!);
    factor[cell] = after / pivot;
    right[cell] = (known + before * (cell === 0 ? 0 : right[cell - 1]!)) / pivot;
  }
  for (let cell = count - 1; cell >= 0; cell -= 1) {
    const next = cell === count - 1 ? 0 : factor[cell]! * field[start + (cell + 1) * stride]!;
    field[start + cell * stride] = right[cell]! + next;
  }
}
