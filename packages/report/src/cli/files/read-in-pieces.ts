import { closeSync, openSync, readSync } from "node:fs";

/**
 * Opens a file, uses it, and always closes it.
 *
 * @param path - absolute
 * @param use - what is done with its descriptor
 * @param flags - as for `openSync` (default: to read)
 * @returns what `use` gives
 * @throws what the system says where it cannot be opened or read
 */
export function withOpenFile<T>(path: string, use: (file: number) => T, flags: string | number = "r"): T {
  const file = openSync(path, flags);
  try {
    return use(file);
  } finally {
    closeSync(file);
  }
}

/**
 * The bytes of an open file, a piece at a time, whatever its size: fewer than asked for where it is shorter.
 *
 * @param file - its descriptor
 * @param most - bytes to be read at most
 * @param from - first byte; null goes on where the file stands, which files of the system ask for
 * @returns pieces one after another
 */
export function* piecesOf(file: number, most: number, from: number | null): Generator<Uint8Array> {
  for (let done = 0; done < most; ) {
    const piece = Buffer.alloc(Math.min(PIECE, most - done));
    const read = readSync(file, piece, 0, piece.length, from === null ? null : from + done);
    if (read === 0) return;
    yield piece.subarray(0, read);
    done += read;
  }
}

/** Bytes that are asked for at a time. */
const PIECE = 1_000_000;
