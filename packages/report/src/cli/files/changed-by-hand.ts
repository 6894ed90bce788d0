import { createHash } from "node:crypto";
import { closeSync, fstatSync, openSync, readSync } from "node:fs";

/** SHA-256 of bytes, as it stands behind a file that warmside wrote. */
export function fingerprintOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * Whether a file that warmside wrote has been changed since: its end no longer tells the fingerprint of what stands
 * before it. Read in pieces, whatever its size.
 *
 * @param path - the file
 * @returns true also where no fingerprint is told
 * @throws what the system says where it cannot be read
 */
export function isChangedByHand(path: string): boolean {
  const file = openSync(path, "r");
  try {
    const { size } = fstatSync(file);
    const start = Math.max(0, size - LONGEST_COMMENT);
    const end = Buffer.concat([...piecesOf(file, start, size)]).toString("latin1");
    const comment = COMMENT.exec(end);
    if (comment === null) return true;
    const hash = createHash("sha256");
    for (const piece of piecesOf(file, 0, size - comment[0].length)) hash.update(piece);
    return hash.digest("hex") !== comment[1];
  } finally {
    closeSync(file);
  }
}

/** The bytes of an open file from one place to another, a piece at a time; fewer where it has grown shorter. */
function* piecesOf(file: number, from: number, to: number): Generator<Uint8Array> {
  for (let at = from; at < to; ) {
    const piece = Buffer.alloc(Math.min(PIECE, to - at));
    const read = readSync(file, piece, 0, piece.length, at);
    if (read === 0) return;
    yield piece.subarray(0, read);
    at += read;
  }
}

/** Bytes that are asked for at a time. */
const PIECE = 1_000_000;

/** Behind a page, behind a PDF or behind a table. */
const COMMENT = /(?:<!--|\n%|#) made by warmside, fingerprint ([0-9a-f]{64})(?: -->)?\n$/;
const LONGEST_COMMENT = 200;
