import { nearNames } from "../problems/near-names.ts";
import { pathInText } from "../problems/path-in-text.ts";
import { placeInWords } from "../problems/place-in-words.ts";
import type { ProblemPath } from "../problems/types.ts";
import { inSpeech } from "../problems/wording.ts";
import type { Oddity } from "./types.ts";
import { listAt } from "./value-at.ts";

/** Gathers notes of odd but possible values, and marks those that the file acknowledges. */
export interface OddityCollector {
  /** A note about a place in the file, which its message begins with. */
  note(code: string, path: ProblemPath, sentence: string): void;
  /** A note whose message says itself what it is about. */
  add(code: string, path: ProblemPath, message: string): void;
  readonly oddities: readonly Oddity[];
}

/**
 * Begins gathering.
 *
 * @param data - the project file's data; its `accept` lists the codes that are acknowledged
 * @returns an empty collector
 */
export function collectOddities(data: unknown): OddityCollector {
  const accepted = listAt(data, ["accept"]);
  const oddities: Oddity[] = [];
  const add: OddityCollector["add"] = (code, path, message) =>
    void oddities.push({ code, path: pathInText(path), message, accepted: accepted.includes(code) });
  return {
    oddities,
    add,
    note(code, path, sentence) {
      const { place } = placeInWords(path, data);
      add(code, path, place === "" ? `${sentence}.` : `${place}: ${sentence}.`);
    },
  };
}

/**
 * Notes every code under `accept` that no note has: a slip of the pen, or a value that has been put right since.
 *
 * @param accept - the codes that the file acknowledges
 * @param notes - with all other notes in it
 */
export function noteIdleAcceptances(accept: readonly string[], notes: OddityCollector): void {
  const codes = [...new Set(notes.oddities.map(({ code }) => code))];
  accept.forEach((code, index) => {
    if (codes.includes(code)) return;
    const near = nearNames(code, codes);
    const then = near.length > 0 ? `Perhaps you mean ${inSpeech(near, "or")}.` : "Remove it.";
    notes.add("accepts-nothing", ["accept", index], `accept names ${code}, but this file has no such note. ${then}`);
  });
}
