import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { median } from "./measure.ts";
import { WALLS } from "./over-floor.ts";
import { sixLayerWall, surroundings } from "./six-layer-wall.ts";
import type { Measure } from "./table.ts";

/** Few enough that no garbage collection runs meanwhile. */
const CALLS = 60;
const ROUNDS = 15;

/** Bytes that one calculation asks of the engine, on its heap and in blocks of numbers beside it. */
export function bytesPerCall(): Measure[] {
  setFlagsFromString("--expose-gc");
  const clearAway = runInNewContext("gc") as () => void;
  const site = surroundings().sites.reported;
  const wall = sixLayerWall(WALLS.dry);
  const rounds: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    clearAway();
    const before = bytesInUse();
    for (let call = 0; call < CALLS; call += 1) calculateBuildUp(wall, site);
    rounds.push((bytesInUse() - before) / CALLS);
  }
  return [
    {
      name: "bytesPerAssessment",
      value: median(rounds),
      unit: "bytes",
      goal: null,
      what: "allocated by one calculation (heat, vapour and year)",
    },
  ];
}

function bytesInUse(): number {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}
