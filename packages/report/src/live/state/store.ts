import { readingOf } from "./answer.ts";
import { answerInWords } from "./answer-in-words.ts";
import { backward, forward, NO_HISTORY, withStep } from "./history.ts";
import type { State } from "./state.ts";

/** What runs when the state has changed: the drawing once a frame, the work beside it once it is quiet. */
export interface Listeners {
  draw: () => void;
  /** The text or the build-up in sight is another. */
  changed: () => void;
  /** Keeps a copy of the work; false where the browser has none. */
  keep: (state: State) => boolean;
}

let current: State | null = null;
let listeners: Listeners = { draw: () => {}, changed: () => {}, keep: () => true };
let isAsked = false;
let lastGesture: { name: string; time: number } | null = null;
const timers: Record<string, ReturnType<typeof setTimeout> | undefined> = {};

/** The state as it is. */
export function state(): State {
  return current!;
}

/** Begins with a state. */
export function begin(first: State, to: Listeners): void {
  current = first;
  listeners = to;
}

/** Changes what is shown, not the text. */
export function show(change: Partial<State>): void {
  current = { ...state(), ...change };
  if (isAsked) return;
  isAsked = true;
  requestAnimationFrame(() => {
    isAsked = false;
    listeners.draw();
  });
}

/**
 * Another text: one step to undo, or part of the last one while the same gesture goes on.
 *
 * @param text - the text; null where an edit could not be made without loss, which is told
 * @param gesture - its name while it goes on (a drag, typing in one field); null where each is a step of its own
 * @param more - what is shown otherwise with it
 */
export function write(text: string | null, gesture: string | null = null, more: Partial<State> = {}): void {
  if (text === null) {
    show({ remark: NOT_EDITABLE });
    return;
  }
  const before = state();
  if (text === before.text) {
    show(more);
    return;
  }
  const now = performance.now();
  const goesOn = gesture !== null && lastGesture?.name === gesture && now - lastGesture.time < LONGEST_PAUSE;
  lastGesture = gesture === null ? null : { name: gesture, time: now };
  adopt(text, { history: withStep(before.history, before.text, text, goesOn), ...more });
}

/** Opens another file in place of this one; undo brings the former back. */
export function replaceFile(text: string, fileName: string, tables: State["tables"] = {}): void {
  lastGesture = null;
  const history = withStep(state().history, state().text, text, false);
  adopt(text, { ...NOWHERE, readable: null, saved: text, fileName, tables, history });
}

/** Takes back the last step. */
export function undo(): void {
  const { text, history } = state();
  const last = history.done.at(-1);
  if (last === undefined) return;
  lastGesture = null;
  const next = { done: history.done.slice(0, -1), undone: [last, ...history.undone] };
  adopt(backward(text, last), { history: next, layer: null });
}

/** Makes the last step taken back again. */
export function redo(): void {
  const { text, history } = state();
  const [next, ...undone] = history.undone;
  if (next === undefined) return;
  lastGesture = null;
  adopt(forward(text, next), { history: { done: [...history.done, next], undone }, layer: null });
}

/** Another build-up of the same file. */
export function showBuildUp(buildUp: number): void {
  show({ ...NOWHERE, buildUp });
  listeners.changed();
}

/** Everything that is shown of a build-up, as it is at first. */
export const NOWHERE: Pick<State, "buildUp" | "layer" | "month" | "isRunning" | "path" | "picking"> = {
  buildUp: 0,
  layer: null,
  month: null,
  isRunning: false,
  path: null,
  picking: null,
};

/** A state with one text and nothing done yet. */
export function stateOf(text: string, fileName: string, tables: State["tables"]): State {
  return {
    ...NOWHERE,
    text,
    readable: readingOf({ text, tables }).ok ? text : null,
    saved: text,
    fileName,
    tables,
    history: NO_HISTORY,
    lens: "temperature",
    isChoosingStarter: false,
    remark: null,
    spoken: "",
    isKept: true,
  };
}

function adopt(text: string, more: Partial<State>): void {
  const { tables = state().tables, readable = state().readable } = more;
  show({ remark: null, ...more, text, readable: readingOf({ text, tables }).ok ? text : readable });
  listeners.changed();
  later("keep", PAUSE_BEFORE_KEEPING, keepNow);
  later("speak", PAUSE_BEFORE_SPEAKING, () => show({ spoken: answerInWords(state()) }));
}

/** Keeps a copy at once: before a pause is over, and when the page goes. */
export function keepNow(): void {
  clearTimeout(timers.keep);
  const isKept = listeners.keep(state());
  if (isKept !== state().isKept) show({ isKept });
}

function later(name: string, milliseconds: number, work: () => void): void {
  clearTimeout(timers[name]);
  timers[name] = setTimeout(work, milliseconds);
}

const NOT_EDITABLE =
  "This part of the project file is written in a way that cannot be changed here without losing something. Change it in the project file below.";
/** Typing that stops for longer than this begins a new step [ms]. */
const LONGEST_PAUSE = 1500;
const PAUSE_BEFORE_KEEPING = 300;
const PAUSE_BEFORE_SPEAKING = 900;
