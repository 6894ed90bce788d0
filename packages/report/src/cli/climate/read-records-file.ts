import { createRecordReader, type Reading, type RecordMonths, type RecordOptions } from "@warmside/core";
import { breathe } from "../interruption.ts";
import type { Progress } from "../progress.ts";

/** Greatest size of a file of weather records [bytes]: a larger one is refused before it is read. */
export const LARGEST_RECORDS = 64_000_000;

/**
 * Reads weather records piece by piece and reports the progress.
 *
 * @param text - the records
 * @param options - columns, units and date order
 * @param progress - is told the part that was read
 * @returns the months, or every problem
 */
export async function readRecordsFile(
  text: string,
  options: RecordOptions,
  progress: Progress,
): Promise<Reading<RecordMonths>> {
  const reader = createRecordReader(options);
  for (let start = 0; start < text.length; start += PIECE) {
    reader.take(text.slice(start, start + PIECE));
    progress.reached(Math.min(start + PIECE, text.length), text.length);
    await breathe();
  }
  progress.clear();
  return reader.finish();
}

/** Characters that are read at a time. */
const PIECE = 500_000;
