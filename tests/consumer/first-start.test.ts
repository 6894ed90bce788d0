import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "warmside-first-start-"));
afterAll(() => rmSync(folder, { recursive: true }));

test("a first start that reaches no registry says that it needs a network", () => {
  const asked = ["package.json", "pnpm-lock.yaml", "pnpm-workspace.yaml", "packages/core/package.json"];
  for (const file of [...asked, "packages/report/package.json", ".ci/package.json", ".ci/set-up.mjs"])
    cpSync(join(root, file), join(folder, file));
  mkdirSync(join(folder, "home"));
  const { status, stderr } = spawnSync(process.execPath, [join(folder, ".ci/set-up.mjs")], {
    cwd: folder,
    encoding: "utf8",
    env: {
      PATH: process.env.PATH,
      HOME: join(folder, "home"),
      npm_config_cache: join(folder, "home", "cache"),
      // Nothing listens there.
      npm_config_registry: "http://127.0.0.1:1/",
    },
  });
  expect(stderr.replaceAll(/\s+/g, " ")).toContain("The first start needs a network; later ones do not.");
  expect(status).toBe(1);
});
