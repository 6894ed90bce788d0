import type { ProblemPath } from "./types.ts";

/** A place in a project, counted from 1, and the key that a problem there is about. */
export interface PathInWords {
  /** For example "build-up 2, Studio wall, layer 3, mineral wool slab"; empty at the top of the file. */
  place: string;
  /** For example "thickness"; "the layer" for an object as a whole, "the file" for the whole file. */
  subject: string;
}

/**
 * Says in words where a path leads.
 *
 * @param path - steps into the file's data, indices from 0
 * @param data - the file's data, from which names are taken
 * @returns the place and the key, in words
 */
export function pathInWords(path: ProblemPath, data: unknown): PathInWords {
  const parts: string[] = [];
  let here = data;
  for (const [index, step] of path.entries()) {
    here = stepInto(here, step);
    parts.push(...partInWords(path, index, here));
  }
  const last = path[path.length - 1];
  const isKey = typeof last === "string" && !NAMED_THINGS.has(String(path[path.length - 2])) && last !== "indoor";
  const subject = isKey ? parts.pop() : undefined;
  return { place: parts.join(", "), subject: subject ?? wholeThing(path) };
}

/** Lists by their key, and what one of their items is called. */
const LIST_THINGS: ReadonlyMap<string, string> = new Map([
  ["build-ups", "build-up"],
  ["layers", "layer"],
  ["variants", "variant"],
  ["changes", "change"],
  ["prices", "price"],
  ["trapped water", "trapped water"],
  ["junctions", "junction"],
  ["junction factors", "junction"],
  ["external", "outer part"],
]);

/** Keys whose own keys are names that the user chose. */
const NAMED_THINGS = new Map([
  ["rooms", "room"],
  ["framings", "framing"],
]);

/** What a path leads to when it does not end in a key: "the layer", "the room", "the file". */
function wholeThing(path: ProblemPath): string {
  const last = path[path.length - 1];
  const before = String(path[path.length - 2]);
  if (last === undefined) return "the file";
  if (last === "indoor") return "the room";
  const thing = typeof last === "number" ? LIST_THINGS.get(before) : NAMED_THINGS.get(before);
  return thing === undefined ? "this value" : `the ${thing}`;
}

function partInWords(path: ProblemPath, index: number, here: unknown): string[] {
  const step = path[index]!;
  const before = path[index - 1];
  if (typeof step === "number") {
    const thing = LIST_THINGS.get(String(before));
    if (thing === undefined) return [`value ${step + 1}`];
    const name = before === "changes" ? null : nameOf(here);
    return name === null ? [`${thing} ${step + 1}`] : [`${thing} ${step + 1}`, name];
  }
  const named = typeof before === "string" ? NAMED_THINGS.get(before) : undefined;
  if (named !== undefined) return [`${named} "${shortened(step)}"`];
  if (step === "indoor") return ["room indoor"];
  if (isOfChange(path, index)) return ["the layer put in"];
  const next = path[index + 1];
  if (NAMED_THINGS.has(step) && typeof next === "string") return [];
  if (LIST_THINGS.has(step) && typeof next === "number") return [];
  return [shortened(step)];
}

/** Whether a step leads into the layer that a change adds. */
function isOfChange(path: ProblemPath, index: number): boolean {
  return path[index - 2] === "changes" && (path[index] === "for" || path[index] === "add") && index < path.length - 1;
}

/** The name of an object, or of its material, or "air layer"; null if it has none of these. */
function nameOf(thing: unknown): string | null {
  const name = textAt(thing, "name") ?? textAt(thing, "material") ?? textAt(stepInto(thing, "material"), "name");
  if (name !== null) return shortened(name);
  return stepInto(thing, "air") === undefined ? null : "air layer";
}

function textAt(thing: unknown, key: string): string | null {
  const value = stepInto(thing, key);
  return typeof value === "string" && value.trim() !== "" ? value : null;
}

function stepInto(thing: unknown, step: string | number): unknown {
  if (typeof thing !== "object" || thing === null || !Object.hasOwn(thing, step)) return undefined;
  return (thing as Record<string | number, unknown>)[step];
}

const LONGEST_NAME = 60;

function shortened(name: string): string {
  const oneLine = name.replace(/[\p{Cc}\s]+/gu, " ").trim();
  return oneLine.length <= LONGEST_NAME ? oneLine : `${oneLine.slice(0, LONGEST_NAME)}…`;
}
