/**
 * Lists of numbers cut from larger blocks. A calculation keeps a list for every node line, month and year; asking the
 * engine for the memory of each would cost more than the sums that fill it.
 */

/** Numbers in a block (64 kB). */
const BLOCK_SIZE = 8192;

let block = new Float64Array(BLOCK_SIZE);
let used = 0;

/**
 * A list of its own, filled with zeros. Its memory is shared with no other list.
 *
 * @param length - how many numbers, ≥ 0
 * @returns the list
 * @throws RangeError when the length is none; a length that is none leaves nothing behind for the next call
 * @example zeros(2) // [0, 0]
 */
export function zeros(length: number): Float64Array {
  requireLength(length);
  if (length > BLOCK_SIZE) return new Float64Array(length);
  if (used + length > BLOCK_SIZE) {
    block = new Float64Array(BLOCK_SIZE);
    used = 0;
  }
  const list = block.subarray(used, used + length);
  used += length;
  return list;
}

let indexBlock = new Int32Array(BLOCK_SIZE);
let indicesUsed = 0;

/**
 * A list of whole numbers of its own, filled with zeros.
 *
 * @param length - how many numbers, ≥ 0
 * @returns the list
 * @example wholeZeros(2) // [0, 0]
 */
export function wholeZeros(length: number): Int32Array {
  requireLength(length);
  if (length > BLOCK_SIZE) return new Int32Array(length);
  if (indicesUsed + length > BLOCK_SIZE) {
    indexBlock = new Int32Array(BLOCK_SIZE);
    indicesUsed = 0;
  }
  const list = indexBlock.subarray(indicesUsed, indicesUsed + length);
  indicesUsed += length;
  return list;
}

/**
 * A copy that shares no memory with its original.
 *
 * @param values - the original
 * @returns the copy
 * @example copyOf(Float64Array.of(1, 2)) // [1, 2]
 */
export function copyOf(values: Float64Array): Float64Array {
  const copy = zeros(values.length);
  for (let index = 0; index < values.length; index += 1) copy[index] = values[index]!;
  return copy;
}

function requireLength(length: number): void {
  if (!(Number.isSafeInteger(length) && length >= 0)) throw new RangeError(`a list cannot have ${length} numbers`);
}
