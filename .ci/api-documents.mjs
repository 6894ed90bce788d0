/**
 * Writes the documents of both packages' public names into packages/NAME/docs, as Markdown, from the sources' own comments.
 * They travel with the packages and are not in git. What the core's are made from goes into .build/core-documents.json,
 * for a test to read.
 */
import { mkdirSync, readdirSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Application, TSConfigReader } from "typedoc";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const ENTRIES = { core: ["index", "calculation", "formulas", "field"], report: ["index"] };

for (const name of Object.keys(ENTRIES)) await writeDocuments(name, join(root, "packages", name, "docs"));

/** Made in a temporary folder and moved into place file by file, so that a package packed meanwhile has complete files. */
async function writeDocuments(name, out) {
  const made = `${out}.new-${process.pid}`;
  try {
    await makeDocuments(name, made);
    mkdirSync(out, { recursive: true });
    const files = readdirSync(made);
    for (const file of files) renameSync(join(made, file), join(out, file));
    for (const file of readdirSync(out)) if (!files.includes(file)) rmSync(join(out, file), { force: true });
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
}

async function makeDocuments(name, out) {
  const folder = join(root, "packages", name);
  const app = await Application.bootstrapWithPlugins(
    {
      name: `@warmside/${name}`,
      plugin: ["typedoc-plugin-markdown"],
      entryPoints: ENTRIES[name].map((entry) => join(folder, "src", `${entry}.ts`)),
      tsconfig: join(folder, "tsconfig.json"),
      skipErrorChecking: true,
      readme: "none",
      outputs: [{ name: "markdown", path: out }],
      // Source locations mean nothing to users of the package.
      disableSources: true,
      validation: false,
      logLevel: "Error",
      outputFileStrategy: "modules",
      hideBreadcrumbs: true,
      hidePageHeader: true,
      parametersFormat: "table",
      interfacePropertiesFormat: "table",
      typeAliasPropertiesFormat: "table",
      useCodeBlocks: true,
    },
    [new TSConfigReader()],
  );
  const project = await app.convert();
  if (project === undefined) throw new Error(`the documents of ${name} cannot be made`);
  await app.generateOutputs(project);
  if (name === "core") await app.generateJson(project, join(root, ".build", "core-documents.json"));
  if (app.logger.hasErrors()) throw new Error(`the documents of ${name} have errors`);
}
