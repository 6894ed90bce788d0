import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";

it("no file, export, or package that is asked for lies unused (settings: knip in package.json)", () => {
  const root = join(import.meta.dirname, "../..");
  const knip = join(root, "node_modules/knip/bin/knip.js");
  const { stdout, stderr, status } = spawnSync(process.execPath, [knip, "--no-progress"], {
    cwd: root,
    encoding: "utf8",
  });
  expect(stdout + stderr).toBe("");
  expect(status).toBe(0);
});
