import type { SpreadTask } from "./spread-worker.ts";
import { noteOutcomes, type Study } from "./studies.ts";
import type { Workers } from "./workers.ts";

/** Samples in one task: short enough for a lively progress, long enough that handing it over costs nothing. */
export const SAMPLES_PER_TASK = 250;

/**
 * Works all samples of the studies out.
 *
 * @param studies - filled in place
 * @param workers - who works
 * @param advance - called with the samples of every task that is done
 */
export async function workOutStudies(
  studies: readonly Study[],
  workers: Workers,
  advance: (samples: number) => void,
): Promise<void> {
  const tasks = studies.flatMap(tasksOf).values();
  const takeTasks = async (): Promise<void> => {
    for (const task of tasks) {
      noteOutcomes(studies[task.buildUp]!, task.from, await workers.workOut(task));
      advance(task.samples.count);
    }
  };
  await Promise.all(Array.from({ length: workers.atOnce }, takeTasks));
}

function tasksOf({ samples }: Study, buildUp: number): SpreadTask[] {
  const { count, dimensions, values } = samples;
  return Array.from({ length: tasksFor(count) }, (_, task) => {
    const from = task * SAMPLES_PER_TASK;
    const until = Math.min(count, from + SAMPLES_PER_TASK);
    const part = values.slice(from * dimensions, until * dimensions);
    return { buildUp, from, samples: { count: until - from, dimensions, values: part } };
  });
}

/** Tasks that so many samples are cut into. */
export function tasksFor(samples: number): number {
  return Math.ceil(samples / SAMPLES_PER_TASK);
}
