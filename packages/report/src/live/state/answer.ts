import {
  assessBuildUp,
  type BuildUpResult,
  type Project,
  type Reading,
  readProject,
  type Supplies,
  type Surroundings,
  surroundingsOf,
  withFactorsOfJunctions,
} from "@warmside/core";
import type { State } from "./state.ts";

/** What is drawn: the project that was read, and the build-up that is shown, assessed. */
export interface Answer {
  project: Project;
  surroundings: Surroundings;
  /** Index of the build-up that is shown. */
  at: number;
  result: BuildUpResult;
}

type Source = Pick<State, "tables"> & { text: string };

/** Hands out the tables that came with the project. */
export function suppliesOf(tables: State["tables"]): Supplies {
  return {
    file: (path) => (Object.hasOwn(tables, path) ? { text: tables[path]! } : { failure: "it was not opened with it" }),
  };
}

/** The text, read as the command reads it; the last reading is kept. */
export function readingOf({ text, tables }: Source): Reading<Project> {
  if (lastReading?.text !== text || lastReading.tables !== tables) {
    lastReading = { text, tables, reading: readProject(text, suppliesOf(tables)) };
  }
  return lastReading.reading;
}

/**
 * What the page shows: only the build-up in sight is assessed, and what was assessed is kept.
 *
 * @param state - the text that can be read, and which build-up is shown
 * @returns the answer; null where the file never could be read
 */
export function answerOf({ readable, tables, buildUp }: Pick<State, "readable" | "tables" | "buildUp">): Answer | null {
  if (readable === null) return null;
  const key = `${buildUp} ${readable}`;
  const known = kept.get(key);
  if (known !== undefined && known.tables === tables) return known.answer;
  const answer = workOut(readable, tables, buildUp);
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, { tables, answer });
  return answer;
}

function workOut(text: string, tables: State["tables"], buildUp: number): Answer | null {
  const reading = readingAgain(text, tables);
  if (!reading.ok) return null;
  const project = reading.value;
  const surroundings = surroundingsOf(project);
  const at = Math.min(buildUp, project.buildUps.length - 1);
  const shown = withFactorsOfJunctions(project, project.buildUps[at]!);
  return { project, surroundings, at, result: assessBuildUp(shown, surroundings) };
}

/** While the text has faults, the last readable one is read beside it. */
function readingAgain(text: string, tables: State["tables"]): Reading<Project> {
  return lastReading?.text === text ? readingOf({ text, tables }) : readProject(text, suppliesOf(tables));
}

let lastReading: { text: string; tables: State["tables"]; reading: Reading<Project> } | null = null;
const kept = new Map<string, { tables: State["tables"]; answer: Answer | null }>();
const MOST_KEPT = 12;
