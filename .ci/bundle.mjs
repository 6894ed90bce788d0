/**
 * Bundles the command: one entry, with the plotting library in a part of its own that is read only when a page is drawn.
 * A folder as argument: bundles into that one (the tests do).
 */
import { readFileSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const version = JSON.parse(readFileSync(join(root, "packages/report/package.json"), "utf8")).version;
const outdir = resolve(root, process.argv[2] ?? "packages/report/bundle");

rmSync(outdir, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: { warmside: "packages/report/src/cli/main.ts" },
  outdir,
  outExtension: { ".js": ".mjs" },
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  minifySyntax: true,
  alias: {
    "@warmside/core": join(root, "packages/core/src/index.ts"),
  },
  define: { WARMSIDE_VERSION: JSON.stringify(version) },
  banner: {
    js: 'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);',
  },
  logLevel: "warning",
});
