import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "yaml";
import { median } from "./measure.ts";
import { COMMAND, DEMO } from "./start.ts";
import type { Measure } from "./table.ts";

const SAMPLES = 100_000;
const ROUNDS = 3;

/** The spread of the demo's first wall by the command: on one core and on two, by turns. */
export function spreadOnWorkers(): Measure[] {
  if (availableParallelism() < 2) return [];
  const folder = mkdtempSync(join(tmpdir(), "warmside-bench-"));
  const wall = join(folder, "wall.json");
  const demo = parse(readFileSync(DEMO, "utf8"));
  writeFileSync(wall, JSON.stringify({ ...demo, "build-ups": demo["build-ups"].slice(0, 1) }));
  try {
    const gains: number[] = [];
    const times: number[] = [];
    const ofMachine: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const one = timeOfSpread(wall, 1);
      const two = timeOfSpread(wall, 2);
      gains.push(one / two);
      times.push(two);
      if (ONE_CORE.length > 0) ofMachine.push((2 * one) / timeOfTwoAtOnce(wall));
    }
    return [
      {
        name: "spreadTime",
        value: median(times),
        unit: "s",
        goal: { atMost: 7 },
        what: "100 000 samples of the demo's first wall to a judgement, on two cores, from a cold start",
      },
      {
        name: "spreadGain",
        value: median(gains),
        unit: "times",
        goal: { atLeast: 1.8 },
        what: ONE_CORE.length > 0 ? "the same kept to one core over two" : "the same on one thread over two",
      },
      ...(ofMachine.length === 0 ? [] : [gainOfMachine(median(ofMachine))]),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Keeps a process to one core where the system can: else the engine clears memory away on the other meanwhile. */
const ONE_CORE: readonly string[] =
  spawnSync("taskset", ["-c", "0", "true"]).status === 0 ? ["taskset", "-c", "0"] : [];

/** What two cores can gain at most: they share memory, and with some machines more than that. */
function gainOfMachine(value: number): Measure {
  return {
    name: "machineGain",
    value,
    unit: "times",
    goal: null,
    what: "two such commands at once, each kept to a core of its own, over one after the other: the most to be had",
  };
}

/** Time of two commands at once, each with one thread on a core of its own [s]. */
function timeOfTwoAtOnce(file: string): number {
  const one = `"$0" "$1" spread "$2" --samples ${SAMPLES} --workers 1 --json > /dev/null`;
  const start = performance.now();
  const script = `taskset -c 0 ${one} & taskset -c 1 ${one}; code=$?; wait $! && exit $code`;
  const done = spawnSync("sh", ["-c", script, process.execPath, COMMAND, file]);
  if (done.status !== 0) throw new Error(`two at once ended with ${done.status}`);
  return (performance.now() - start) / 1000;
}

function timeOfSpread(file: string, workers: number): number {
  const before = workers === 1 ? ONE_CORE : [];
  const spread = [COMMAND, "spread", file, "--samples", String(SAMPLES), "--workers", String(workers), "--json"];
  const [program, ...words] = [...before, process.execPath, ...spread];
  const start = performance.now();
  const done = spawnSync(program!, words, { encoding: "utf8", maxBuffer: 1e8 });
  if (done.status !== 0) throw new Error(`${words.join(" ")} ended with ${done.status}: ${done.stderr}`);
  return (performance.now() - start) / 1000;
}
