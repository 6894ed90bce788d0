import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Project } from "@warmside/core";
import { breathe, whenInterrupted } from "../interruption.ts";
import type { SpreadTask } from "./spread-worker.ts";
import { noteOutcomes, type Study } from "./studies.ts";

/** Samples in one task: short enough for a lively progress, long enough that handing it over costs nothing. */
export const SAMPLES_PER_TASK = 250;

/** Memory for short-lived values of a worker [MB]: with more of it less time goes into clearing away. */
const YOUNG_GENERATION = 64;

/** Where the bundle puts the worker: beside the command. */
const WORKER_FILE = new URL("./spread-worker.mjs", import.meta.url);

/**
 * Works all samples of the studies out, on several threads where the bundled worker stands beside this file.
 *
 * @param project - the project
 * @param studies - filled in place
 * @param workers - threads, at least 1; with 1 the work is done in this one
 * @param advance - called with the samples of every task that is done
 */
export async function workOutStudies(
  project: Project,
  studies: readonly Study[],
  workers: number,
  advance: (samples: number) => void,
): Promise<void> {
  const tasks = studies.flatMap((study, place) => tasksOf(study, place));
  const filename = fileURLToPath(WORKER_FILE);
  if (workers === 1 || tasks.length === 1 || !existsSync(filename)) {
    await workHere(project, studies, tasks, advance);
    return;
  }
  const { Piscina } = await import("piscina");
  const pool = new Piscina({
    filename,
    name: "workOutTask",
    workerData: { project },
    minThreads: Math.min(workers, tasks.length),
    maxThreads: Math.min(workers, tasks.length),
    concurrentTasksPerWorker: 1,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_GENERATION },
  });
  const forget = whenInterrupted(() => void pool.destroy().catch(() => undefined));
  try {
    await Promise.all(
      tasks.map(async (task) => {
        noteOutcomes(studies[task.buildUp]!, task.from, await pool.run(task));
        advance(task.samples.count);
      }),
    );
  } finally {
    forget();
    await pool.destroy();
  }
}

/** One task after the other in this thread, with a breath in between. */
async function workHere(
  project: Project,
  studies: readonly Study[],
  tasks: readonly SpreadTask[],
  advance: (samples: number) => void,
): Promise<void> {
  const { workerFor } = await import("./spread-worker.ts");
  const workOut = workerFor(project);
  for (const task of tasks) {
    noteOutcomes(studies[task.buildUp]!, task.from, workOut(task));
    advance(task.samples.count);
    await breathe();
  }
}

function tasksOf({ samples }: Study, buildUp: number): SpreadTask[] {
  const { count, dimensions, values } = samples;
  return Array.from({ length: Math.ceil(count / SAMPLES_PER_TASK) }, (_, task) => {
    const from = task * SAMPLES_PER_TASK;
    const until = Math.min(count, from + SAMPLES_PER_TASK);
    const part = values.slice(from * dimensions, until * dimensions);
    return { buildUp, from, samples: { count: until - from, dimensions, values: part } };
  });
}
