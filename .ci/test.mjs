/**
 * Runs everything that must hold: types, lint, tests. Prints what failed and, alone on the last line, the counts.
 * `--long` takes in what is too slow for every day; other arguments go to vitest (parts of file names, `-t TITLE`).
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const long = process.argv.includes("--long");
const passedOn = process.argv.slice(2).filter((argument) => argument !== "--long");
const counts = { passed: 0, failed: 0, skipped: 0 };

check("types", ["node_modules/typescript/bin/tsc", "-b"]);
check("lint", ["node_modules/@biomejs/biome/bin/biome", "check", "--error-on-warnings", "--max-diagnostics=50", "."]);
runTests();

const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : "";
console.log(`\n${counts.passed} passed, ${counts.failed} failed${skipped}`);
process.exitCode = counts.failed === 0 ? 0 : 1;

/** One check that counts as one: quiet when it holds, its whole output when not. */
function check(name, command) {
  const done = spawnSync(process.execPath, command, { cwd: root, encoding: "utf8" });
  const holds = done.status === 0;
  counts[holds ? "passed" : "failed"] += 1;
  console.log(
    holds ? `ok     ${name}` : `FAILED ${name}\n${done.stdout ?? ""}${done.stderr ?? ""}${done.error?.message ?? ""}`,
  );
}

/** The tests, in a process of their own: if it falls over before it has counted, that is a failure too. */
function runTests() {
  const folder = mkdtempSync(join(tmpdir(), "warmside-tests-"));
  const countsFile = join(folder, "counts.json");
  const reporter = join(root, ".ci", "count-tests.mjs");
  const done = spawnSync(
    process.execPath,
    ["node_modules/vitest/vitest.mjs", "run", `--reporter=${reporter}`, ...passedOn],
    {
      cwd: root,
      stdio: ["ignore", "inherit", "inherit"],
      // CI: a snapshot that is missing fails instead of being written, and no test may be singled out.
      env: {
        ...process.env,
        CI: "1",
        WARMSIDE_TEST_COUNTS: countsFile,
        ...(long ? { WARMSIDE_LONG: "1" } : {}),
        ...(process.stdout.isTTY ? {} : { NO_COLOR: "1" }),
      },
    },
  );
  const found = readCounts(countsFile);
  rmSync(folder, { recursive: true, force: true });
  for (const kind of ["passed", "failed", "skipped"]) counts[kind] += found?.[kind] ?? 0;
  const silentFailure = done.status !== 0 && !found?.failed;
  const nothingRun = (found?.passed ?? 0) + (found?.failed ?? 0) + (found?.skipped ?? 0) === 0;
  if (silentFailure || nothingRun) {
    counts.failed += 1;
    console.log(
      `FAILED the test run (ended with ${done.status ?? done.signal}${nothingRun ? ", no test was run" : ""})`,
    );
  }
}

function readCounts(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return null;
  }
}
