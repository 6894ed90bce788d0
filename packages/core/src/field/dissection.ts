/** A set of nodes that are eliminated together, and the nodes around it that are still there then. */
export interface Front {
  own: Int32Array;
  border: Int32Array;
  /** Numbers of the fronts whose remainders come into this one. */
  parts: readonly number[];
}

/** A rectangle of this many nodes is not cut further [–]: found by trial. */
const UNCUT_NODES = 24;

interface NodeRectangle {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

/**
 * The order in which the nodes of a lattice are eliminated: a line of nodes cuts the rectangle in two, both halves go
 * first, each cut in the same way.
 *
 * @param columns - nodes in a row
 * @param rows - rows of nodes
 * @param free - 1 for a node that is unknown; the others take no part
 * @returns fronts, parts before what they are part of
 * Source: nested dissection (A. George, 1973).
 */
export function dissect(columns: number, rows: number, free: Uint8Array): Front[] {
  const fronts: Front[] = [];
  const visit = (rectangle: NodeRectangle): number[] => {
    const { halves, own } = cut(rectangle);
    const parts = halves.flatMap(visit);
    const nodes = freeNodes(own);
    if (nodes.length === 0 && parts.length === 0) return [];
    const border = Int32Array.from(ringAround(rectangle));
    return [fronts.push({ own: Int32Array.from(nodes), border, parts }) - 1];
  };
  const isFree = (column: number, row: number): boolean =>
    column >= 0 && column < columns && row >= 0 && row < rows && free[row * columns + column] === 1;
  const freeNodes = ({ left, right, bottom, top }: NodeRectangle): number[] => {
    const nodes: number[] = [];
    for (let row = bottom; row <= top; row += 1)
      for (let column = left; column <= right; column += 1) if (isFree(column, row)) nodes.push(row * columns + column);
    return nodes;
  };
  const ringAround = ({ left, right, bottom, top }: NodeRectangle): number[] => [
    ...freeNodes({ left, right, bottom: bottom - 1, top: bottom - 1 }),
    ...freeNodes({ left: left - 1, right: left - 1, bottom, top }),
    ...freeNodes({ left: right + 1, right: right + 1, bottom, top }),
    ...freeNodes({ left, right, bottom: top + 1, top: top + 1 }),
  ];
  visit({ left: 0, right: columns - 1, bottom: 0, top: rows - 1 });
  return fronts;
}

/** The line of nodes across the longer side, and the rectangles on its two sides. */
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
