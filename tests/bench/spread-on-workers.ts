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
    for (let round = 0; round < ROUNDS; round += 1) {
      const one = timeOfSpread(wall, 1);
      const two = timeOfSpread(wall, 2);
      gains.push(one / two);
      times.push(two);
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
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Keeps a process to one core where the system can: else the engine clears memory away on the other meanwhile. */
const ONE_CORE: readonly string[] =
  spawnSync("taskset", ["-c", "0", "true"]).status === 0 ? ["taskset", "-c", "0"] : [];

function timeOfSpread(file: string, workers: number): number {
  const before = workers === 1 ? ONE_CORE : [];
  const spread = [COMMAND, "spread", file, "--samples", String(SAMPLES), "--workers", String(workers), "--json"];
  const [program, ...words] = [...before, process.execPath, ...spread];
  const start = performance.now();
  const done = spawnSync(program!, words, { encoding: "utf8", maxBuffer: 1e8 });
  if (done.status !== 0) throw new Error(`${words.join(" ")} ended with ${done.status}: ${done.stderr}`);
  return (performance.now() - start) / 1000;
}
