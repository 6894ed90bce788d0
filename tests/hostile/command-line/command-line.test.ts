import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { bundledCommand, contentsOf, SMALL_PROJECT } from "../../report/bundled-command.ts";
import { type HostileCase, WRONG_INPUTS, WRONG_LINES, WRONG_OUTPUTS } from "./cases.ts";

const command = bundledCommand();

/** A user without special rights. */
const NOBODY = 65534;
/** Longest that any refusal may take, the start of Node included [ms]. */
const LONGEST = 2000;
const isRoot = process.getuid?.() === 0;

function isRefused({ args, says, prepare, env = {}, asNobody }: HostileCase): void {
  const folder = join(command.folder(), "work");
  mkdirSync(folder);
  chmodSync(folder, 0o777);
  writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
  prepare?.(folder);
  const before = contentsOf(folder);
  const uid = asNobody === true && isRoot ? { uid: NOBODY } : {};
  const begun = performance.now();
  const { code, out, err } = command.run(args, { cwd: folder, env, ...uid });
  expect(performance.now() - begun, "milliseconds").toBeLessThan(LONGEST);
  expect(err.replaceAll(/\s+/g, " ")).toContain(says);
  expect(err).not.toMatch(/\n\s+at |^Error|undefined|\[object/m);
  expect(out).toBe("");
  expect(code).toBe(1);
  expect(contentsOf(folder)).toEqual(before);
}

describe("Command lines that cannot be read: exit 1, a plain message, nothing written", () => {
  it.each(WRONG_LINES)("$title", isRefused);
});

describe("Files that cannot be what is asked for: exit 1, a plain message, nothing written", () => {
  it.each(WRONG_INPUTS)("$title", isRefused);
});

describe("Places where nothing may be written: exit 1, a plain message, nothing written or lost", () => {
  it.each(WRONG_OUTPUTS)("$title", isRefused);
});

describe("A disk without room", () => {
  const namespaces = spawnSync("unshare", ["-rm", "true"]).status === 0;

  // A small disk of one's own needs a kernel that gives it to a user.
  it.skipIf(!namespaces)("is told, and the old report is whole", () => {
    const disk = command.folder();
    const script = `set -e
      mount -t tmpfs -o size=64k tmpfs "$1"; cd "$1"
      printf %s "$2" > studio.yaml
      echo '<meta name="generator" content="warmside"> old' > studio-report.html
      code=0; "$3" "$4" assess studio.yaml || code=$?
      echo "code $code"; ls -A; cat studio-report.html`;
    const args = ["-rm", "bash", "-c", script, "bash", disk, SMALL_PROJECT, process.execPath, command.entry()];
    const { stdout, stderr } = spawnSync("unshare", args, { encoding: "utf8", env: command.environment() });
    expect(stderr.replaceAll(/\s+/g, " ")).toContain("studio-report.html cannot be written: the disk is full.");
    expect(stdout).toBe('code 1\nstudio-report.html\nstudio.yaml\n<meta name="generator" content="warmside"> old\n');
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
    expect(full.stderr).toContain("The answer could not be printed whole");
    const early = shell('set -o pipefail; "$1" "$2" schema | head -c 10 > /dev/null');
    expect(early).toMatchObject({ status: 0, stderr: "" });
  });
});
