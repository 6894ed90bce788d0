import { pathInText } from "../problems/path-in-text.ts";
import { placeInWords } from "../problems/place-in-words.ts";
import type { ProblemPath } from "../problems/types.ts";
import type { Oddity } from "./types.ts";
import { listAt } from "./value-at.ts";

/** Gathers notes of odd but possible values, and marks those that the file acknowledges. */
export interface NoteCollector {
  note(code: string, path: ProblemPath, sentence: string): void;
  readonly oddities: readonly Oddity[];
}

/**
 * Begins gathering.
 *
 * @param data - the project file's data; its `accept` lists the codes that are acknowledged
 * @returns an empty collector
 */
export function collectNotes(data: unknown): NoteCollector {
  const accepted = listAt(data, ["accept"]);
  const oddities: Oddity[] = [];
  return {
    oddities,
    note(code, path, sentence) {
      const { place } = placeInWords(path, data);
      const message = place === "" ? `${sentence}.` : `${place}: ${sentence}.`;
      oddities.push({ code, path: pathInText(path), message, accepted: accepted.includes(code) });
    },
  };
}
