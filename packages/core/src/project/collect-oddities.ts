import { nearNames } from "../problems/near-names.ts";
import { pathInText } from "../problems/path-in-text.ts";
import { pathInWords } from "../problems/path-in-words.ts";
import type { ProblemPath } from "../problems/types.ts";
import { inSpeech } from "../problems/wording.ts";
import type { Oddity } from "./types.ts";
import { listAt } from "./value-at.ts";

/** Collects notes on odd but possible values, and marks those that the file acknowledges. */
export interface OddityCollector {
  /** Adds a note about a place in the file; the message begins with the place. */
  note(code: string, path: ProblemPath, sentence: string): void;
  /** Adds a note whose message itself says what it is about. */
  add(code: string, path: ProblemPath, message: string): void;
  readonly oddities: readonly Oddity[];
}

/**
 * Makes an empty collector.
 *
 * @param data - the project file's data; its `accept` lists the codes that are acknowledged
 * @returns the collector
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
      const { place } = pathInWords(path, data);
      add(code, path, place === "" ? `${sentence}.` : `${place}: ${sentence}.`);
    },
  };
}

/**
 * Notes every code under `accept` that matches no note: mistyped, or left over from a value since corrected.
 *
 * @param accept - the codes that the file acknowledges
 * @param notes - the collector, with all other notes already in it
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
