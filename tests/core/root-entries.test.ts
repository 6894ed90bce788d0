import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";

/** What stands at the root, and nothing else (DEVELOPERS.md tells what each is for). */
const ROOT_ENTRIES = [
  ".ci",
  ".gitignore",
  ".npmrc",
  "CHANGELOG.md",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "SECURITY.md",
  "biome.json",
  "climate",
  "package.json",
  "packages",
  "pnpm-lock.yaml",
  "pnpm-workspace.yaml",
  "shared",
  "tests",
  "tsconfig.json",
  "vitest.config.ts",
];

/** Entries at the root that git keeps. */
function trackedEntries(): string[] {
  const root = join(import.meta.dirname, "../..");
  const files = execFileSync("git", ["ls-files", "-z"], { cwd: root, encoding: "utf8", maxBuffer: 2 ** 28 });
  return [...new Set(files.split("\0").map((file) => file.split("/")[0]!))].filter((entry) => entry !== "").sort();
}

it("at the root stand the listed entries", () => {
  expect(trackedEntries()).toEqual(ROOT_ENTRIES);
});
