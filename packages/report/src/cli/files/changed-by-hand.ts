import { createHash } from "node:crypto";
import { fstatSync } from "node:fs";
import { piecesOf, withOpenFile } from "./read-in-pieces.ts";

/** SHA-256 of bytes, as written at the end of a file by warmside. */
export function fingerprintOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * Whether a file written by warmside has been changed since: the fingerprint at its end no longer fits what is before it.
 * It is read in pieces, whatever its size.
 *
 * @param path - the file
 * @returns true also where no fingerprint is told
 * @throws what the system says where it cannot be read
 */
export function isChangedByHand(path: string): boolean {
  return withOpenFile(path, (file) => {
    const { size } = fstatSync(file);
    const start = Math.max(0, size - LONGEST_COMMENT);
    const end = Buffer.concat([...piecesOf(file, LONGEST_COMMENT, start)]).toString("latin1");
    const comment = COMMENT.exec(end);
    if (comment === null) return true;
    const hash = createHash("sha256");
    for (const piece of piecesOf(file, size - comment[0].length, 0)) hash.update(piece);
    return hash.digest("hex") !== comment[1];
  });
}

/** Behind a page, behind a PDF or behind a table. */
const COMMENT = /(?:<!--|\n%|#) made by warmside, fingerprint ([0-9a-f]{64})(?: -->)?\n$/;
const LONGEST_COMMENT = 200;
