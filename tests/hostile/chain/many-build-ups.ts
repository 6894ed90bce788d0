import { type CalculationOptions, calculateBuildUp, moistureResult } from "@warmside/core";
import fc from "fast-check";
import { firstNotFinite } from "../../laws/every-number.ts";
import { situations } from "../../laws/random-build-ups.ts";
import { lawsOfMoistureBroken } from "./lawful-result.ts";

/**
 * A great many random build-ups to their result, each with the dry and the unfavourable μ: finite and lawful.
 * Run by `many-build-ups.mjs COUNT SEED [SECONDS]`; it takes hours for a million and is no part of the tests.
 */
const [count = 1000, seed = 1, seconds = Number.POSITIVE_INFINITY] = process.argv.slice(2).map(Number);
const ways: CalculationOptions["vapourResistance"][] = ["dry", "unfavourable"];
const begun = performance.now();
let done = 0;
let slowest = 0;

const property = fc.property(situations, ({ buildUp, site }) => {
  const at = performance.now();
  for (const vapourResistance of ways) {
    const calculation = calculateBuildUp(buildUp, site, { vapourResistance });
    const notFinite = firstNotFinite(calculation);
    const broken = [...(notFinite === null ? [] : [notFinite]), ...lawsOfMoistureBroken(moistureResult(calculation))];
    if (broken.length > 0) throw new Error(broken.join("; "));
  }
  slowest = Math.max(slowest, performance.now() - at);
  done += 1;
  if (done % 10_000 === 0) tell("so far");
});

function tell(how: string): void {
  const took = Math.round((performance.now() - begun) / 1000);
  process.stdout.write(`${done} build-ups of seed ${seed} ${how}, ${took} s, slowest ${Math.round(slowest)} ms\n`);
}

fc.assert(property, {
  numRuns: count,
  seed,
  endOnFailure: true,
  ...(Number.isFinite(seconds) ? { interruptAfterTimeLimit: seconds * 1000 } : {}),
});
tell("lawful");
