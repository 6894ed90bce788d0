import { chmodSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { contentsOf, type Ended, SMALL_PROJECT } from "../../report/bundled-command.ts";
import type { HostileCase } from "./cases.ts";

/** A way to run the command, in the test's own process or as it is shipped. */
interface Runner {
  folder(): string;
  run(args: readonly string[], circumstances: object): Ended | Promise<Ended>;
}

/** A user without special rights. */
const NOBODY = 65534;

/** True where the test itself may write anywhere, so that another user has to be one who may not. */
export const IS_ROOT: boolean = process.getuid?.() === 0;

/** Runs a command line that must be refused: exit 1, a plain message, nothing written or lost. */
export async function isRefused(command: Runner, wrong: HostileCase): Promise<void> {
  const { args, says, prepare, env = {}, asNobody } = wrong;
  const folder = join(command.folder(), "work");
  mkdirSync(folder);
  chmodSync(folder, 0o777);
  writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT);
  prepare?.(folder);
  const before = contentsOf(folder);
  const uid = asNobody === true && IS_ROOT ? { uid: NOBODY } : {};
  const { code, out, err } = await command.run(args, { cwd: folder, env, ...uid });
  expect(err.replaceAll(/\s+/g, " ")).toContain(says);
  expect(err).not.toMatch(/\n\s+at |^Error|undefined|\[object/m);
  expect(out).toBe("");
  expect(code).toBe(1);
  expect(contentsOf(folder)).toEqual(before);
}
