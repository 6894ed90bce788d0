/** The tables that the core package carries, read once by the library's own readers and written down as data. */
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { build } from "esbuild";

/**
 * @param root - folder of the repository
 * @param climateFiles - paths of the climate tables below it
 * @returns the text of a module with the shipped materials and climates
 * @throws Error when a shipped table has problems, with their codes and lines
 */
export async function shippedTables(root, climateFiles) {
  const { readMaterialTable, readEverydayNames, readClimate } = await readers(root);
  const textOf = (file) => readFileSync(join(root, file), "utf8");
  const file = "shared/materials.csv";
  const materials = whatWasRead(readMaterialTable(textOf(file), file), file);
  const everyday = "shared/everyday-names.csv";
  const names = whatWasRead(readEverydayNames(textOf(everyday), everyday), everyday);
  const climates = climateFiles.map((path) => {
    const name = basename(path, ".csv");
    return [name, whatWasRead(readClimate(textOf(path), name), path)];
  });
  return [
    "/** Written by .ci/shipped-tables.mjs from the tables of shared/ and climate/: change those, not this. */",
    'import type { EverydayName, Material, OutdoorClimate } from "./project/types.ts";',
    "",
    `export const SHIPPED_MATERIALS: readonly Material[] = ${JSON.stringify(materials)};`,
    `export const SHIPPED_EVERYDAY_NAMES: readonly EverydayName[] = ${JSON.stringify(names)};`,
    `export const SHIPPED_CLIMATES: Readonly<Record<string, OutdoorClimate>> = ${JSON.stringify(Object.fromEntries(climates))};`,
    "",
  ].join("\n");
}

/** The library's readers of tables, from its sources. */
async function readers(root) {
  const contents =
    'export { readMaterialTable } from "./materials/read-material-table.ts";' +
    'export { readEverydayNames } from "./materials/read-everyday-names.ts";' +
    'export { readClimate } from "./climate/read-climate.ts";';
  const stdin = { contents, resolveDir: join(root, "packages/core/src"), loader: "ts" };
  const made = await build({ absWorkingDir: root, stdin, bundle: true, format: "esm", write: false });
  return import(`data:text/javascript;base64,${Buffer.from(made.outputFiles[0].contents).toString("base64")}`);
}

function whatWasRead(reading, file) {
  if (reading.ok) return reading.value;
  const told = reading.problems.map(({ code, position }) => `${code} on line ${position?.line ?? "?"}`);
  throw new Error(`${file}: ${told.join(", ")}`);
}
