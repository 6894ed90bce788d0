/** A line on a terminal that tells how far a long calculation is. */
export interface Progress {
  /** So many more are done. */
  advance: (count: number) => void;
  /** Takes the line away. */
  clear: () => void;
}

/** The parts of a stream that matter here. */
export interface ProgressStream {
  isTTY?: boolean;
  write(text: string): unknown;
}

/** Time between two changes of the line [ms]. */
const BETWEEN_CHANGES = 100;
const CLEAR_LINE = "\r\u001b[2K";

/**
 * A progress line; nothing at all where the stream is no terminal.
 *
 * @param stream - standard error
 * @param total - how many there are to do
 * @param now - milliseconds, of any clock that only runs forward
 * @returns called as work goes on
 */
export function progressOn(
  stream: ProgressStream,
  total: number,
  now: () => number = () => performance.now(),
): Progress {
  if (stream.isTTY !== true) return { advance: () => undefined, clear: () => undefined };
  const start = now();
  let done = 0;
  let shownAt = Number.NEGATIVE_INFINITY;
  return {
    advance: (count) => {
      done += count;
      const time = now();
      if (time - shownAt < BETWEEN_CHANGES) return;
      shownAt = time;
      stream.write(`${CLEAR_LINE}${progressInWords(done, total, (time - start) / 1000)}`);
    },
    clear: () => {
      if (shownAt > Number.NEGATIVE_INFINITY) stream.write(CLEAR_LINE);
    },
  };
}

/**
 * How far it is, in words.
 *
 * @param done - at least 1
 * @param total - all
 * @param seconds - since the start
 * @returns samples, share and time left at the pace so far
 * @example progressInWords(25000, 100000, 2) // "25000 of 100000 samples (25 %), 6 s left"
 */
export function progressInWords(done: number, total: number, seconds: number): string {
  const share = Math.floor((100 * done) / total);
  const left = Math.ceil((seconds * (total - done)) / done);
  return `${done} of ${total} samples (${share} %), ${timeInWords(left)} left`;
}

function timeInWords(seconds: number): string {
  if (seconds < 100) return `${seconds} s`;
  return `${Math.round(seconds / 60)} min`;
}
