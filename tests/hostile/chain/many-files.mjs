/** Bundles the run over a great many project files as the command is bundled, and runs it: COUNT SEED [SECONDS [PATH]]. */
import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = dirname(dirname(dirname(dirname(fileURLToPath(import.meta.url)))));
const outfile = join(root, "node_modules", ".warmside", `many-files-${process.pid}.mjs`);
mkdirSync(dirname(outfile), { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: ["tests/hostile/chain/many-files.ts"],
  outfile,
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  external: ["vitest"],
  alias: { "@warmside/core": join(root, "packages/core/src/index.ts") },
  banner: {
    js: 'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);',
  },
  logLevel: "warning",
});
await import(outfile);
