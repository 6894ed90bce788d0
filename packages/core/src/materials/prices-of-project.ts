import type { Problem } from "../problems/types.ts";
import { fetchTable, type Supplies } from "../project/find-text.ts";
import type { ReadingContext } from "../project/reading-context.ts";
import { resolvePriceList } from "../project/resolve/resolve-price-list.ts";
import type { PriceEntry } from "../project/types.ts";
import { textAt } from "../project/value-at.ts";
import { readPriceTable } from "./read-price-table.ts";

/**
 * The user's own prices, from the project file itself or from the table that it names.
 *
 * @param supplies - supplies files
 * @param context - data and problems
 * @returns the prices, if there are any, and the problems of the table itself
 */
export function pricesOfProject(
  supplies: Supplies | undefined,
  context: ReadingContext,
): { value: PriceEntry[]; problems: readonly Problem[] } {
  const written = textAt(context.file.data, ["prices"]);
  if (written === null) return { value: resolvePriceList(context), problems: [] };
  const found = fetchTable(written, ["prices"], supplies, context);
  if (found === null) return { value: [], problems: [] };
  const reading = readPriceTable(found.text, found.file);
  return reading.ok ? { value: reading.value, problems: [] } : { value: [], problems: reading.problems };
}
