import type { ReadingContext } from "./reading-context.ts";
import type { WrittenProject } from "./schema/schema-project.ts";
import type { PriceEntry, PriceList, Query, Room } from "./types.ts";
import { WITHOUT_EFFECT } from "./without-effect.ts";

/** The query for the first page, as the file has it. */
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
 * @param entries - its price list, or the rows of its price table; empty if it has neither
 * @returns the prices, or null when the file gives none
 */
export function pricesOf(written: WrittenProject, entries: readonly PriceEntry[]): PriceList | null {
  const hourRate = written["hour rate"]?.value ?? null;
  const heatPricePerKilowattHour = written["heat price"]?.value ?? null;
  if (entries.length === 0 && hourRate === null && heatPricePerKilowattHour === null) return null;
  return { currency: written.currency ?? "", hourRate, heatPricePerKilowattHour, entries };
}

/**
 * Notes an hour rate that applies to no hours: hours are given with the prices of materials.
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

/**
 * Notes a humidity margin where no room has a humidity class: it multiplies only the excess of classes.
 *
 * @param written - the top of the project
 * @param rooms - as read; null where a room has problems
 * @param context - where notes go
 */
export function noteIdleMargin(
  written: WrittenProject,
  rooms: Iterable<Room | null>,
  context: Pick<ReadingContext, "note">,
): void {
  const { value = 1 } = written["humidity margin"] ?? {};
  if (value === 1 || [...rooms].some((room) => room?.humidity.kind === "class")) return;
  const sentence =
    "humidity margin changes nothing: it multiplies the vapour excess of humidity classes, and no room has one";
  context.note(WITHOUT_EFFECT, ["humidity margin"], sentence);
}
