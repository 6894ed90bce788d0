import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, lstatSync, mkdtempSync, readdirSync, readFileSync, readlinkSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll } from "vitest";

export const ROOT: string = fileURLToPath(new URL("../../", import.meta.url));
export const DEMO: string = join(ROOT, "shared/alder-row-pottery.yaml");

/** How a run of the command ended. */
export interface Ended {
  code: number | null;
  out: string;
  err: string;
}

/** Where and how the command is run. */
export interface Circumstances {
  cwd?: string;
  env?: Record<string, string>;
  /** Bundle to run, when it is another than the test file's own. */
  entry?: string;
  uid?: number;
}

/**
 * The command as it is shipped, bundled by the set-up from the sources as they are, and a way to run it.
 * Everything it makes is cleared away at the end.
 */
export interface BundledCommand {
  /** Folder of the bundle. */
  bundle(): string;
  entry(): string;
  run(args: readonly string[], circumstances?: Circumstances): Ended;
  /** A fresh empty folder that anyone may write in. */
  folder(): string;
  /** The surroundings of a run: none of the test runner's own. */
  environment(more?: Record<string, string>): Record<string, string>;
}

export function bundledCommand(): BundledCommand {
  let base = "";
  beforeAll(() => {
    base = mkdtempSync(join(tmpdir(), "warmside-command-"));
    chmodSync(base, 0o755);
    const made = spawnSync(process.execPath, [join(ROOT, ".ci/set-up.mjs")], { encoding: "utf8" });
    if (made.status !== 0) throw new Error(`the command could not be bundled:\n${made.stderr}`);
    cpSync(join(ROOT, "packages/report/bundle"), join(base, "bundle"), { recursive: true });
  });
  afterAll(() => rmSync(base, { recursive: true, force: true }));

  const command: BundledCommand = {
    bundle: () => join(base, "bundle"),
    entry: () => join(base, "bundle", "warmside.mjs"),
    folder: () => {
      const folder = mkdtempSync(join(base, `folder-`));
      chmodSync(folder, 0o777);
      return folder;
    },
    environment: (more = {}) => ({ PATH: process.env.PATH ?? "", LANG: "C.UTF-8", TZ: "UTC", HOME: base, ...more }),
    run: (args, circumstances = {}) => {
      const { cwd = base, env = {}, entry = command.entry(), uid } = circumstances;
      const options = {
        cwd,
        env: command.environment(env),
        encoding: "utf8",
        maxBuffer: 1e8,
      } as const;
      const ended = spawnSync(
        process.execPath,
        [entry, ...args],
        uid === undefined ? options : { ...options, uid, gid: uid },
      );
      return { code: ended.status, out: ended.stdout, err: ended.stderr };
    },
  };
  return command;
}

/** Every file below a folder with its text: equal before and after when nothing was written or lost. */
export function contentsOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  return Object.fromEntries(files.map((file) => [file, textOf(join(folder, file))]));
}

function textOf(path: string): string {
  const stats = lstatSync(path);
  if (stats.isSymbolicLink()) return `a link to ${readlinkSync(path)}`;
  if (stats.isDirectory()) return "a folder";
  return stats.isFile() ? readFileSync(path, "latin1") : "no plain file";
}

/** A small valid project. */
export const SMALL_PROJECT = `project: Kiln shed
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
`;
