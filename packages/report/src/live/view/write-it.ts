import type { Problem } from "@warmside/core";
import { type Data, dataOf, type Path } from "../edit/parsed.ts";
import { setValue } from "../edit/set-value.ts";
import { readingOf } from "../state/answer.ts";
import { show, state, write } from "../state/store.ts";

/**
 * Writes what a problem says to write, where it says so; where that cannot be done without harm, goes to the line.
 *
 * @param problem - the problem
 * @param words - what it says to write
 */
export function writeIt(problem: Problem, words: string): void {
  const { text, tables } = state();
  const before = countOf(text);
  const made = attemptsAt(text, problem, words).find((attempt) => countOf(attempt) < before);
  readingOf({ text, tables });
  if (made !== undefined) {
    write(made);
    return;
  }
  if (problem.position !== null) goToLine(problem.position.line);
  show({ remark: `Write this there yourself: ${words}` });
}

/** Opens the project file with a line of it taken up. */
export function goToLine(line: number): void {
  const area = document.querySelector<HTMLTextAreaElement>("#file-text")!;
  area.closest("details")!.open = true;
  const starts = [...area.value.matchAll(/^/gm)].map(({ index }) => index);
  const from = starts[line - 1] ?? 0;
  area.focus();
  area.setSelectionRange(from, (starts[line] ?? area.value.length + 1) - 1);
  area.scrollIntoView({ block: "center" });
}

/** The ways in which it may be meant: in the place of the value, as a key with its value, in the place of what is on the line. */
function attemptsAt(text: string, { path, position, received }: Problem, words: string): string[] {
  const value = valueIn(words);
  const pair = /^([a-z][a-z ]*): (.+)$/.exec(words);
  const places: [Path, Data][] = [[path, value]];
  if (pair !== null) {
    places.push([[...path, pair[1]!], valueIn(pair[2]!)], [[...path.slice(0, -1), pair[1]!], valueIn(pair[2]!)]);
  }
  const edits = places.flatMap(([place, data]) => (place.length === 0 ? [] : (setValue(text, place, data) ?? [])));
  if (position === null || received === null) return edits;
  const lineStart = text.split("\n", position.line - 1).join("\n").length + (position.line > 1 ? 1 : 0);
  const at = text.indexOf(received, lineStart + position.column - 1);
  return at === -1 ? edits : [...edits, text.slice(0, at) + words + text.slice(at + received.length)];
}

function valueIn(words: string): Data {
  return (dataOf(words) as Data | null | undefined) ?? words;
}

function countOf(text: string): number {
  const reading = readingOf({ text, tables: state().tables });
  return reading.ok ? 0 : reading.problems.length;
}
