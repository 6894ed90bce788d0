/**
 * Eliminates the first unknowns of a dense symmetric matrix: their columns become those of the triangular factor, and
 * the block of the other unknowns becomes the remaining matrix (lower triangles).
 *
 * @param matrix - size × size numbers, row by row; changed in place
 * @param size - rows of the matrix
 * @param count - number of unknowns to eliminate
 * @throws RangeError when the matrix is not positive definite, or contains a value that is not a number
 * Source: Cholesky factorisation.
 */
export function eliminate(matrix: Float64Array, size: number, count: number): void {
  for (let row = 0; row < size; row += 1) {
    const start = row * size;
    const last = Math.min(row, count - 1);
    for (let column = 0; column <= last; column += 1) {
      const pivotRow = column * size;
      let value = matrix[start + column]!;
      for (let k = 0; k < column; k += 1) value -= matrix[start + k]! * matrix[pivotRow + k]!;
      matrix[start + column] = column === row ? rootOf(value) : value / matrix[pivotRow + column]!;
    }
  }
  for (let row = count; row < size; row += 1) {
    const start = row * size;
    for (let column = count; column <= row; column += 1) {
      const other = column * size;
      let value = 0;
      for (let k = 0; k < count; k += 1) value += matrix[start + k]! * matrix[other + k]!;
      matrix[start + column]! -= value;
    }
  }
}

/**
 * Solves L·Lᵀ·x = load.
 *
 * @param matrix - size × size numbers, L in its lower triangle as `eliminate` leaves it
 * @param size - rows of the matrix
 * @param load - right-hand side; not changed
 * @returns x
 * @example solveTriangles(Float64Array.of(2, 0, 1, 3), 2, Float64Array.of(8, 13)) // [1.5, 1]
 */
export function solveTriangles(matrix: Float64Array, size: number, load: Float64Array): Float64Array {
  const x = load.slice();
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < row; column += 1) x[row]! -= matrix[row * size + column]! * x[column]!;
    x[row]! /= matrix[row * size + row]!;
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let below = row + 1; below < size; below += 1) x[row]! -= matrix[below * size + row]! * x[below]!;
    x[row]! /= matrix[row * size + row]!;
  }
  return x;
}

function rootOf(pivot: number): number {
  if (!(pivot > 0)) throw new RangeError(`the equations of the plane have no single solution: pivot ${pivot}`);
  return Math.sqrt(pivot);
}
