/** A place in the plane [m]. */
export type Point = readonly [number, number];

/**
 * A line without the points that lie within a distance of the simplified line, so that its shape is kept.
 *
 * @param points - places in order [m]
 * @param distance - greatest distance of a point left out [m]
 * @returns the remaining points, including the ends
 * Source: Douglas and Peucker (1973).
 * @example thinned([[0, 0], [1, 0.001], [2, 0]], 0.01) // [[0, 0], [2, 0]]
 */
export function thinned(points: readonly Point[], distance: number): Point[] {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined || points.length < 3) return [...points];
  let farthest = 0;
  let most = 0;
  for (const [index, point] of points.entries()) {
    const away = distanceTo(first, last, point);
    if (away > most) [farthest, most] = [index, away];
  }
  if (!(most > distance)) return [first, last];
  return [
    ...thinned(points.slice(0, farthest + 1), distance).slice(0, -1),
    ...thinned(points.slice(farthest), distance),
  ];
}

/** Distance from a point to the line segment between two others [m]. */
function distanceTo(from: Point, to: Point, point: Point): number {
  const [alongX, alongY] = [to[0] - from[0], to[1] - from[1]];
  const [x, y] = [point[0] - from[0], point[1] - from[1]];
  const length = Math.hypot(alongX, alongY);
  if (length === 0) return Math.hypot(x, y);
  const share = Math.min(1, Math.max(0, (x * alongX + y * alongY) / length ** 2));
  return Math.hypot(x - share * alongX, y - share * alongY);
}
