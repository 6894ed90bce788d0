/** Spacing of mesh lines between two edges of a scene. */
export interface MeshRule {
  /** First step beside an edge [m]. */
  first: number;
  /** Ratio of each step to the one before it [–]. */
  growth: number;
  /** Greatest step [m]. */
  greatest: number;
  /** Least number of steps between two edges. */
  leastSteps: number;
}

/** Edges closer than this are the same [m]. */
const SAME_PLACE = 1e-9;

/**
 * Mesh lines along one direction: one at every edge, and graded steps that grow from both ends of each stretch.
 *
 * @param edges - places where a part begins or ends [m], in any order
 * @param rule - the spacing
 * @returns the lines, in ascending order [m]
 * @example gradedLines([0, 1], { first: 0.25, growth: 1, greatest: 0.25, leastSteps: 2 }) // [0, 0.25, 0.5, 0.75, 1]
 */
export function gradedLines(edges: readonly number[], rule: MeshRule): Float64Array {
  const distinct = distinctEdges(edges);
  const lines = [distinct[0]!];
  for (let stretch = 0; stretch + 1 < distinct.length; stretch += 1) {
    const from = distinct[stretch]!;
    const to = distinct[stretch + 1]!;
    let at = from;
    for (const step of stepsOver(to - from, rule).slice(0, -1)) {
      at += step;
      lines.push(at);
    }
    lines.push(to);
  }
  return Float64Array.from(lines);
}

function distinctEdges(edges: readonly number[]): number[] {
  const rising = [...edges].sort((one, other) => one - other);
  return rising.filter((edge, index) => index === 0 || edge - rising[index - 1]! > SAME_PLACE);
}

/** Steps that fill a stretch: graded from both ends, uniform in the middle. */
function stepsOver(length: number, { first, growth, greatest, leastSteps }: MeshRule): number[] {
  const graded: number[] = [];
  let step = Math.min(first, greatest);
  let covered = 0;
  while (covered + step <= length / 2 + SAME_PLACE) {
    graded.push(step);
    covered += step;
    step = Math.min(step * growth, greatest);
  }
  const rest = length - 2 * covered;
  const inMiddle = rest > SAME_PLACE ? Math.ceil(rest / step - SAME_PLACE) : 0;
  const middle = new Array<number>(inMiddle).fill(rest / inMiddle);
  let steps = [...graded, ...middle, ...graded.toReversed()];
  while (steps.length < leastSteps) steps = steps.flatMap((each) => [each / 2, each / 2]);
  return steps;
}

/**
 * Lines with the marked steps halved.
 *
 * @param lines - mesh lines [m]
 * @param marked - 1 for a step that is halved
 * @returns the lines [m], rising
 * @example halvedWhere(Float64Array.of(0, 1, 2), Uint8Array.of(0, 1)) // [0, 1, 1.5, 2]
 */
export function halvedWhere(lines: Float64Array, marked: Uint8Array): Float64Array {
  const halved: number[] = [];
  for (const [index, line] of lines.entries()) {
    halved.push(line);
    if (marked[index] === 1) halved.push((line + lines[index + 1]!) / 2);
  }
  return Float64Array.from(halved);
}
