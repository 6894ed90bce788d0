import { dissect, type Front } from "./dissection.ts";
import type { Net } from "./net.ts";

/** A net's factorised equations, which can be solved for any load at little cost. */
export interface Factor {
  /**
   * Potentials of the free nodes, 0 elsewhere.
   *
   * @param load - flow into every free node [W/m] or [kg/(m·s)]
   */
  solve(load: Float64Array): Float64Array;
}

/**
 * A front with its eliminated matrix, size × size: the columns of its own nodes are those of the triangular factor. For
 * the other nodes it has the remaining couplings between them (negative, lower triangle), and from each to held nodes.
 */
interface FactorisedFront extends Front {
  size: number;
  matrix: Float64Array;
  toHeld: Float64Array;
}

/**
 * Sparse Cholesky factor of a net's equations, Σ g·(own − neighbour) = load at every free node.
 *
 * @param net - the net
 * @param free - 1 for an unknown node; the others are held at 0 (other values enter through the load)
 * @param fronts - order of elimination of the net's active nodes, where it is known
 * @returns the factor
 * @throws RangeError when a free node is connected to no held node or air
 * Source: multifrontal Cholesky factorisation by nested dissection; every free node must reach air or a held node.
 * Nothing is subtracted from diagonals (Grassmann, Taksar and Heyman 1985, from memory): the diagonal of a node is the
 * sum of its couplings to free and held nodes, so metal beside an open gap, with conductances 1e16 apart, loses no
 * digits.
 */
export function factorise(net: Net, free: Uint8Array = net.active, fronts: readonly Front[] = frontsOf(net)): Factor {
  const { columns, east, north, toAir } = net;
  const position = new Int32Array(east.length);
  const frontOf = new Int32Array(east.length).fill(-1);
  const factorised: FactorisedFront[] = [];
  for (let number = 0; number < fronts.length; number += 1) {
    const front = fronts[number]!;
    const { own, border, parts } = front;
    const size = own.length + border.length;
    const matrix = new Float64Array(size * size);
    for (let index = 0; index < size; index += 1) {
      const node = index < own.length ? own[index]! : border[index - own.length]!;
      position[node] = index;
      frontOf[node] = number;
    }
    const toHeld = new Float64Array(size);
    const couple = (node: number, neighbour: number, conductance: number): void => {
      if (!(conductance > 0)) return;
      const own = position[node]!;
      if (free[neighbour] !== 1) toHeld[own]! += conductance;
      // A neighbour in an earlier front is already eliminated, and its coupling was added there.
      else if (frontOf[neighbour] === number && position[neighbour]! > own)
        matrix[position[neighbour]! * size + own]! -= conductance;
    };
    for (let index = 0; index < own.length; index += 1) {
      const node = own[index]!;
      if (free[node] !== 1) {
        toHeld[index] = 1;
        continue;
      }
      for (const conductances of toAir) toHeld[index]! += conductances[node]!;
      couple(node, node + 1, east[node]!);
      couple(node, node + columns, north[node]!);
      if (node > 0) couple(node, node - 1, east[node - 1]!);
      if (node >= columns) couple(node, node - columns, north[node - columns]!);
    }
    for (const part of parts) addRemainder(matrix, toHeld, position, factorised[part]!);
    eliminateFront(matrix, toHeld, own.length);
    factorised.push({ own, border, parts, size, matrix, toHeld });
  }
  return { solve: (load) => solveWith(factorised, free, load) };
}

/** The order of elimination of a net's active nodes. */
export function frontsOf({ columns, rows, active }: Net): Front[] {
  return dissect(columns, rows, active);
}

/** Upper bound of the multiplications of a factorisation [–]: each column of a front times the triangle beside it. */
export function workOfFactor(fronts: readonly Front[]): number {
  return fronts.reduce((sum, { own, border }) => sum + (own.length * (own.length + border.length) ** 2) / 2, 0);
}

/** Adds the couplings that an eliminated part leaves between its border nodes, and from them to held nodes. */
function addRemainder(matrix: Float64Array, toHeld: Float64Array, position: Int32Array, part: FactorisedFront): void {
  const { own, border } = part;
  const first = own.length;
  const size = toHeld.length;
  for (let row = 0; row < border.length; row += 1) {
    const one = position[border[row]!]!;
    const start = (first + row) * part.size + first;
    toHeld[one]! += part.toHeld[first + row]!;
    for (let column = 0; column < row; column += 1) {
      const other = position[border[column]!]!;
      matrix[one > other ? one * size + other : other * size + one]! += part.matrix[start + column]!;
    }
  }
}

/** Eliminates a front's first nodes: their columns become those of the triangular factor. No sum mixes signs. */
function eliminateFront(matrix: Float64Array, toHeld: Float64Array, count: number): void {
  const size = toHeld.length;
  const column = new Float64Array(size);
  for (let own = 0; own < count; own += 1) {
    let pivot = toHeld[own]!;
    for (let row = own + 1; row < size; row += 1) pivot -= matrix[row * size + own]!;
    if (!(pivot > 0)) throw new RangeError(`the equations of the plane have no single solution: pivot ${pivot}`);
    const root = Math.sqrt(pivot);
    const held = toHeld[own]! / root;
    matrix[own * size + own] = root;
    for (let row = own + 1; row < size; row += 1) {
      const start = row * size;
      const value = matrix[start + own]! / root;
      column[row] = value;
      if (value === 0) continue;
      matrix[start + own] = value;
      toHeld[row]! -= value * held;
      for (let other = own + 1; other < row; other += 1) matrix[start + other]! -= value * column[other]!;
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
