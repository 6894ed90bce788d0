import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { bundledCommand, contentsOf, DEMO, SMALL_PROJECT } from "./bundled-command.ts";

const command = bundledCommand();

/** A copy of the command whose parts that are read later are gone: any use of them is a fault of the program. */
function crippled(): string {
  const folder = command.folder();
  cpSync(command.bundle(), folder, { recursive: true });
  for (const file of readdirSync(folder)) if (/^(render-report|assess)\b/.test(file)) rmSync(join(folder, file));
  return join(folder, "warmside.mjs");
}

describe("Exit 0: done, and a bad building is an answer", () => {
  it("assess of the demo", () => {
    const { code, err } = command.run(["assess", DEMO, "--out", join(command.folder(), "report.html")]);
    expect(err).toBe("");
    expect(code).toBe(0);
  });

  it("assess of a build-up that must be changed", () => {
    const folder = command.folder();
    const bad = SMALL_PROJECT.replace("      - { material: polyethylene sheet 0.15 mm }\n", "").replace(
      "material: breather membrane",
      "material: polyethylene sheet 0.15 mm",
    );
    writeFileSync(join(folder, "bad.yaml"), bad);
    const { code, out } = command.run(["assess", "bad.yaml"], { cwd: folder });
    expect(out).toContain("Wall: change it");
    expect(code).toBe(0);
  });

  it.each([["--help"], ["--version"], ["assess --help"], ["help check"], ["-h"], ["-V"]])("%s", (line) => {
    const { code, out, err } = command.run(line.split(" "));
    expect(code).toBe(0);
    expect(out).not.toBe("");
    expect(err).toBe("");
  });
});

describe("Exit 1: something is wrong with what was given", () => {
  it.each([[""], ["frobnicate"], ["assess"], ["assess no-such.yaml"], ["check --pdf x.yaml"], ["explain frobnicate"]])(
    "warmside %s",
    (line) => {
      const { code, out, err } = command.run(line.split(" ").filter((word) => word !== ""));
      expect(code).toBe(1);
      expect(out).toBe("");
      expect(err).not.toBe("");
    },
  );

  it("a project file with a problem", () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT.replace("140 mm", "140"));
    for (const verb of ["check", "assess"]) {
      const { code, out, err } = command.run([verb, "studio.yaml"], { cwd: folder });
      expect(code).toBe(1);
      expect(out).toBe("");
      expect(err).toContain("studio.yaml, line 10");
    }
    expect(readdirSync(folder)).toEqual(["studio.yaml"]);
  });
});

describe("Exit 2: a fault of the program", () => {
  it("is told in a short sentence with what to report, and without a stack", () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
    const { code, out, err } = command.run(["assess", "studio.yaml"], { cwd: folder, entry: crippled() });
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(/^A fault of warmside itself, not of your file: /);
    expect(err).toContain("Please report it");
    expect(err).not.toMatch(/\n\s+at /);
    expect(readdirSync(folder)).toEqual(["studio.yaml"]);
  });

  it("shows the stack with WARMSIDE_DEBUG", () => {
    const { err } = command.run(["assess", DEMO], { entry: crippled(), env: { WARMSIDE_DEBUG: "1" } });
    expect(err).toMatch(/\n\s+at /);
  });
});

describe("Exit 130: interrupted, and the old report is whole", () => {
  const many = SMALL_PROJECT + buildUpAgain(20);

  it.each([
    ["SIGINT" as const, { code: 130, signal: null }],
    ["SIGKILL" as const, { code: null, signal: "SIGKILL" }],
  ])("%s in the middle", async (signal, expected) => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
    expect(command.run(["assess", "studio.yaml"], { cwd: folder }).code).toBe(0);
    writeFileSync(join(folder, "studio.yaml"), many);
    const before = contentsOf(folder);
    const ended = await interrupted(folder, signal);
    expect(ended).toEqual(expected);
    expect(contentsOf(folder)).toEqual(before);
  });

  it("what the interruption stopped would have been written", () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), many);
    expect(command.run(["assess", "studio.yaml"], { cwd: folder }).code).toBe(0);
    expect(readFileSync(join(folder, "studio-report.html"), "utf8")).toContain("Wall 20");
  });

  async function interrupted(
    folder: string,
    signal: NodeJS.Signals,
  ): Promise<{ code: number | null; signal: string | null }> {
    const child = spawn(process.execPath, [command.entry(), "assess", "studio.yaml"], {
      cwd: folder,
      env: command.environment(),
      stdio: "ignore",
    });
    const ended = once(child, "close");
    while (child.exitCode === null && timeWorked(child.pid!) < HALF_WAY) await setTimeout(20);
    expect(child.exitCode).toBe(null);
    child.kill(signal);
    const [code, by] = await ended;
    return { code, signal: by };
  }
});

/** Time of the processor by which the command has begun and twenty build-ups are still being worked out [s]. */
const HALF_WAY = 0.4;
const TICKS_PER_SECOND = 100;

/** Time of the processor that a process has used [s]. */
function timeWorked(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, "latin1")
    .replace(/^.*\) /, "")
    .split(" ");
  return (Number(fields[11]) + Number(fields[12])) / TICKS_PER_SECOND;
}

function buildUpAgain(count: number): string {
  const one = SMALL_PROJECT.slice(SMALL_PROJECT.indexOf("  - name: Wall"));
  return Array.from({ length: count }, (_, index) => one.replace("name: Wall", `name: Wall ${index + 1}`)).join("");
}
