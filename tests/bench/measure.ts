/** Rounds of a measurement; the median of them counts, so that one interrupted round does not. */
export const ROUNDS = 15;

/**
 * Time of one thing over the time of another, measured by turns: what slows one round slows both.
 *
 * @param above - measured
 * @param below - measured against
 * @returns median of the rounds' ratios, and the median times of both [s]
 */
export function ratioOf(
  above: Measured,
  below: Measured,
  rounds: number = ROUNDS,
): { ratio: number; above: number; below: number } {
  const ratios: number[] = [];
  const times: [number[], number[]] = [[], []];
  warmUp(above);
  warmUp(below);
  for (let round = 0; round < rounds; round += 1) {
    const first = timeOfRound(above.work, above.calls);
    const second = timeOfRound(below.work, below.calls);
    times[0].push(first);
    times[1].push(second);
    ratios.push(first / second);
  }
  return { ratio: median(ratios), above: median(times[0]), below: median(times[1]) };
}

/** Something to be measured, and how often in a round. */
export interface Measured {
  work: (call: number) => number;
  calls: number;
}

/** Long enough for the engine to have compiled all of it for good [s]. */
const WARM_UP = 1;

function warmUp({ work, calls }: Measured): void {
  for (let spent = 0; spent < WARM_UP; ) spent += timeOfRound(work, calls) * calls;
}

/** Sum of the measured calls' results, kept so that no engine can optimise them away. */
let kept = 0;

/** Processor time of a call: what else the machine does meanwhile does not count, what the engine clears away does. */
function timeOfRound(work: (call: number) => number, calls: number): number {
  const start = process.cpuUsage();
  for (let call = 0; call < calls; call += 1) kept += work(call);
  const { user, system } = process.cpuUsage(start);
  if (!Number.isFinite(kept)) throw new Error("a measured call gave no finite number");
  return (user + system) / MICROSECONDS_PER_SECOND / calls;
}

const MICROSECONDS_PER_SECOND = 1e6;

/** The middle of a list of numbers. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
