import type { ReadingContext } from "./reading-context.ts";
import type { WrittenProject } from "./schema/written-project.ts";
import type { PriceEntry, PriceList, Query } from "./types.ts";
import { WITHOUT_EFFECT } from "./without-effect.ts";

/** The words of the first page, as the file has them. */
export function queryOf(written: WrittenProject): Query | null {
  const { query } = written;
  if (query === undefined) return null;
  return {
    question: query.question ?? null,
    to: query.to ?? null,
    site: query.site ?? null,
    preparedBy: query["prepared by"] ?? null,
    date: query.date ?? null,
    drawings: query.drawings ?? [],
  };
}

/**
 * Prices, where the file gives any.
 *
 * @param written - the top of the project
 * @param entries - its price list, or the rows of its price table; empty without
 * @returns the list, or null when nothing has a price
 */
export function pricesOf(written: WrittenProject, entries: readonly PriceEntry[]): PriceList | null {
  const hourRate = written["hour rate"]?.value ?? null;
  const heatPricePerKilowattHour = written["heat price"]?.value ?? null;
  if (entries.length === 0 && hourRate === null && heatPricePerKilowattHour === null) return null;
  return { currency: written.currency ?? "", hourRate, heatPricePerKilowattHour, entries };
}

/**
 * Notes an hour rate that prices no hours: these stand with the prices of materials.
 *
 * @param written - the top of the project
 * @param entries - its price list, or the rows of its price table
 * @param context - where notes go
 */
export function noteIdleHourRate(
  written: WrittenProject,
  entries: readonly PriceEntry[],
  context: Pick<ReadingContext, "note">,
): void {
  if (written["hour rate"] === undefined || entries.length > 0) return;
  const sentence = "hour rate changes nothing: hours stand with the prices of materials, and none are given";
  context.note(WITHOUT_EFFECT, ["hour rate"], sentence);
}
