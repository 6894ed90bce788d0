import type { SpreadTask } from "./spread-worker.ts";
import { noteOutcomes, type SpreadStudy } from "./studies.ts";
import type { Workers } from "./workers.ts";

/** Samples in one task: few enough for frequent progress, many enough that handing a task over costs next to nothing. */
export const SAMPLES_PER_TASK = 250;

/**
 * Works all samples of a study out.
 *
 * @param study - filled in place
 * @param workers - who works
 * @param reached - called with the count of samples that are done
 */
export async function workOutSamples(
  study: SpreadStudy,
  workers: Workers,
  reached: (samples: number) => void,
): Promise<void> {
  const tasks = tasksOf(study);
  let done = 0;
  const takeTasks = async (): Promise<void> => {
    for (const task of tasks) {
      noteOutcomes(study, task.from, await workers.workOut(task));
      done += task.samples.count;
      reached(done);
    }
  };
  await Promise.all(Array.from({ length: workers.atOnce }, takeTasks));
}

/** One task after the other, each cut out when it is handed over. */
function* tasksOf({ samples, place }: SpreadStudy): Generator<SpreadTask> {
  const { count, dimensions, values } = samples;
  for (let from = 0; from < count; from += SAMPLES_PER_TASK) {
    const until = Math.min(count, from + SAMPLES_PER_TASK);
    const part = values.slice(from * dimensions, until * dimensions);
    yield { buildUp: place, from, samples: { count: until - from, dimensions, values: part } };
  }
}

/** Tasks that so many samples are cut into. */
export function tasksFor(samples: number): number {
  return Math.ceil(samples / SAMPLES_PER_TASK);
}
