/**
 * Makes every table of climate/ and its README from a folder of weather records:
 * node packages/report/src/cli/climate/make-shipped-climates.mjs FOLDER
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../../../../..");
const [records] = process.argv.slice(2);
if (records === undefined) {
  process.stderr.write("Name the folder of weather records.\n");
  process.exit(1);
}
const folder = mkdtempSync(join(tmpdir(), "warmside-climates-"));
try {
  const outfile = join(folder, "make.mjs");
  await build({
    entryPoints: [join(here, "make-shipped-climates.ts")],
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node20",
    alias: { "@warmside/core": join(root, "packages/core/src/index.ts") },
    logLevel: "warning",
  });
  const { makeShippedClimates } = await import(pathToFileURL(outfile).href);
  const files = makeShippedClimates(resolve(records), join(root, "climate"));
  process.stdout.write(`${files.length} files written.\n`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
