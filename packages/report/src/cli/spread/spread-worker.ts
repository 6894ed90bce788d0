/** What a worker thread does: samples in, outcomes out. Also used in the command's own thread. */
import { workerData } from "node:worker_threads";
import {
  type Project,
  type SampleTable,
  type SpreadOutcomes,
  type SpreadQuestion,
  spreadQuestion,
  surroundingsOf,
  withFactorsOfJunctions,
} from "@warmside/core";

/** Some samples of one build-up. */
export interface SpreadTask {
  /** Place of the build-up in the project. */
  buildUp: number;
  /** Place of the first sample. */
  from: number;
  samples: SampleTable;
}

let work: ((task: SpreadTask) => SpreadOutcomes) | null = null;

/** Called in a worker thread of the pool; the project came with the thread. */
export function workOutTask(task: SpreadTask): SpreadOutcomes {
  work ??= workerFor(projectOfThread());
  return work(task);
}

/**
 * Prepares to work on samples of a project's build-ups.
 *
 * @param project - the project
 * @returns works a task out
 */
export function workerFor(project: Project): (task: SpreadTask) => SpreadOutcomes {
  const surroundings = surroundingsOf(project);
  const questions = new Map<number, SpreadQuestion>();
  return ({ buildUp, samples }) => {
    const question =
      questions.get(buildUp) ??
      spreadQuestion(withFactorsOfJunctions(project, project.buildUps[buildUp]!), surroundings);
    questions.set(buildUp, question);
    return question.workOut(samples);
  };
}

/** The pool keeps its own data first and ours second. */
function projectOfThread(): Project {
  const data = (Array.isArray(workerData) ? workerData[1] : workerData) as { project: Project };
  return data.project;
}
