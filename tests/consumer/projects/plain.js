/** Plain JavaScript: reads a project file, prints the result, and writes the report. */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { assessProject, readProject, SHIPPED_CLIMATES, SHIPPED_MATERIALS } from "@warmside/core";
import { renderReport } from "@warmside/report";

const [file, report] = process.argv.slice(2);
const reading = readProject(readFileSync(file, "utf8"));
if (!reading.ok) throw new Error(reading.problems.map(({ code }) => code).join(", "));
const result = assessProject(reading.value);
writeFileSync(report, await renderReport(result));

const schema = fileURLToPath(import.meta.resolve("@warmside/core/project.schema.json"));
process.stdout.write(
  JSON.stringify({
    result,
    climates: Object.keys(SHIPPED_CLIMATES).length,
    materials: SHIPPED_MATERIALS.length,
    schemaType: JSON.parse(readFileSync(schema, "utf8")).type,
  }),
);
