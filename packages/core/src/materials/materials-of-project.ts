import type { Problem } from "../problems/types.ts";
import { fetchTable, type Supplies } from "../project/find-text.ts";
import type { Found, ReadingContext } from "../project/reading-context.ts";
import type { Material } from "../project/types.ts";
import { textAt } from "../project/value-at.ts";
import { findInTables, type MaterialTable } from "./material-table.ts";
import { readMaterialTable } from "./read-material-table.ts";

/** How a project finds its materials, and the problems of its own table. */
export interface MaterialsOfProject {
  find(name: string): Found<Material>;
  problems: readonly Problem[];
  /** False when the project's own table could not be read: a name that is not found may then be in it. */
  isComplete: boolean;
}

/**
 * The shipped table, and the user's own where the project names one.
 *
 * @param shipped - text of the shipped table
 * @param supplies - hands out files
 * @param context - data and problems
 * @returns the look-up; rows of the user's table win over shipped ones of the same name
 */
export function materialsOfProject(
  shipped: string,
  supplies: Supplies | undefined,
  context: Pick<ReadingContext, "file" | "collector">,
): MaterialsOfProject {
  const tables: MaterialTable[] = [shippedTable(shipped)];
  const written = textAt(context.file.data, ["materials"]);
  const own = written === null ? null : fetchTable(written, ["materials"], supplies, context);
  const reading = own === null ? null : readMaterialTable(own.text, own.file ?? own.name);
  if (reading?.ok) tables.push(reading.value);
  return {
    find: (name) => findInTables(name, tables),
    problems: reading === null || reading.ok ? [] : reading.problems,
    isComplete: written === null || (reading?.ok ?? false),
  };
}

/** The shipped table is read once. */
let shippedOnce: { text: string; table: MaterialTable } | null = null;

function shippedTable(text: string): MaterialTable {
  if (shippedOnce?.text === text) return shippedOnce.table;
  const reading = readMaterialTable(text, "shared/materials.csv");
  if (!reading.ok) throw new Error(`the shipped material table has ${reading.problems.length} problems`);
  shippedOnce = { text, table: reading.value };
  return reading.value;
}
