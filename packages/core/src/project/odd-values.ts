import type { ProblemPath } from "../problems/types.ts";
import { whyOdd } from "../quantities/read-quantity.ts";
import { quantityOf } from "../quantities/vocabulary.ts";
import type { ReadingContext } from "./reading-context.ts";
import type { ReadValue } from "./written-project.ts";

/**
 * Notes every value that is possible but odd.
 *
 * @param written - the project as read, or any part of it
 * @param context - where notes go
 */
export function noteOddValues(written: unknown, context: ReadingContext): void {
  visit(written, [], context);
}

function visit(here: unknown, path: ProblemPath, context: ReadingContext): void {
  if (isReadValue(here)) return noteOdd(here, path, context);
  if (Array.isArray(here)) return here.forEach((item, index) => visit(item, [...path, index], context));
  if (typeof here !== "object" || here === null) return;
  for (const [key, value] of Object.entries(here)) visit(value, [...path, key], context);
}

function noteOdd({ quantity, value }: ReadValue, path: ProblemPath, context: ReadingContext): void {
  const reason = whyOdd(value, quantity);
  if (reason === null) return;
  const { name } = quantityOf(quantity);
  const written = context.file.source.writtenAt(path) ?? "";
  context.note(`odd-${name.replace(/ /g, "-")}`, path, `${name} ${written} is unusual: ${reason}`);
}

function isReadValue(here: unknown): here is ReadValue {
  return typeof here === "object" && here !== null && "quantity" in here && "value" in here;
}
