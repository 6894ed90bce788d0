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
const FINEST = 0.005;
const GROWTH = 1.2;

/**
 * A floor on the ground in two dimensions over a year that repeats itself: heat conduction by finite volumes, a day a step,
 * each step implicit in both directions at once. (Implicit in one direction and then the other is not the same: beside
 * the wall, with a day a step, it was 0.9 K too warm.) A general solution of Fourier's equation; nothing in it is of
 * ISO 13370.
 *
 * @param floor - the floor and its ground
 * @param air - twelve months of room and outdoor air [°C], read as straight lines between the middles of months
 * @returns the surface month by month in a year that has settled
 */
export function yearOfFloor(floor: FloorOnGround, air: Air): YearOfFloor {
  const { halfWidth, wall } = floor;
  const underWall = [...widths(wall / 2, false), ...widths(wall / 2, true)];
  const across = [...widths(halfWidth, true), ...underWall, ...widths(FAR, false)];
  const down = widths(FAR, false);
  const cells: Cells = { across, down, floor };
  const steady = stepper(cells, Number.POSITIVE_INFINITY);
  const byDay = stepper(cells, SECONDS_PER_DAY);
  const field = new Float64Array(across.length * down.length);
  steady(field, { inside: mean(air.inside), outside: mean(air.outside) });
  const surface = new Array<number>(MONTHS_PER_YEAR).fill(0);
  const edge = new Array<number>(MONTHS_PER_YEAR).fill(0);
  let flow = 0;
  for (let year = 0; year < 4; year += 1) {
    for (let month = 0, day = 0; month < MONTHS_PER_YEAR; month += 1) {
      for (let date = 0; date < DAYS_IN_MONTH[month]!; date += 1, day += 1) {
        const now = { inside: onDay(air.inside, day), outside: onDay(air.outside, day) };
        byDay(field, now);
        if (year < 3) continue;
        const flows = floorFlows(field, cells, now.inside);
        const whole = flows.reduce((sum, each, at) => sum + each * across[at]!, 0) / floor.halfWidth;
        surface[month]! += (now.inside - whole * floor.surfaceInside) / DAYS_IN_MONTH[month]!;
        edge[month]! += (now.inside - flows.at(-1)! * floor.surfaceInside) / DAYS_IN_MONTH[month]!;
        flow += whole / 365;
      }
    }
  }
  return { surface, edge, meanFlow: flow };
}

/** The cells: widths across and down [m]; a column's cells lie next to each other in a field. */
interface Cells {
  across: number[];
  down: number[];
  floor: FloorOnGround;
}

/** Air on both sides at one time [°C]. */
interface TwoAirs {
  inside: number;
  outside: number;
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
function floorFlows(field: Float64Array, { across, down, floor }: Cells, inside: number): number[] {
  return topConductances({ across, down, floor })
    .map(({ toRoom }, column) => toRoom * (inside - field[column * down.length]!))
    .slice(0, columnsWithin(across, floor.halfWidth));
}

/** How many columns lie under the first so many metres. */
function columnsWithin(across: readonly number[], extent: number): number {
  let end = 0;
  return across.filter((width) => {
    end += width;
    return end < extent + 1e-9;
  }).length;
}

/** From the middle of each column's first cell to the room, to outdoors, or under the wall to neither [W/(m²·K)]. */
function topConductances({ across, down, floor }: Cells): { toRoom: number; outdoors: number }[] {
  const half = down[0]! / 2 / floor.conductivity;
  const inside = columnsWithin(across, floor.halfWidth);
  const covered = columnsWithin(across, floor.halfWidth + floor.wall);
  return across.map((_, column) => ({
    toRoom: column < inside ? 1 / (floor.surfaceInside + floor.floor + half) : 0,
    outdoors: column >= covered ? 1 / (floor.surfaceOutside + half) : 0,
  }));
}

/**
 * What takes a field one step further: (storage + conduction)·θ = storage·θ before + what the two airs give, a symmetric
 * band matrix that is factored once (Cholesky). Without end, the step comes to the steady state.
 */
function stepper(cells: Cells, seconds: number): (field: Float64Array, air: TwoAirs) => void {
  const { across, down, floor } = cells;
  const rows = down.length;
  const count = across.length * rows;
  const band = rows + 1;
  // Row by row the diagonal and the `rows` places before it: lower[at * band + rows] is the diagonal.
  const lower = new Float64Array(count * band);
  const storage = new Float64Array(count);
  const tops = topConductances(cells);
  const join = (at: number, before: number, conductance: number): void => {
    lower[at * band + rows]! += conductance;
    lower[before * band + rows]! += conductance;
    lower[at * band + rows - (at - before)]! -= conductance;
  };
  for (let at = 0; at < count; at += 1) {
    const column = Math.floor(at / rows);
    const row = at % rows;
    const [width, height] = [across[column]!, down[row]!];
    storage[at] = (floor.heatCapacity * width * height) / seconds;
    lower[at * band + rows]! += storage[at]!;
    if (row === 0) lower[at * band + rows]! += (tops[column]!.toRoom + tops[column]!.outdoors) * width;
    if (row > 0) join(at, at - 1, (2 * floor.conductivity * width) / (height + down[row - 1]!));
    if (column > 0) join(at, at - rows, (2 * floor.conductivity * height) / (width + across[column - 1]!));
  }
  factorise(lower, count, rows);
  return (field, { inside, outside }) => {
    for (let at = 0; at < count; at += 1) field[at]! *= storage[at]!;
    for (const [column, { toRoom, outdoors }] of tops.entries())
      field[column * rows]! += (toRoom * inside + outdoors * outside) * across[column]!;
    substitute(lower, field, rows);
  };
}

/** Cholesky's L of a symmetric band matrix, in its place. */
function factorise(lower: Float64Array, count: number, reach: number): void {
  const band = reach + 1;
  for (let at = 0; at < count; at += 1) {
    for (let other = Math.max(0, at - reach); other <= at; other += 1) {
      let sum = lower[at * band + reach - (at - other)]!;
      for (let inner = Math.max(0, at - reach); inner < other; inner += 1)
        sum -= lower[at * band + reach - (at - inner)]! * lower[other * band + reach - (other - inner)]!;
      lower[at * band + reach - (at - other)] = other === at ? Math.sqrt(sum) : sum / lower[other * band + reach]!;
    }
  }
}

/** L·Lᵀ·θ = what the vector holds, θ in its place. */
function substitute(lower: Float64Array, vector: Float64Array, reach: number): void {
  const band = reach + 1;
  for (let at = 0; at < vector.length; at += 1) {
    for (let other = Math.max(0, at - reach); other < at; other += 1)
      vector[at]! -= lower[at * band + reach - (at - other)]! * vector[other]!;
    vector[at]! /= lower[at * band + reach]!;
  }
  for (let at = vector.length - 1; at >= 0; at -= 1) {
    vector[at]! /= lower[at * band + reach]!;
    for (let other = Math.max(0, at - reach); other < at; other += 1)
      vector[other]! -= lower[at * band + reach - (at - other)]! * vector[at]!;
  }
}
