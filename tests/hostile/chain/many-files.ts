import { assessProject, problemInText, readProject, wordProblem } from "@warmside/core";
import fc from "fast-check";
import { lawsBroken } from "./lawful-result.ts";
import { projectFiles } from "./random-project-files.ts";
import { REFUSED_TOGETHER } from "./run-chain.ts";

/**
 * A great many random valid project files, each read and assessed to its whole result, findings and remedies included:
 * finite and lawful. Run by `many-files.mjs COUNT SEED [SECONDS [PATH]]`; a million take hours and are no part of the tests.
 * A file that is not lawful is told with its path in the seed, and the run goes on; with that path it is run alone.
 */
const [count = 1000, seed = 1, seconds = Number.POSITIVE_INFINITY] = process.argv.slice(2, 5).map(Number);
const path = process.argv[5];
const begun = performance.now();
let done = 0;
let refused = 0;
let unlawful = 0;
let slowest = 0;

const property = fc.property(projectFiles, ({ text, supplies }) => {
  const at = processorTime();
  const fault = faultOf(text, supplies);
  if (fault !== null) {
    unlawful += 1;
    process.stdout.write(`Not lawful: path ${path ?? done}: ${fault}\n${path === undefined ? "" : `${text}\n`}`);
  }
  done += 1;
  slowest = Math.max(slowest, processorTime() - at);
  if (done % 10_000 === 0) tell("so far");
});

/** What a file does that it must not, in words; null where its result is lawful, or it is refused as a whole. */
function faultOf(text: string, supplies: Parameters<typeof readProject>[1]): string | null {
  try {
    const reading = readProject(text, supplies);
    if (reading.ok) return lawsBroken(assessProject(reading.value)).join("; ") || null;
    refused += 1;
    const others = reading.problems.filter(({ code }) => !REFUSED_TOGETHER.includes(code));
    return others.map((problem) => problemInText(wordProblem(problem))).join("; ") || null;
  } catch (error) {
    return (error as Error).stack ?? String(error);
  }
}

/** [ms] */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function tell(how: string): void {
  const took = Math.round((performance.now() - begun) / 1000);
  const away = `${refused} of them refused as a whole (a room that cannot exist, too much insulation)`;
  process.stdout.write(
    `${done} files of seed ${seed} ${how}, ${unlawful} not lawful, ${away}, ${took} s, slowest ${Math.round(slowest)} ms of processor time\n`,
  );
}

fc.assert(property, {
  numRuns: path === undefined ? count : 1,
  seed,
  ...(path === undefined ? {} : { path }),
  ...(Number.isFinite(seconds) ? { interruptAfterTimeLimit: seconds * 1000 } : {}),
});
tell("done");
if (unlawful > 0) process.exitCode = 1;
