import { createHash } from "node:crypto";

/** SHA-256 of bytes, as it stands behind a file that warmside wrote. */
export function fingerprintOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * Whether a file that warmside wrote has been changed since: its end no longer tells the fingerprint of what stands
 * before it.
 *
 * @param bytes - the whole file
 * @returns true also where no fingerprint is told
 */
export function isChangedByHand(bytes: Uint8Array): boolean {
  const end = Buffer.from(bytes.subarray(-LONGEST_COMMENT)).toString("latin1");
  const comment = COMMENT.exec(end);
  if (comment === null) return true;
  return fingerprintOf(bytes.subarray(0, bytes.length - comment[0].length)) !== comment[1];
}

/** Behind a page, behind a PDF or behind a table. */
const COMMENT = /(?:<!--|\n%|#) made by warmside, fingerprint ([0-9a-f]{64})(?: -->)?\n$/;
const LONGEST_COMMENT = 200;
