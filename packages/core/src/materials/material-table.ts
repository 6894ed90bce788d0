import { checkMaterial } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { namesAlike } from "../problems/names-alike.ts";
import { comparable, nearNames } from "../problems/near-names.ts";
import type { WorkCount } from "../problems/work-count.ts";
import type { Found } from "../project/reading-context.ts";
import type { Material } from "../project/types.ts";
import { requireText } from "../require.ts";
import { everydayName } from "./everyday-names.ts";

/** Materials by name, in the form of `comparable`: case and spaces make no difference. */
export type MaterialTable = ReadonlyMap<string, Material>;

/**
 * Makes a table in which materials are found by name.
 *
 * @param materials - the rows of a table, each name once
 * @returns the table
 */
export function materialTable(materials: readonly Material[]): MaterialTable {
  if (!Array.isArray(materials)) throw new TypeError("materials must be a list of materials");
  refuseFaults(materials.flatMap((material, index) => checkMaterial(material, ["materials", index])));
  return new Map(materials.map((material) => [comparable(material.name), material]));
}

/**
 * Finds a material by name, whatever its case and spaces; later tables win over earlier ones.
 *
 * @param name - as a project file writes it
 * @param tables - the shipped table, then the user's own
 * @param work - where the letters compared are counted
 * @returns the material; otherwise the names probably meant and what to ask before choosing, or, if there are none,
 *   the names that share a word
 * @example findInTables("Steel", []) // { found: null, near: [], question: null, alike: [] }
 */
export function findInTables(
  name: string,
  tables: readonly MaterialTable[],
  work: WorkCount = { steps: 0 },
): Found<Material> {
  requireText(name, "name");
  if (!Array.isArray(tables)) throw new TypeError("tables must be a list of material tables");
  const wanted = comparable(name);
  const found = tables.findLast((table) => table.has(wanted))?.get(wanted);
  if (found !== undefined) return { found };
  const names = tables.flatMap((table) => [...table.values()].map((material) => material.name));
  const everyday = everydayName(name) ?? everydayName(withoutSizes(name));
  const question = everyday?.question ?? null;
  const meant = everyday?.materials.filter((candidate) => names.includes(candidate)) ?? [];
  const near = meant.length > 0 || question !== null ? meant : nearNames(name, names, work);
  return { found: null, near, question, alike: near.length > 0 ? [] : namesAlike(name, names) };
}

/** The name of a material without its grade and thickness: "OSB 3", "18 mm OSB". */
function withoutSizes(name: string): string {
  return comparable(name)
    .replace(/\d+([.,]\d+)? ?(mm|cm|in)?(?![\p{L}\d])/gu, "")
    .replace(/[^\p{L}]+$/u, "")
    .trim();
}
