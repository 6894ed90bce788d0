import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Project, SpreadOutcomes } from "@warmside/core";
import { threadLost } from "../calculation/thread-lost.ts";
import { breathe } from "../interruption.ts";
import type { SpreadTask } from "./spread-worker.ts";

/** Who works on samples: threads, or the command's own. */
export interface Workers {
  /** Tasks to hand over at once, so that no thread waits for the next. */
  atOnce: number;
  workOut: (task: SpreadTask) => Promise<SpreadOutcomes>;
  close: () => Promise<void>;
}

/** Memory for short-lived values of a worker [MB]: more of it means less time for garbage collection. */
const YOUNG_GENERATION = 64;

/** Where the bundle puts the worker: beside the command. */
const WORKER_FILE = fileURLToPath(new URL("./spread-worker.mjs", import.meta.url));

/**
 * Starts threads where more than one is wanted and the bundled worker stands beside this file. They read their code
 * while the command goes on with its own work.
 *
 * @param project - the project
 * @param count - threads, at least 1; with 1 the work is done in the command's own
 * @param filename - what each thread runs
 * @returns to be closed when the work is done
 */
export async function startWorkers(project: Project, count: number, filename: string = WORKER_FILE): Promise<Workers> {
  return count === 1 || !existsSync(filename) ? workHere(project) : workOnThreads(project, count, filename);
}

/** One task after the other in this thread, with a breath in between. */
async function workHere(project: Project): Promise<Workers> {
  const { workerFor } = await import("./spread-worker.ts");
  const workOut = workerFor(project);
  return {
    atOnce: 1,
    workOut: async (task) => {
      await breathe();
      return workOut(task);
    },
    close: async () => undefined,
  };
}

async function workOnThreads(project: Project, count: number, filename: string): Promise<Workers> {
  const { Piscina } = await import("piscina");
  const pool = new Piscina({
    filename,
    name: "workOutTask",
    workerData: { project },
    minThreads: count,
    maxThreads: count,
    concurrentTasksPerWorker: 1,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_GENERATION },
  });
  return {
    atOnce: 2 * count,
    workOut: (task) => pool.run(task).catch(thrown),
    close: () => pool.destroy(),
  };
}

/** The failure of a task: a lost thread is reported as such, anything else is a fault of the program. */
function thrown(error: Error & { code?: string }): never {
  const isGone = error.code === "ERR_WORKER_OUT_OF_MEMORY" || error.message.startsWith("worker exited");
  throw isGone ? threadLost(error) : error;
}
