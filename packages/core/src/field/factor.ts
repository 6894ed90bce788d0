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

/** A front with its eliminated matrix, size × size: the columns of its own nodes are those of the triangular factor. */
interface FactorisedFront extends Front {
  size: number;
  matrix: Float64Array;
}

/**
 * Sparse Cholesky factor of a net's equations, Σ g·(own − neighbour) = load at every free node.
 *
 * @param net - the net
 * @param free - 1 for an unknown node; the others are held at 0 (what they are held at goes into the load)
 * @param fronts - order of elimination of the net's active nodes, where it is known
 * @returns the factor
 * @throws RangeError when some free node is joined to nothing that is held
 * Source: multifrontal Cholesky factorisation by nested dissection; every free node must reach air or a held node.
 */
export function factorise(net: Net, free: Uint8Array = net.active, fronts: readonly Front[] = frontsOf(net)): Factor {
  const { columns, east, north } = net;
  const diagonal = diagonalOf(net);
  const place = new Int32Array(diagonal.length);
  const frontOf = new Int32Array(diagonal.length).fill(-1);
  const factorised: FactorisedFront[] = [];
  for (let number = 0; number < fronts.length; number += 1) {
    const front = fronts[number]!;
    const { own, border, parts } = front;
    const size = own.length + border.length;
    const matrix = new Float64Array(size * size);
    for (let index = 0; index < size; index += 1) {
      const node = index < own.length ? own[index]! : border[index - own.length]!;
      place[node] = index;
      frontOf[node] = number;
    }
    const couple = (node: number, neighbour: number, conductance: number): void => {
      // A neighbour of an earlier front has been eliminated: its coupling went in there.
      if (!(conductance > 0) || frontOf[neighbour] !== number || free[neighbour] !== 1) return;
      if (place[neighbour]! > place[node]!) matrix[place[neighbour]! * size + place[node]!]! -= conductance;
    };
    for (let index = 0; index < own.length; index += 1) {
      const node = own[index]!;
      const isFree = free[node] === 1;
      matrix[index * size + index] = isFree ? diagonal[node]! : 1;
      if (!isFree) continue;
      couple(node, node + 1, east[node]!);
      couple(node, node + columns, north[node]!);
      if (node > 0) couple(node, node - 1, east[node - 1]!);
      if (node >= columns) couple(node, node - columns, north[node - columns]!);
    }
    for (const part of parts) addRemainder(matrix, size, place, factorised[part]!);
    eliminate(matrix, size, own.length);
    factorised.push({ own, border, parts, size, matrix });
  }
  return { solve: (load) => solveWith(factorised, free, load) };
}

/** The order of elimination of a net's active nodes. */
export function frontsOf({ columns, rows, active }: Net): Front[] {
  return dissect(columns, rows, active);
}

/** Multiplications that a factor takes at most [–]: every column of a front times the triangle beside it. */
export function workOfFactor(fronts: readonly Front[]): number {
  return fronts.reduce((sum, { own, border }) => sum + (own.length * (own.length + border.length) ** 2) / 2, 0);
}

/** Adds what an eliminated part leaves between the nodes of its border (lower triangle). */
function addRemainder(matrix: Float64Array, size: number, place: Int32Array, part: FactorisedFront): void {
  const { own, border } = part;
  const first = own.length;
  for (let row = 0; row < border.length; row += 1) {
    const one = place[border[row]!]!;
    const start = (first + row) * part.size + first;
    for (let column = 0; column <= row; column += 1) {
      const other = place[border[column]!]!;
      matrix[one > other ? one * size + other : other * size + one]! += part.matrix[start + column]!;
    }
  }
}

function solveWith(fronts: readonly FactorisedFront[], free: Uint8Array, load: Float64Array): Float64Array {
  const x = new Float64Array(load.length);
  for (let node = 0; node < x.length; node += 1) if (free[node] === 1) x[node] = load[node]!;
  for (let number = 0; number < fronts.length; number += 1) forward(fronts[number]!, x);
  for (let number = fronts.length - 1; number >= 0; number -= 1) backward(fronts[number]!, x);
  return x;
}

function forward({ own, border, size, matrix }: FactorisedFront, x: Float64Array): void {
  const count = own.length;
  let anything = false;
  for (let row = 0; row < count; row += 1) {
    const start = row * size;
    let value = x[own[row]!]!;
    for (let column = 0; column < row; column += 1) value -= matrix[start + column]! * x[own[column]!]!;
    x[own[row]!] = value / matrix[start + row]!;
    if (value !== 0) anything = true;
  }
  if (!anything) return;
  for (let row = 0; row < border.length; row += 1) {
    const start = (count + row) * size;
    let value = 0;
    for (let column = 0; column < count; column += 1) value += matrix[start + column]! * x[own[column]!]!;
    x[border[row]!]! -= value;
  }
}

function backward({ own, border, size, matrix }: FactorisedFront, x: Float64Array): void {
  const count = own.length;
  for (let row = 0; row < border.length; row += 1) {
    const value = x[border[row]!]!;
    if (value === 0) continue;
    const start = (count + row) * size;
    for (let column = 0; column < count; column += 1) x[own[column]!]! -= matrix[start + column]! * value;
  }
  for (let row = count - 1; row >= 0; row -= 1) {
    const start = row * size;
    const value = x[own[row]!]! / matrix[start + row]!;
    x[own[row]!] = value;
    for (let column = 0; column < row; column += 1) x[own[column]!]! -= matrix[start + column]! * value;
  }
}
