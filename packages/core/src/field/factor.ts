import { dissect, type Front } from "./dissection.ts";
import { eliminate } from "./eliminate.ts";
import { diagonalOf, type Net } from "./net.ts";

/** A net's equations, factorised: solved for any load at little cost. */
export interface Factor {
  /**
   * Potentials of the free nodes, 0 elsewhere.
   *
   * @param load - what enters at every free node [W/m] or [kg/(m·s)]
   */
  solve(load: Float64Array): Float64Array;
}

/** A front with the columns of the triangular factor that belong to its own nodes: own nodes first, then the border. */
interface FactorisedFront extends Front {
  panel: Float64Array;
}

/**
 * Sparse Cholesky factor of a net's equations, Σ g·(own − neighbour) = load at every free node.
 *
 * @param net - the net
 * @param free - 1 for an unknown node; nodes that are not free are held at 0 (what they are held at goes into the load)
 * @returns the factor
 * @throws RangeError when some free node is joined to nothing that is held
 * Source: multifrontal Cholesky factorisation by nested dissection; every free node must reach air or a held node.
 */
export function factorise(net: Net, free: Uint8Array = net.active): Factor {
  const { columns, rows, east, north } = net;
  const diagonal = diagonalOf(net);
  const nodes = diagonal.length;
  const fronts = dissect(columns, rows, free);
  const place = new Int32Array(nodes);
  const frontOf = new Int32Array(nodes).fill(-1);
  const remainders: (Float64Array | null)[] = [];
  const factorised: FactorisedFront[] = [];
  for (const [number, front] of fronts.entries()) {
    const { own, border, parts } = front;
    const size = own.length + border.length;
    const matrix = new Float64Array(size * size);
    for (const [index, node] of [...own, ...border].entries()) {
      place[node] = index;
      frontOf[node] = number;
    }
    const couple = (node: number, neighbour: number, conductance: number): void => {
      // A neighbour of an earlier front has been eliminated: its coupling went in there.
      if (!(conductance > 0) || frontOf[neighbour] !== number || free[neighbour] !== 1) return;
      if (place[neighbour]! > place[node]!) matrix[place[neighbour]! * size + place[node]!]! -= conductance;
    };
    for (const [index, node] of own.entries()) {
      matrix[index * size + index] = diagonal[node]!;
      couple(node, node + 1, east[node]!);
      couple(node, node + columns, north[node]!);
      if (node > 0) couple(node, node - 1, east[node - 1]!);
      if (node >= columns) couple(node, node - columns, north[node - columns]!);
    }
    for (const part of parts) {
      addRemainder(matrix, size, place, fronts[part]!.border, remainders[part]!);
      remainders[part] = null;
    }
    eliminate(matrix, size, own.length);
    remainders.push(remainderOf(matrix, size, own.length));
    factorised.push({ ...front, panel: panelOf(matrix, size, own.length) });
  }
  return { solve: (load) => solveWith(factorised, free, load) };
}

/** Adds what an eliminated part leaves between the nodes of its border (lower triangle). */
function addRemainder(
  matrix: Float64Array,
  size: number,
  place: Int32Array,
  border: Int32Array,
  remainder: Float64Array,
): void {
  const count = border.length;
  for (let row = 0; row < count; row += 1) {
    const one = place[border[row]!]!;
    for (let column = 0; column <= row; column += 1) {
      const other = place[border[column]!]!;
      matrix[one > other ? one * size + other : other * size + one]! += remainder[row * count + column]!;
    }
  }
}

function remainderOf(matrix: Float64Array, size: number, own: number): Float64Array {
  const count = size - own;
  const remainder = new Float64Array(count * count);
  for (let row = 0; row < count; row += 1) {
    const from = (own + row) * size + own;
    remainder.set(matrix.subarray(from, from + row + 1), row * count);
  }
  return remainder;
}

function panelOf(matrix: Float64Array, size: number, own: number): Float64Array {
  const panel = new Float64Array(size * own);
  for (let row = 0; row < size; row += 1) panel.set(matrix.subarray(row * size, row * size + own), row * own);
  return panel;
}

function solveWith(fronts: readonly FactorisedFront[], free: Uint8Array, load: Float64Array): Float64Array {
  const x = load.map((value, node) => (free[node] === 1 ? value : 0));
  for (const front of fronts) forward(front, x);
  for (let number = fronts.length - 1; number >= 0; number -= 1) backward(fronts[number]!, x);
  return x;
}

function forward({ own, border, panel }: FactorisedFront, x: Float64Array): void {
  const count = own.length;
  let anything = false;
  for (let row = 0; row < count; row += 1) {
    let value = x[own[row]!]!;
    for (let column = 0; column < row; column += 1) value -= panel[row * count + column]! * x[own[column]!]!;
    x[own[row]!] = value / panel[row * count + row]!;
    if (value !== 0) anything = true;
  }
  if (!anything) return;
  for (let row = 0; row < border.length; row += 1) {
    const start = (count + row) * count;
    let value = 0;
    for (let column = 0; column < count; column += 1) value += panel[start + column]! * x[own[column]!]!;
    x[border[row]!]! -= value;
  }
}

function backward({ own, border, panel }: FactorisedFront, x: Float64Array): void {
  const count = own.length;
  for (let row = 0; row < border.length; row += 1) {
    const value = x[border[row]!]!;
    if (value === 0) continue;
    const start = (count + row) * count;
    for (let column = 0; column < count; column += 1) x[own[column]!]! -= panel[start + column]! * value;
  }
  for (let row = count - 1; row >= 0; row -= 1) {
    const value = x[own[row]!]! / panel[row * count + row]!;
    x[own[row]!] = value;
    for (let column = 0; column < row; column += 1) x[own[column]!]! -= panel[row * count + column]! * value;
  }
}
