import { spawnSync } from "node:child_process";
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll } from "vitest";

export const ROOT: string = join(import.meta.dirname, "../..");
export const PACKAGES = ["core", "report"] as const;
export type PackageName = (typeof PACKAGES)[number];

/** What a package's manifest says, as packed. */
export interface Manifest {
  name: string;
  version: string;
  license: string;
  sideEffects: boolean;
  engines: { node: string };
  exports: Record<string, string | { types: string; default: string }>;
  bin?: Record<string, string>;
  dependencies: Record<string, string>;
}

/** A user's project outside the workspace, with both packages installed as published. */
export interface Consumer {
  folder(): string;
  /** The packed file of a package. */
  tarball(name: PackageName): string;
  /** Where a package lies in the project. */
  installed(name: PackageName): string;
  manifest(name: PackageName): Manifest;
  /** Writes a file of the project. */
  write(file: string, text: string): void;
  /** Runs Node in the project, and gives what it printed; throws where it ends with another code than 0. */
  node(...words: string[]): string;
}

/** Ways to get the packed packages into the project: with links to what the workspace has, or through npm. */
export type Install = (consumer: Consumer) => void;

/** Packs both packages, and sets the project up once for a test file. */
export function consumerOfPackages(install: Install): Consumer {
  let folder = "";
  const consumer: Consumer = {
    folder: () => folder,
    tarball: (name) => join(folder, "packed", `warmside-${name}-${workspaceManifest(name).version}.tgz`),
    installed: (name) => join(folder, "node_modules/@warmside", name),
    manifest: (name) => JSON.parse(readFileSync(join(consumer.installed(name), "package.json"), "utf8")),
    write: (file, text) => {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    },
    node: (...words) => run(process.execPath, words, folder),
  };
  beforeAll(() => {
    folder = realpathSync(mkdtempSync(join(tmpdir(), "warmside-consumer-")));
    run(process.execPath, [join(ROOT, ".ci/set-up.mjs"), "--build"], ROOT);
    consumer.write("package.json", JSON.stringify({ name: "consumer", private: true, type: "module" }));
    for (const name of PACKAGES) {
      const pnpm = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")).packageManager.split("+")[0];
      const target = ["--pack-destination", join(folder, "packed")];
      run("npx", ["--yes", pnpm, "pack", ...target], join(ROOT, "packages", name));
    }
    install(consumer);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return consumer;
}

/** Unpacks, and links each package's own dependencies from where the workspace has them: needs no network. */
export function installWithLinks(consumer: Consumer): void {
  for (const name of PACKAGES) {
    const place = consumer.installed(name);
    mkdirSync(join(place, "node_modules"), { recursive: true });
    run("tar", ["-xzf", consumer.tarball(name), "-C", place, "--strip-components=1"], consumer.folder());
    const { dependencies, bin = {} } = consumer.manifest(name);
    for (const dependency of Object.keys(dependencies)) {
      if (dependency.startsWith("@warmside/")) continue;
      const has = realpathSync(join(ROOT, "packages", name, "node_modules", dependency));
      symlinkSync(has, join(place, "node_modules", dependency), "junction");
    }
    mkdirSync(join(consumer.folder(), "node_modules/.bin"), { recursive: true });
    for (const [command, file] of Object.entries(bin)) {
      chmodSync(join(place, file), 0o755);
      symlinkSync(join(place, file), join(consumer.folder(), "node_modules/.bin", command));
    }
  }
}

/** As a stranger does it: npm, from a registry. */
export function installWithNpm(consumer: Consumer): void {
  const tarballs = PACKAGES.map((name) => consumer.tarball(name));
  run("npm", ["install", "--prefer-offline", "--no-audit", "--no-fund", ...tarballs], consumer.folder());
}

export function workspaceManifest(name: PackageName): Manifest {
  return JSON.parse(readFileSync(join(ROOT, "packages", name, "package.json"), "utf8"));
}

/** Runs a program and gives what it printed. */
export function run(program: string, words: readonly string[], cwd: string): string {
  const ended = spawnSync(program, words, {
    cwd,
    encoding: "utf8",
    maxBuffer: 1e9,
    shell: process.platform === "win32" && program !== process.execPath,
  });
  if (ended.status === 0) return ended.stdout;
  throw new Error(
    `${program} ${words.join(" ")} ended with ${ended.status}\n${ended.stdout}${ended.stderr}${ended.error ?? ""}`,
  );
}
