/** The command as it is shipped, started as a user starts it: signals, threads, other users, disks, streams of a shell. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { cpSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { beforeAll, describe, expect, it } from "vitest";
import { withFingerprint } from "../../packages/report/src/fingerprint.ts";
import { WRONG_INPUTS, WRONG_OUTPUTS } from "../hostile/command-line/cases.ts";
import { IS_ROOT, isRefused } from "../hostile/command-line/refused.ts";
import { howMany } from "../how-many.ts";
import { bundledCommand, contentsOf, DEMO, ROOT, SMALL_PROJECT } from "./bundled-command.ts";

const command = bundledCommand();

describe("What is shipped", () => {
  it("version is that of the package", async () => {
    const { version } = JSON.parse(
      readFileSync(new URL("../../packages/report/package.json", import.meta.url), "utf8"),
    );
    expect(command.run(["--version"]).out).toBe(`${version}\n`);
  });
});

/** Commander, the names of commands and the beginnings of project files [bytes]. */
const MOST_READ_AT_START = 300_000;

describe("What is read when", () => {
  it("a page is rendered only where one is written", () => {
    const entry = join(command.bundle(), "warmside.mjs");
    const parts = readdirSync(command.bundle());
    const withVega = parts.filter((part) => readFileSync(join(command.bundle(), part), "utf8").includes("vega-lite"));
    expect(withVega).not.toEqual([]);
    expect(withVega.filter((part) => readAtStart(entry).has(part))).toEqual([]);
  });

  it("no more than the command line is read before a command begins: the library comes with its thread", () => {
    const parts = [...readAtStart(command.entry()), "warmside.mjs"];
    const bytes = parts.map((part) => readFileSync(join(command.bundle(), part)).length);
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST_READ_AT_START);
  });

  function readAtStart(entry: string, seen = new Set<string>()): Set<string> {
    for (const [, part] of readFileSync(entry, "utf8").matchAll(
      /^(?:import|\} from|export .* from)[^;]*?"\.\/([^"]+)";$/gms,
    )) {
      if (part === undefined || seen.has(part)) continue;
      seen.add(part);
      readAtStart(join(command.bundle(), part), seen);
    }
    return seen;
  }
});

it.skipIf(process.platform === "win32")("a folder that was removed while one stands in it is told", () => {
  const folder = command.folder();
  writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
  const script = 'mkdir gone && cd gone && rmdir ../gone && exec "$0" "$1" check ../studio.yaml';
  const { status, stdout, stderr } = spawnSync("sh", ["-c", script, process.execPath, command.entry()], {
    cwd: folder,
    env: command.environment(),
    encoding: "utf8",
  });
  expect({ status, stdout, stderr }).toEqual({
    status: 1,
    stdout: "",
    stderr: "The folder you are in is no longer there. Change to another one.\n",
  });
});

/** A copy of the command whose parts that are read later are gone: any use of them is a fault of the program. */
function crippled(): string {
  const folder = command.folder();
  cpSync(command.bundle(), folder, { recursive: true });
  for (const file of readdirSync(folder)) if (/^(render-report|assess)\b/.test(file)) rmSync(join(folder, file));
  return join(folder, "warmside.mjs");
}

describe("Exit 2: a fault of the program", () => {
  it("is told in a short sentence with what to report, and without a stack", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
    const { code, out, err } = await command.run(["assess", "studio.yaml"], { cwd: folder, entry: crippled() });
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(/^This is a fault of warmside, not of your file: /);
    expect(err).toContain("Please report it");
    expect(err).not.toMatch(/\n\s+at /);
    expect(readdirSync(folder)).toEqual(["studio.yaml"]);
  });

  it("shows the stack with WARMSIDE_DEBUG", async () => {
    const { err } = await command.run(["assess", DEMO], { entry: crippled(), env: { WARMSIDE_DEBUG: "1" } });
    expect(err).toMatch(/\n\s+at /);
  });
});

describe("Signals: the old report is whole, and nothing is left beside it", () => {
  const many = SMALL_PROJECT + buildUpAgain(9);
  const endless = SMALL_PROJECT + buildUpAgain(99);

  let oldReport = "";
  beforeAll(() => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
    expect(command.run(["assess", "studio.yaml"], { cwd: folder }).code).toBe(0);
    oldReport = readFileSync(join(folder, "studio-report.html"), "utf8");
  });

  it.each([
    ["SIGINT" as const, { code: 130, signal: null }],
    ["SIGTERM" as const, { code: 143, signal: null }],
    ["SIGHUP" as const, { code: 129, signal: null }],
    ["SIGKILL" as const, { code: null, signal: "SIGKILL" }],
  ])("%s in the middle", async (signal, expected) => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio-report.html"), oldReport);
    writeFileSync(join(folder, "studio.yaml"), many);
    const before = contentsOf(folder);
    const child = started(folder);
    await worked(child, HALF_WAY);
    expect(await endedBy(child, signal)).toEqual(expected);
    expect(contentsOf(folder)).toEqual(before);
  });

  it("what the interruption stopped would have been written", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), many);
    expect(command.run(["assess", "studio.yaml"], { cwd: folder }).code).toBe(0);
    expect(readFileSync(join(folder, "studio-report.html"), "utf8")).toContain("Wall 9");
  });

  it("a signal is heard during the calculation, not after it: little work is done once it has come", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), endless);
    const before = timeWorked("self", "of the children that have ended");
    const child = started(folder);
    await worked(child, 1.5);
    const atSignal = timeWorked(child.pid!);
    expect(await endedBy(child, "SIGINT")).toEqual({ code: 130, signal: null });
    const atEnd = timeWorked("self", "of the children that have ended") - before;
    expect(atEnd - atSignal).toBeLessThan(1);
  });

  it("a reader that has gone when the signal comes is no fault: 130, not a stack", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), endless);
    const words = [command.entry(), "spread", "studio.yaml", "--workers", "1"];
    const child = spawn(process.execPath, words, { cwd: folder, env: command.environment(), stdio: "pipe" });
    await worked(child, 1.5);
    child.stdout.destroy();
    child.stderr.destroy();
    expect(await endedBy(child, "SIGINT")).toEqual({ code: 130, signal: null });
  });

  function started(folder: string): ChildProcess {
    const words = [command.entry(), "assess", "studio.yaml"];
    return spawn(process.execPath, words, { cwd: folder, env: command.environment(), stdio: "ignore" });
  }
});

async function endedBy(
  child: ChildProcess,
  signal: NodeJS.Signals,
): Promise<{ code: number | null; signal: string | null }> {
  const ended = once(child, "close");
  child.kill(signal);
  const [code, by] = await ended;
  return { code, signal: by };
}

/** Time of the processor by which the command has begun and ten build-ups are still being worked out [s]. */
const HALF_WAY = 0.4;
/** The same by which two threads have read their code and worked out samples, most of 200 000 still to come [s]. */
const SAMPLES_ARE_DONE = 5;
const TICKS_PER_SECOND = 100;

/** Waits until a child has used so much time of the processor [s]: however busy the machine is, it is at work then. */
async function worked(child: ChildProcess, seconds: number): Promise<void> {
  while (child.exitCode === null && timeWorked(child.pid!) < seconds) await setTimeout(20);
  expect(child.exitCode).toBe(null);
}

/** Time of the processor that a process has used [s]: its own, or that of its children that have ended. */
function timeWorked(pid: number | "self", whose: "its own" | "of the children that have ended" = "its own"): number {
  const fields = readFileSync(`/proc/${pid}/stat`, "latin1")
    .replace(/^.*\) /, "")
    .split(" ");
  const place = whose === "its own" ? 11 : 13;
  return (Number(fields[place]) + Number(fields[place + 1])) / TICKS_PER_SECOND;
}

function buildUpAgain(count: number): string {
  const one = SMALL_PROJECT.slice(SMALL_PROJECT.indexOf("  - name: Wall"));
  return Array.from({ length: count }, (_, index) => one.replace("name: Wall", `name: Wall ${index + 1}`)).join("");
}

describe("Files of another user", () => {
  const cases = [...WRONG_INPUTS, ...WRONG_OUTPUTS].filter(({ asNobody }) => asNobody === true);

  it.skipIf(!IS_ROOT).each(cases)("$title", (wrong) => isRefused(command, wrong));
});

describe("A disk without room", () => {
  const namespaces = spawnSync("unshare", ["-rm", "true"]).status === 0;

  // A small disk of one's own needs a kernel that gives it to a user.
  it.skipIf(!namespaces)("is told, and the old report is whole", async () => {
    const disk = command.folder();
    const old = await withFingerprint('<meta name="generator" content="warmside"> old\n');
    const script = `set -e
      mount -t tmpfs -o size=64k tmpfs "$1"; cd "$1"
      printf %s "$2" > studio.yaml
      printf %s "$5" > studio-report.html
      code=0; "$3" "$4" assess studio.yaml || code=$?
      echo "code $code"; ls -A; cat studio-report.html`;
    const args = ["-rm", "bash", "-c", script, "bash", disk, SMALL_PROJECT, process.execPath, command.entry(), old];
    const { stdout, stderr } = spawnSync("unshare", args, { encoding: "utf8", env: command.environment() });
    expect(stderr.replaceAll(/\s+/g, " ")).toContain("studio-report.html cannot be written: the disk is full.");
    expect(stdout).toBe(`code 1\nstudio-report.html\nstudio.yaml\n${old}`);
  });

  it("a limit on the size of files is told, and nothing is left", () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
    const script = 'ulimit -f 8; exec "$1" "$2" assess studio.yaml';
    const args = ["-c", script, "bash", process.execPath, command.entry()];
    const ended = spawnSync("bash", args, { cwd: folder, encoding: "utf8", env: command.environment() });
    expect(ended.status).toBe(1);
    expect(ended.stderr).toContain("studio-report.html cannot be written");
    expect(Object.keys(contentsOf(folder))).toEqual(["studio.yaml"]);
  });

  it("behind standard output is told with exit 1; a reader that stops early is no fault", () => {
    const shell = (script: string): { status: number | null; stderr: string } =>
      spawnSync("bash", ["-c", script, "bash", process.execPath, command.entry()], {
        encoding: "utf8",
        env: command.environment(),
      });
    const full = shell('"$1" "$2" materials > /dev/full');
    expect(full.status).toBe(1);
    expect(full.stderr).toContain("Output is incomplete");
    const early = shell('set -o pipefail; "$1" "$2" schema | head -c 10 > /dev/null');
    expect(early).toMatchObject({ status: 0, stderr: "" });
  });
});

describe("spread on threads", () => {
  let file = "";

  beforeAll(() => {
    const folder = command.folder();
    // Where an installed command finds the packages it does not carry.
    symlinkSync(join(ROOT, "packages/report/node_modules"), join(folder, "..", "node_modules"));
    file = join(folder, "shed.yaml");
    writeFileSync(file, SMALL_PROJECT);
  });

  it("the same seed gives the same bytes, whatever the number of threads", () => {
    const runs = ["1", "3", "2"]
      .slice(0, howMany(2, 3))
      .map((workers) => command.run(["spread", file, "--samples", "1300", "--workers", workers, "--json"]));
    for (const run of runs) expect([run.code, run.err]).toEqual([0, ""]);
    for (const { out } of runs) expect(out).toBe(runs[0]!.out);
    expect(JSON.parse(runs[0]!.out).buildUps[0].spread).toMatchObject({ samples: 1300, asked: 1300, seed: 1 });
  });

  it.each(["2", "1"].slice(0, howMany(1, 2)))(
    "Ctrl-C on %s thread(s): tells what was done, writes nothing, ends with 130",
    async (workers) => {
      const words = ["spread", file, "--samples", "200000", "--workers", workers];
      const child = spawn(process.execPath, [command.entry(), ...words], { env: command.environment() });
      let out = "";
      let err = "";
      child.stdout.on("data", (text) => {
        out += text;
      });
      child.stderr.on("data", (text) => {
        err += text;
      });
      const ended = once(child, "close");
      await worked(child, SAMPLES_ARE_DONE);
      child.kill("SIGINT");
      const [code] = await ended;
      expect(code).toBe(130);
      const [, done] = /Wall: (\d+) of 200000 samples were done\./.exec(out) ?? [];
      expect(Number(done)).toBeGreaterThan(0);
      expect(out).toMatch(/The judgement is/);
      expect(err).toContain("Interrupted.");
    },
  );
});
