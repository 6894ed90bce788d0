import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { contextOf, type ProcessParts } from "../../packages/report/src/cli/command-context.ts";
import { answer } from "../../packages/report/src/cli/program.ts";
import type { Ended } from "./bundled-command.ts";

/** Where and how the command is run. */
export interface InProcess extends Partial<Omit<ProcessParts, "cwd" | "env">> {
  cwd?: string;
  env?: Readonly<Record<string, string>>;
}

/** The command's entry in the test's own process, with a folder, surroundings and streams of the test's own. */
export interface CommandInProcess {
  run(args: readonly string[], circumstances?: InProcess): Promise<Ended>;
  /** A fresh empty folder. */
  folder(): string;
}

export function commandInProcess(): CommandInProcess {
  let base = "";
  beforeAll(() => {
    base = mkdtempSync(join(tmpdir(), "warmside-command-"));
    chmodSync(base, 0o755);
  });
  afterAll(() => rmSync(base, { recursive: true, force: true }));
  return {
    folder: () => mkdtempSync(join(base, "folder-")),
    run: async (args, { cwd = base, env = {}, ...parts } = {}) => {
      const {
        exit,
        answer: out,
        messages: err,
      } = await answer(
        args,
        contextOf({ cwd: () => cwd, env: { PATH: process.env.PATH, ...env }, stdout: {}, stderr: {}, ...parts }),
      );
      return { code: exit, out, err };
    },
  };
}
