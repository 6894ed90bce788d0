import { setImmediate as nextTurn } from "node:timers/promises";

/** What has to be cleared away when the reader interrupts the command: half-written files, a running browser. */
const clearings = new Set<() => void>();

/**
 * Registers what to clear away on an interruption.
 *
 * @param clear - quick, and never throwing
 * @returns takes it off again
 */
export function whenInterrupted(clear: () => void): () => void {
  clearings.add(clear);
  return () => clearings.delete(clear);
}

/** Clears everything away that was registered. */
export function clearAfterInterruption(): void {
  for (const clear of clearings) clear();
  clearings.clear();
}

/** Lets an interruption that came during a long calculation be heard before the next stage begins. */
export async function breathe(): Promise<void> {
  await nextTurn();
  await nextTurn();
}
