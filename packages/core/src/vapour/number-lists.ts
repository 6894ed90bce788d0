/**
 * Lists of numbers taken from larger blocks. A calculation keeps a list for every node line, month and year; allocating
 * each one separately would cost more time than the sums that fill it.
 */

/** Bytes of a block: 8192 numbers. */
const BLOCK_SIZE = 65_536;

let block = new ArrayBuffer(BLOCK_SIZE);
let used = 0;

/**
 * A new list of zeros. It shares its memory with no other list.
 *
 * @param length - how many numbers, ≥ 0
 * @returns the list
 * @throws RangeError when the length is not a whole number ≥ 0; later calls are unaffected
 * @example zeros(2) // [0, 0]
 */
export function zeros(length: number): Float64Array {
  requireLength(length);
  const bytes = length * Float64Array.BYTES_PER_ELEMENT;
  if (bytes > BLOCK_SIZE) return new Float64Array(length);
  const offset = offsetFor(bytes);
  return new Float64Array(block, offset, length);
}

/**
 * A new list of whole numbers, all 0.
 *
 * @param length - how many numbers, ≥ 0
 * @returns the list
 * @example wholeZeros(2) // [0, 0]
 */
export function wholeZeros(length: number): Int32Array {
  requireLength(length);
  const bytes = length * Int32Array.BYTES_PER_ELEMENT;
  if (bytes > BLOCK_SIZE) return new Int32Array(length);
  const offset = offsetFor(bytes);
  return new Int32Array(block, offset, length);
}

/**
 * A new list of marks, all 0.
 *
 * @param length - how many marks, ≥ 0
 * @returns the list
 * @example zeroMarks(2) // [0, 0]
 */
export function zeroMarks(length: number): Uint8Array {
  requireLength(length);
  if (length > BLOCK_SIZE) return new Uint8Array(length);
  const offset = offsetFor(length);
  return new Uint8Array(block, offset, length);
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

/** Where the next bytes begin in the block; a new block where they do not fit. Numbers begin at multiples of 8. */
function offsetFor(bytes: number): number {
  if (used + bytes > BLOCK_SIZE) {
    block = new ArrayBuffer(BLOCK_SIZE);
    used = 0;
  }
  const offset = used;
  used += Math.ceil(bytes / Float64Array.BYTES_PER_ELEMENT) * Float64Array.BYTES_PER_ELEMENT;
  return offset;
}

function requireLength(length: number): void {
  if (!(Number.isSafeInteger(length) && length >= 0)) throw new RangeError(`a list cannot have ${length} numbers`);
}
