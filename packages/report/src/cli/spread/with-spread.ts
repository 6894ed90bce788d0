import { availableParallelism } from "node:os";
import type { BuildUpResult, Project, ProjectResult, SpreadResult } from "@warmside/core";
import { worseSentence } from "../../spread-study/spread-in-words.ts";
import { spreadResult } from "../../spread-study/spread-result.ts";
import type { Listener } from "../calculation/study.ts";
import { groups, type Line, line, paragraph } from "../lines.ts";
import { finished, openStudy, type SpreadChoice, type SpreadStudy } from "./studies.ts";
import { tasksFor, workOutSamples } from "./work-out.ts";
import { startWorkers } from "./workers.ts";

/**
 * Works the spread of every build-up out, one after the other, so that only one holds its samples. The project is
 * assessed while the threads read their code.
 *
 * @param assess - assesses the project
 * @param project - the same project
 * @param choice - samples, seed, workers
 * @param listener - hears how far it is, and can ask what is known so far
 * @returns the result with a spread for every build-up; the same whatever the number of workers
 */
export async function withSpread(
  assess: () => ProjectResult,
  project: Project,
  choice: SpreadChoice,
  listener: Listener,
): Promise<ProjectResult> {
  const workers = await startWorkers(
    project,
    Math.min(choice.workers ?? availableParallelism(), tasksFor(choice.samples)),
  );
  const worked: BuildUpResult[] = [];
  let study: SpreadStudy | null = null;
  listener.before(() => soFar(worked, study));
  const of = project.buildUps.length * choice.samples;
  try {
    const assessed = assess();
    for (const [place, buildUp] of assessed.buildUps.entries()) {
      study = openStudy(project, place, choice);
      await workOutSamples(study, workers, (done) =>
        listener.tell({ unit: "sample", done: place * choice.samples + done, of }),
      );
      worked.push(withSpreadBeside(buildUp, spreadResult({ ...finished(study), stated: buildUp.judgement.word })));
      study = null;
    }
    return { ...assessed, buildUps: worked };
  } finally {
    await workers.close();
  }
}

/** A judgement that is often worse within the spread says so itself, wherever it is shown. */
function withSpreadBeside(buildUp: BuildUpResult, spread: SpreadResult): BuildUpResult {
  const { judgement } = buildUp;
  const worse = worseSentence(spread);
  const beside = worse === "" ? "" : ` ${worse}`;
  const told = { ...judgement, short: `${judgement.short}${beside}`, message: `${judgement.message}${beside}` };
  return { ...buildUp, judgement: told, spread };
}

/** What came of the samples that were done before an interruption. */
function soFar(worked: readonly BuildUpResult[], study: SpreadStudy | null): Line[] {
  const whole = worked.map(({ name, spread }) => [
    line({ colour: "bold", text: name }, `: all ${spread!.samples} samples were done.`),
    paragraph(spread!.message, 2),
  ]);
  return groups(...whole, study === null ? [] : ofStudy(study));
}

function ofStudy(study: SpreadStudy): Line[] {
  const done = finished(study);
  const { count } = done.samples;
  const head = line({ colour: "bold", text: study.buildUp.name }, `: ${count} of ${done.asked} samples were done.`);
  return count === 0 ? [head] : [head, paragraph(spreadResult(done).message, 2)];
}
