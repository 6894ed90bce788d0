import { comparable } from "../problems/near-names.ts";
import { MOST_OFFERS } from "../problems/offers.ts";
import type { Problem } from "../problems/types.ts";
import type { WorkCount } from "../problems/work-count.ts";
import { fetchTable, type Supplies } from "../project/find-text.ts";
import type { Found, ReadingContext } from "../project/reading-context.ts";
import type { Material } from "../project/types.ts";
import { textAt } from "../project/value-at.ts";
import { findInTables, type MaterialTable, materialTable } from "./material-table.ts";
import { readMaterialTable } from "./read-material-table.ts";

/** The look-up of a project's materials, and the problems of its own table. */
export interface MaterialsOfProject {
  find(name: string): Found<Material>;
  problems: readonly Problem[];
  /** False when the project's own table could not be read: an unknown name may then be in that table. */
  isComplete: boolean;
}

/**
 * Prepares the shipped table, and the user's own if the project names one.
 *
 * @param shipped - the shipped materials
 * @param supplies - supplies files
 * @param context - data and problems
 * @param work - where the letters compared are counted
 * @returns the look-up; rows of the user's table win over shipped ones of the same name
 */
export function materialsOfProject(
  shipped: readonly Material[],
  supplies: Supplies | undefined,
  context: Pick<ReadingContext, "file" | "collector">,
  work: WorkCount,
): MaterialsOfProject {
  let unknown = 0;
  const tables = [shippedTable(shipped)];
  const written = textAt(context.file.data, ["materials"]);
  const own = written === null ? null : fetchTable(written, ["materials"], supplies, context);
  const reading = own === null ? null : readMaterialTable(own.text, own.file);
  if (reading?.ok) tables.push(materialTable(reading.value));
  return {
    find(name) {
      work.steps += 1;
      if (tables.some((table) => table.has(comparable(name)))) return findInTables(name, tables);
      unknown += 1;
      return unknown > MOST_OFFERS ? NOTHING_NEAR : findInTables(name, tables, work);
    },
    problems: reading === null || reading.ok ? [] : reading.problems,
    isComplete: written === null || (reading?.ok ?? false),
  };
}

/** The answer for an unknown name after too many others. */
const NOTHING_NEAR: Found<Material> = { found: null, near: [], question: null, alike: [] };

/** The table of each list of shipped materials, made once. */
const readyTables = new WeakMap<readonly Material[], MaterialTable>();

function shippedTable(shipped: readonly Material[]): MaterialTable {
  const ready = readyTables.get(shipped) ?? materialTable(shipped);
  readyTables.set(shipped, ready);
  return ready;
}
