import { writeSync } from "node:fs";
import { availableParallelism } from "node:os";
import { assessProject, type BuildUpResult, type Project, type ProjectResult } from "@warmside/core";
import { spreadResult } from "../../spread-study/spread-result.ts";
import type { CommandContext } from "../command-context.ts";
import { whenInterrupted } from "../interruption.ts";
import { groups, type Line, line, paragraph } from "../lines.ts";
import { textFor } from "../terminal.ts";
import { progressOn } from "./progress.ts";
import { finished, openStudies, type SpreadChoice, type Study } from "./studies.ts";
import { tasksFor, workOutStudies } from "./work-out.ts";
import { startWorkers, type Workers } from "./workers.ts";

/**
 * Assesses a project and works out the spread of every build-up. Interrupted, it prints what was done by then.
 *
 * @param project - the project
 * @param choice - samples, seed, workers
 * @param context - what it is printed on
 * @returns the result with a spread for every build-up; the same whatever the number of workers
 */
export async function assessWithSpread(
  project: Project,
  choice: SpreadChoice,
  context: CommandContext,
): Promise<ProjectResult> {
  const tasks = project.buildUps.length * tasksFor(choice.samples);
  const workers = await startWorkers(project, Math.min(choice.workers ?? availableParallelism(), tasks));
  try {
    const assessed = assessProject(project);
    const studies = openStudies(project, choice);
    await workOutWithProgress(studies, workers, context);
    return { ...assessed, buildUps: assessed.buildUps.map((buildUp, index) => withSpread(buildUp, studies[index]!)) };
  } finally {
    await workers.close();
  }
}

/** The work itself, with a line that tells how far it is; interrupted, it prints what was done by then. */
async function workOutWithProgress(
  studies: readonly Study[],
  workers: Workers,
  context: CommandContext,
): Promise<void> {
  const asked = studies.reduce((sum, { samples }) => sum + samples.count, 0);
  const progress = progressOn(process.stderr, asked);
  const forget = whenInterrupted(() => {
    progress.clear();
    writeSync(STANDARD_OUTPUT, textFor(soFar(studies), context.answers));
  });
  try {
    await workOutStudies(studies, workers, progress.advance);
  } finally {
    forget();
    progress.clear();
  }
}

const STANDARD_OUTPUT = 1;

function withSpread(buildUp: BuildUpResult, study: Study): BuildUpResult {
  return { ...buildUp, spread: spreadResult(finished(study)) };
}

/** What came of the samples that were done before an interruption. */
function soFar(studies: readonly Study[]): Line[] {
  const told = studies.map((study) => {
    const done = finished(study);
    const { count } = done.samples;
    const head = line({ colour: "bold", text: study.buildUp.name }, `: ${count} of ${done.asked} samples were done.`);
    return count === 0 ? [head] : [head, paragraph(spreadResult(done).message, 2)];
  });
  return groups(...told);
}
