import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, test } from "vitest";
import { parse, parseAllDocuments } from "yaml";

const ROOT = join(import.meta.dirname, "../..");
const text = (file: string): string => readFileSync(join(ROOT, file), "utf8");

interface Manifest {
  scripts: Record<string, string>;
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  optionalDependencies?: Record<string, string>;
  peerDependencies?: Record<string, string>;
}

const IMPORTERS: Record<string, string> = {
  ".": "package.json",
  ".ci": ".ci/package.json",
  "packages/core": "packages/core/package.json",
  "packages/report": "packages/report/package.json",
};
const manifests = Object.entries(IMPORTERS).map(
  ([importer, file]) => [importer, JSON.parse(text(file)) as Manifest] as const,
);
const asked = ({
  dependencies,
  devDependencies,
  optionalDependencies,
  peerDependencies,
}: Manifest): Record<string, string> => ({
  ...dependencies,
  ...devDependencies,
  ...optionalDependencies,
  ...peerDependencies,
});

/** One version, one of another name, or a package of the workspace. */
const EXACT = /^(npm:[^@]+@)?\d+\.\d+\.\d+$|^workspace:\*$/;

describe("the packages that are asked for", () => {
  test.each(manifests)("%s: each in exactly one version", (_, manifest) => {
    const loose = Object.entries(asked(manifest)).filter(([, version]) => !EXACT.test(version));
    expect(Object.keys(asked(manifest)).length).toBeGreaterThan(2);
    expect(loose).toEqual([]);
  });

  test.each(manifests)("%s: nothing runs when somebody installs it", (_, { scripts }) => {
    const hooks = [
      "preinstall",
      "install",
      "postinstall",
      "prepare",
      "prepublish",
      "preprepare",
      "postprepare",
      "dependencies",
    ];
    expect(Object.keys(scripts ?? {}).filter((name) => hooks.includes(name))).toEqual([]);
  });

  it("no script of a package is run on installing, pnpm itself comes in one version, and no registry is named", () => {
    const workspace = parse(text("pnpm-workspace.yaml")) as { allowBuilds: Record<string, boolean> };
    expect(Object.values(workspace.allowBuilds).every((allowed) => allowed === false)).toBe(true);
    expect(JSON.parse(text("package.json")).packageManager).toMatch(/^pnpm@\d+\.\d+\.\d+\+sha512\.[0-9a-f]{128}$/);
    expect(text(".npmrc") + text("pnpm-workspace.yaml")).not.toMatch(/registry|:\/\//);
  });
});

describe("the lock file", () => {
  const lockText = text("pnpm-lock.yaml");
  const lock = parse(lockText) as {
    importers: Record<string, Record<string, Record<string, { specifier: string; version: string }>>>;
    packages: Record<string, { resolution: Record<string, string>; requiresBuild?: boolean }>;
  };

  it("is one YAML document without any address", () => {
    expect(parseAllDocuments(lockText)).toHaveLength(1);
    expect(lockText).not.toMatch(/:\/\/|tarball:|registry/);
  });

  it("holds what the manifests ask for, and nothing else", () => {
    expect(Object.keys(lock.importers).sort()).toEqual(Object.keys(IMPORTERS).sort());
    for (const [importer, manifest] of manifests) {
      const locked = Object.values(lock.importers[importer]!).flatMap((group) =>
        Object.entries(group).map(([name, { specifier }]) => [name, specifier] as const),
      );
      expect(Object.fromEntries(locked)).toEqual(asked(manifest));
    }
  });

  it("has a strong checksum for every package, and none that stands outside the registry", () => {
    const entries = Object.entries(lock.packages);
    expect(entries.length).toBeGreaterThan(100);
    for (const [name, { resolution }] of entries) {
      expect(Object.keys(resolution), name).toEqual(["integrity"]);
      expect(resolution.integrity, name).toMatch(/^sha512-[A-Za-z0-9+/]{86}==$/);
    }
  });
});
