/** A set of nodes eliminated together, and the surrounding nodes that remain at that time. */
export interface Front {
  own: Int32Array;
  border: Int32Array;
  /** Numbers of the fronts whose remainders are added to this one. */
  parts: readonly number[];
}

/** Largest number of nodes of a rectangle that is not divided further [–]: found by trial. */
const UNCUT_NODES = 24;

interface NodeRectangle {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

/**
 * The order in which the nodes of a lattice are eliminated: a line of nodes divides the rectangle in two, and both
 * halves, divided in the same way, are eliminated before that line.
 *
 * @param columns - nodes in a row
 * @param rows - rows of nodes
 * @param free - 1 for an unknown node; the others are ignored
 * @returns fronts, each after its parts
 * Source: nested dissection (A. George, 1973).
 */
export function dissect(columns: number, rows: number, free: Uint8Array): Front[] {
  const fronts: Front[] = [];
  const collect = (nodes: number[], { left, right, bottom, top }: NodeRectangle): void => {
    for (let row = Math.max(0, bottom); row <= Math.min(top, rows - 1); row += 1)
      for (let column = Math.max(0, left); column <= Math.min(right, columns - 1); column += 1)
        if (free[row * columns + column] === 1) nodes.push(row * columns + column);
  };
  const visit = (rectangle: NodeRectangle): number[] => {
    const { halves, own: line } = cut(rectangle);
    const parts = halves.flatMap(visit);
    const own: number[] = [];
    collect(own, line);
    if (own.length === 0 && parts.length === 0) return [];
    const { left, right, bottom, top } = rectangle;
    const border: number[] = [];
    collect(border, { left, right, bottom: bottom - 1, top: bottom - 1 });
    collect(border, { left: left - 1, right: left - 1, bottom, top });
    collect(border, { left: right + 1, right: right + 1, bottom, top });
    collect(border, { left, right, bottom: top + 1, top: top + 1 });
    return [fronts.push({ own: Int32Array.from(own), border: Int32Array.from(border), parts }) - 1];
  };
  visit({ left: 0, right: columns - 1, bottom: 0, top: rows - 1 });
  return fronts;
}

/** The line of nodes that divides the longer side, and the rectangles on its two sides. */
function cut(whole: NodeRectangle): { halves: NodeRectangle[]; own: NodeRectangle } {
  const { left, right, bottom, top } = whole;
  const width = right - left + 1;
  const height = top - bottom + 1;
  if (width * height <= UNCUT_NODES) return { halves: [], own: whole };
  if (width >= height) {
    const line = (left + right) >> 1;
    const halves = [
      { ...whole, right: line - 1 },
      { ...whole, left: line + 1 },
    ];
    return { halves, own: { ...whole, left: line, right: line } };
  }
  const line = (bottom + top) >> 1;
  const halves = [
    { ...whole, top: line - 1 },
    { ...whole, bottom: line + 1 },
  ];
  return { halves, own: { ...whole, bottom: line, top: line } };
}
