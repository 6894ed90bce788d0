/** One change of the text: at an offset, what went and what came. */
export interface Step {
  at: number;
  gone: string;
  came: string;
}

/** What was done and undone, as changes of the text: a file of any size can be undone back to its first byte. */
export interface History {
  done: readonly Step[];
  undone: readonly Step[];
}

export const NO_HISTORY: History = { done: [], undone: [] };

/**
 * The change that leads from one text to another: what they share at both ends is left out.
 *
 * @param before - the text before
 * @param after - the text after
 * @returns the change
 * @example stepBetween("abc", "axc") // { at: 1, gone: "b", came: "x" }
 */
export function stepBetween(before: string, after: string): Step {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && before[at] === after[at]) at += 1;
  let end = 0;
  while (end < shorter - at && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  return { at, gone: before.slice(at, before.length - end), came: after.slice(at, after.length - end) };
}

/** The text after a change. */
export function forward(text: string, { at, gone, came }: Step): string {
  return text.slice(0, at) + came + text.slice(at + gone.length);
}

/** The text before a change. */
export function backward(text: string, { at, gone, came }: Step): string {
  return text.slice(0, at) + gone + text.slice(at + came.length);
}

/**
 * The history with one more change; a change that goes on with the last one is part of it.
 *
 * @param history - so far
 * @param before - the text before
 * @param after - the text after
 * @param goesOn - whether the same gesture goes on
 * @returns the history; nothing is left to redo
 */
export function withStep({ done }: History, before: string, after: string, goesOn: boolean): History {
  const last = done.at(-1);
  if (!goesOn || last === undefined) return { done: [...done, stepBetween(before, after)], undone: [] };
  return { done: [...done.slice(0, -1), stepBetween(backward(before, last), after)], undone: [] };
}
