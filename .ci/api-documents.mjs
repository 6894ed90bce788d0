/**
 * Writes the documents of both packages' public names into packages/NAME/docs, as Markdown, from the sources' own comments.
 * They travel with the packages and are not in git. `--model FILE` writes what the core's are made from, which a test reads.
 */
import { rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Application, TSConfigReader } from "typedoc";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const ENTRIES = { core: ["index", "calculation", "formulas", "field"], report: ["index"] };

const asked = process.argv.indexOf("--model");
const model = asked < 0 ? null : process.argv[asked + 1];

for (const name of Object.keys(ENTRIES)) await writeDocuments(name);

async function writeDocuments(name) {
  const folder = join(root, "packages", name);
  const out = join(folder, "docs");
  rmSync(out, { recursive: true, force: true });
  const app = await Application.bootstrapWithPlugins(
    {
      name: `@warmside/${name}`,
      plugin: ["typedoc-plugin-markdown"],
      entryPoints: ENTRIES[name].map((entry) => join(folder, "src", `${entry}.ts`)),
      tsconfig: join(folder, "tsconfig.json"),
      skipErrorChecking: true,
      readme: "none",
      outputs: [{ name: "markdown", path: out }],
      // Where a name stands in the sources says nothing to whoever has the package.
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
  if (model !== null && name === "core") await app.generateJson(project, model);
  if (app.logger.hasErrors()) throw new Error(`the documents of ${name} have errors`);
}
