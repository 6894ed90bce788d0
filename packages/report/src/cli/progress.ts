/** A line on a terminal that tells how far a long piece of work is. */
export interface Progress {
  /** Shows how much is done. */
  reached(done: number, of: number): void;
  /** Removes the line. */
  clear(): void;
}

/** The parts of a stream that matter here. */
export interface ProgressStream {
  isTTY?: boolean;
  write?(text: string): unknown;
}

/** Time between two changes of the line [ms]. */
const BETWEEN_CHANGES = 100;
const CLEAR_LINE = "\r\u001b[2K";

/**
 * A progress line; nothing at all where the stream is no terminal.
 *
 * @param stream - standard error
 * @param inWords - how far it is, in words; the seconds are those since the start
 * @param now - milliseconds, of any clock that only runs forward
 * @returns told as work goes on
 */
export function progressOn(
  stream: ProgressStream,
  inWords: (done: number, of: number, seconds: number) => string,
  now: () => number = () => performance.now(),
): Progress {
  const start = now();
  let shownAt = Number.NEGATIVE_INFINITY;
  const show = (text: string): void => {
    if (stream.isTTY === true) stream.write?.(text);
  };
  return {
    reached(done, of): void {
      const time = now();
      if (time - shownAt < BETWEEN_CHANGES) return;
      shownAt = time;
      show(`${CLEAR_LINE}${inWords(done, of, (time - start) / 1000)}`);
    },
    clear(): void {
      if (shownAt > Number.NEGATIVE_INFINITY) show(CLEAR_LINE);
      shownAt = Number.NEGATIVE_INFINITY;
    },
  };
}

/**
 * How far a count is, in words.
 *
 * @param unit - one of what is counted
 * @param done - at least 1
 * @param of - all
 * @param seconds - since the start
 * @returns the count and the time left at the pace so far
 * @example countInWords("sample", 25000, 100000, 2) // "sample 25000 of 100000, 6 s left"
 */
export function countInWords(unit: string, done: number, of: number, seconds: number): string {
  return `${unit} ${done} of ${of}, ${timeInWords(Math.ceil((seconds * (of - done)) / done))} left`;
}

function timeInWords(seconds: number): string {
  if (seconds < 100) return `${seconds} s`;
  return `${Math.round(seconds / 60)} min`;
}
