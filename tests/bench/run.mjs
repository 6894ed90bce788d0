/** Bundles the measurements as the command is bundled, and runs them. */
import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const folder = join(root, "node_modules", ".warmside");
mkdirSync(folder, { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: ["tests/bench/bench.ts"],
  outfile: join(folder, "bench.mjs"),
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  alias: { "@warmside/core": join(root, "packages/core/src/index.ts") },
  banner: {
    js: 'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);',
  },
  // Packages that find files of their own beside them.
  external: ["playwright-core", "esbuild"],
  logLevel: "warning",
});
const done = spawnSync(process.execPath, [join(folder, "bench.mjs"), ...process.argv.slice(2)], {
  cwd: root,
  stdio: "inherit",
});
process.exitCode = done.status ?? 1;
