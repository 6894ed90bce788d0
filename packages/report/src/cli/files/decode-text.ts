import { unreadable } from "../command-result.ts";

/**
 * The text of a file, which must be UTF-8; a byte order mark is removed.
 *
 * @param bytes - the whole file
 * @param shown - the file as the reader knows it
 * @returns its text
 * @throws CommandProblem when it is in another encoding or no text at all
 */
export function decodeText(bytes: Uint8Array, shown: string): string {
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) {
    throw unreadable("wrong-encoding", shown, "it is saved as UTF-16", "Save it as UTF-8 and try again.");
  }
  if (bytes.includes(0)) {
    throw unreadable("no-text", shown, "it is not a text file", "Is it the right file?");
  }
  const line = lineOfFirstFault(bytes);
  if (line !== null) {
    const cause = `it is not saved as UTF-8, as line ${line} shows`;
    throw unreadable("wrong-encoding", shown, cause, "Save it as UTF-8 and try again.");
  }
  return new TextDecoder("utf-8").decode(bytes);
}

const LINE_FEED = 10;

function startsWith(bytes: Uint8Array, first: number, second: number): boolean {
  return bytes[0] === first && bytes[1] === second;
}

/** First line with bytes that are no UTF-8; null when there is none. A line feed is never part of a longer character. */
function lineOfFirstFault(bytes: Uint8Array): number | null {
  if (isText(bytes)) return null;
  let start = 0;
  for (let line = 1; ; line += 1) {
    const end = bytes.indexOf(LINE_FEED, start);
    if (end < 0 || !isText(bytes.subarray(start, end))) return line;
    start = end + 1;
  }
}

function isText(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}
