import type { ProblemPath } from "../problems/types.ts";
import { whyOdd } from "../quantities/read-quantity.ts";
import { quantityOf } from "../quantities/vocabulary.ts";
import type { ReadingContext } from "./reading-context.ts";
import type { ReadValue } from "./schema/written-project.ts";

/**
 * Notes every value that is possible but odd.
 *
 * @param written - the project as read, or any part of it
 * @param context - where notes go
 */
export function noteOddValues(written: unknown, context: ReadingContext): void {
  for (const { path, read } of readValuesIn(written, [])) {
    const reason = whyOdd(read.value, read.quantity);
    if (reason === null) continue;
    const { name } = quantityOf(read.quantity);
    const received = context.file.source.writtenAt(path) ?? "";
    context.note(`odd-${name.replace(/ /g, "-")}`, path, `${name} ${received} is unusual: ${reason}`);
  }
}

function readValuesIn(here: unknown, path: ProblemPath): { path: ProblemPath; read: ReadValue }[] {
  if (isReadValue(here)) return [{ path, read: here }];
  if (Array.isArray(here)) return here.flatMap((item, index) => readValuesIn(item, [...path, index]));
  if (typeof here !== "object" || here === null) return [];
  return Object.entries(here).flatMap(([key, value]) => readValuesIn(value, [...path, key]));
}

function isReadValue(here: unknown): here is ReadValue {
  return typeof here === "object" && here !== null && "quantity" in here && "value" in here;
}
