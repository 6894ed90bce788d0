import { VAPOUR_PERMEABILITY_OF_AIR } from "../constants.ts";

/**
 * Solves the vapour pressure along a section and the gain of each node.
 *
 * Pressure is fixed at the two surfaces and at every wet node (p = psat). Between neighbouring fixed nodes, the vapour
 * pressure is the lower convex hull of the points (sd, psat) and the two fixed values. The gain of an inner node is the
 * flow into it minus the flow out of it; only corners of the hull gain or lose.
 *
 * @param sd - of the nodes [m], rising by at least 10⁻⁶
 * @param saturation - psat at the nodes [Pa]
 * @param insideSurface - p at node 0 [Pa]
 * @param outsideSurface - p at the last node [Pa]
 * @param isWet - 1 at nodes that hold water
 * @param pressure - filled with p [Pa]
 * @param gain - filled with the gain [kg/(m²·s)], positive condenses, negative evaporates; 0 at the surfaces
 * @returns whether the profile bends; a straight one gains nothing anywhere
 * Source: ISO 13788:2012 clause 6.4 (from memory) as the lower convex hull; g = δ0·Δp/Δsd.
 */
export function solveVapourProfile(
  sd: Float64Array,
  saturation: Float64Array,
  insideSurface: number,
  outsideSurface: number,
  isWet: Uint8Array,
  pressure: Float64Array,
  gain: Float64Array,
): boolean {
  gain.fill(0);
  if (isStraight(sd, saturation, insideSurface, outsideSurface, isWet, pressure)) return false;
  bendAtSaturation(sd, saturation, insideSurface, outsideSurface, isWet, pressure, gain);
  return true;
}

/**
 * The dry profile: a straight line in sd. It holds where no inner node is wet or lies above saturation on it.
 *
 * @returns whether it holds; `pressure` is then filled with it
 */
function isStraight(
  sd: Float64Array,
  saturation: Float64Array,
  insideSurface: number,
  outsideSurface: number,
  isWet: Uint8Array,
  pressure: Float64Array,
): boolean {
  const last = sd.length - 1;
  const slope = (outsideSurface - insideSurface) / (sd[last]! - sd[0]!);
  pressure[last] = outsideSurface;
  pressure[0] = insideSurface;
  // From outside inwards: most water lies there, and the first wet node ends the search.
  for (let node = last - 1; node > 0; node -= 1) {
    const onLine = insideSurface + slope * (sd[node]! - sd[0]!);
    if (isWet[node] === 1 || !(onLine <= saturation[node]!)) return false;
    pressure[node] = onLine;
  }
  return true;
}

/** The profile as the lower convex hull, and the gain at its corners. */
function bendAtSaturation(
  sd: Float64Array,
  saturation: Float64Array,
  insideSurface: number,
  outsideSurface: number,
  isWet: Uint8Array,
  pressure: Float64Array,
  gain: Float64Array,
): void {
  const last = sd.length - 1;
  const corners = cornerStack(last + 1);
  pressure[0] = insideSurface;
  corners[0] = 0;
  let top = 0;
  let segmentStart = 0;
  for (let node = 1; node <= last; node += 1) {
    pressure[node] = node === last ? outsideSurface : saturation[node]!;
    while (top > segmentStart && !turnsUpward(sd, pressure, corners[top - 1]!, corners[top]!, node)) top -= 1;
    top += 1;
    corners[top] = node;
    if (isWet[node] === 1 && node !== last) segmentStart = top;
  }
  let slopeBefore = 0;
  for (let corner = 0; corner < top; corner += 1) {
    const from = corners[corner]!;
    const to = corners[corner + 1]!;
    const slopeAfter = (pressure[to]! - pressure[from]!) / (sd[to]! - sd[from]!);
    for (let node = from + 1; node < to; node += 1)
      pressure[node] = pressure[from]! + slopeAfter * (sd[node]! - sd[from]!);
    if (corner > 0) gain[from] = VAPOUR_PERMEABILITY_OF_AIR * (slopeAfter - slopeBefore);
    slopeBefore = slopeAfter;
  }
}

/** Whether the line from `first` to `next` bends upwards at `middle`: then `middle` is a corner of the hull. */
function turnsUpward(sd: Float64Array, pressure: Float64Array, first: number, middle: number, next: number): boolean {
  const before = (pressure[middle]! - pressure[first]!) * (sd[next]! - sd[middle]!);
  const after = (pressure[next]! - pressure[middle]!) * (sd[middle]! - sd[first]!);
  return after > before;
}

/** One list of corner nodes, reused by every call; its contents do not outlive the call. */
let corners = new Int32Array(64);
function cornerStack(size: number): Int32Array {
  if (corners.length < size) corners = new Int32Array(2 * size);
  return corners;
}
