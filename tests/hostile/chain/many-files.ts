import { assessProject, problemInText, readProject, wordProblem } from "@warmside/core";
import fc from "fast-check";
import { lawsBroken } from "./lawful-result.ts";
import { projectFiles } from "./random-project-files.ts";
import { REFUSED_TOGETHER } from "./run-chain.ts";

/**
 * A great many random valid project files, each read and assessed to its whole result, findings and remedies included:
 * finite and lawful. Run by `many-files.mjs COUNT SEED [SECONDS]`; a million take hours and are no part of the tests.
 */
const [count = 1000, seed = 1, seconds = Number.POSITIVE_INFINITY] = process.argv.slice(2).map(Number);
const begun = performance.now();
let done = 0;
let refused = 0;
let slowest = 0;

const property = fc.property(projectFiles, ({ text, supplies }) => {
  const at = processorTime();
  const reading = readProject(text, supplies);
  done += 1;
  if (reading.ok) {
    const broken = lawsBroken(assessProject(reading.value));
    if (broken.length > 0) throw new Error(broken.join("; "));
  } else {
    const others = reading.problems.filter(({ code }) => !REFUSED_TOGETHER.includes(code));
    if (others.length > 0) throw new Error(others.map((problem) => problemInText(wordProblem(problem))).join("; "));
    refused += 1;
  }
  slowest = Math.max(slowest, processorTime() - at);
  if (done % 10_000 === 0) tell("so far");
});

/** [ms] */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function tell(how: string): void {
  const took = Math.round((performance.now() - begun) / 1000);
  const away = `${refused} of them refused as a whole (a room that cannot exist, too much insulation)`;
  process.stdout.write(
    `${done} files of seed ${seed} ${how}, ${away}, ${took} s, slowest ${Math.round(slowest)} ms of processor time\n`,
  );
}

fc.assert(property, {
  numRuns: count,
  seed,
  endOnFailure: true,
  ...(Number.isFinite(seconds) ? { interruptAfterTimeLimit: seconds * 1000 } : {}),
});
tell("lawful");
