/**
 * A line without the points that lie on the straight way between their neighbours.
 *
 * @param points - in order along the line
 * @param tolerance - greatest distance in `value` that may be lost, same unit
 * @returns first, last and every point at which the line bends
 * @example thinLine([{ at: 0, value: 0 }, { at: 1, value: 1 }, { at: 2, value: 2 }], 0.01).length // 2
 */
export function thinLine<Point extends { at: number; value: number }>(
  points: readonly Point[],
  tolerance: number,
): Point[] {
  const first = points[0];
  const last = points.at(-1);
  if (points.length < 3 || !first || !last) return [...points];
  const distances = points.map(({ at, value }) => {
    const share = last.at === first.at ? Number.NaN : (at - first.at) / (last.at - first.at);
    return Number.isNaN(share)
      ? Number.POSITIVE_INFINITY
      : Math.abs(value - first.value - share * (last.value - first.value));
  });
  const farthest = distances
    .slice(1, -1)
    .reduce((most, distance, index) => (distance > distances[most]! ? index + 1 : most), 1);
  if (distances[farthest]! <= tolerance) return [first, last];
  return [
    ...thinLine(points.slice(0, farthest + 1), tolerance).slice(0, -1),
    ...thinLine(points.slice(farthest), tolerance),
  ];
}
