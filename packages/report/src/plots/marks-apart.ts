/** A mark's true place, and where it is drawn [px]. */
interface Place {
  x: number;
  y: number;
}

/**
 * Places for marks so that none hides another: a mark that would lie on an earlier one steps aside, to the nearest free
 * place on its own height.
 *
 * @param marks - true places [px], in the order in which they keep theirs
 * @param distance - least distance between two marks [px], above 0
 * @param width - of the plot [px]
 * @returns places in the same order, at most `width` from the left
 * @example marksApart([{ x: 50, y: 9 }, { x: 50, y: 9 }], 12, 200) // [{ x: 50, y: 9 }, { x: 62, y: 9 }]
 */
export function marksApart(marks: readonly Place[], distance: number, width: number): Place[] {
  const placed: Place[] = [];
  for (const { x, y } of marks) {
    const isFree = (at: number): boolean => placed.every((other) => Math.hypot(other.x - at, other.y - y) >= distance);
    const aside = marks.flatMap((_, step) => [x + step * distance, x - step * distance]);
    placed.push({ x: aside.find((at) => at >= 0 && at <= width && isFree(at)) ?? x, y });
  }
  return placed;
}
