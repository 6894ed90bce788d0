/**
 * Solves a dense symmetric system by its triangular factor: A = L·Lᵀ, then L·Lᵀ·x = load.
 *
 * @param matrix - size × size numbers, row by row, of which the lower triangle is read; becomes L
 * @param size - rows of the matrix
 * @param load - right-hand side; not changed
 * @returns x
 * @throws RangeError when the matrix is not positive definite, or contains a value that is not a number
 * Source: Cholesky factorisation.
 * @example solveSymmetric(Float64Array.of(4, 0, 2, 10), 2, Float64Array.of(16, 44)) // [2, 4]
 */
export function solveSymmetric(matrix: Float64Array, size: number, load: Float64Array): Float64Array {
  for (let row = 0; row < size; row += 1) {
    const start = row * size;
    for (let column = 0; column <= row; column += 1) {
      const pivotRow = column * size;
      let value = matrix[start + column]!;
      for (let k = 0; k < column; k += 1) value -= matrix[start + k]! * matrix[pivotRow + k]!;
      matrix[start + column] = column === row ? rootOf(value) : value / matrix[pivotRow + column]!;
    }
  }
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
