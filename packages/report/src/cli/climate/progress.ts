/** Tells on a terminal how far a long piece of work is. */
export interface Progress {
  /** The part that is done, 0 to 1. */
  reached(part: number): void;
  /** Takes the line away. */
  done(): void;
}

/** What progress is shown on: standard error of a terminal. */
export interface ProgressStream {
  isTTY?: boolean;
  write(text: string): unknown;
}

/**
 * Progress on one line that is written over.
 *
 * @param stream - where it is shown; nothing is where it is no terminal
 * @param doing - what is done, such as `Reading records.csv`
 * @returns the progress
 */
export function progressOn(stream: ProgressStream, doing: string): Progress {
  if (stream.isTTY !== true) return { reached: () => undefined, done: () => undefined };
  let shown = "";
  return {
    reached(part): void {
      const text = `${doing}: ${Math.min(100, Math.round(part * 100))} %`;
      if (text !== shown) stream.write(`\r${text}`);
      shown = text;
    },
    done(): void {
      if (shown !== "") stream.write(`\r${" ".repeat(shown.length)}\r`);
      shown = "";
    },
  };
}
