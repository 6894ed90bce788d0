import { setImmediate as nextTurn } from "node:timers/promises";

/** What has to be cleared away when the command is interrupted: half-written files, folders, a running browser. */
const clearings = new Set<() => unknown>();

/**
 * Registers what to clear away on an interruption.
 *
 * @param clear - quick; what it leaves for later is waited for a moment
 * @returns takes it off again
 */
export function whenInterrupted(clear: () => unknown): () => void {
  clearings.add(clear);
  return () => clearings.delete(clear);
}

/**
 * Clears everything away that was registered, the newest first.
 *
 * @returns when what was left for later is done too, or failed
 */
export async function clearAfterInterruption(): Promise<void> {
  const begun = [...clearings].reverse().map(begin);
  clearings.clear();
  await Promise.allSettled(begun);
}

/** A failure to clear one thing away does not stop the others. */
function begin(clear: () => unknown): unknown {
  try {
    return clear();
  } catch {
    return undefined;
  }
}

/** Gives an interruption during a long calculation the chance to be handled before the next stage. */
export async function breathe(): Promise<void> {
  await nextTurn();
  await nextTurn();
}
