import type { ProblemPath } from "../problems/types.ts";
import { whyOdd } from "../quantities/read-quantity.ts";
import { CONDUCTIVITY_OF_ALL_BUT_METAL, quantityOf } from "../quantities/vocabulary.ts";
import type { ReadingContext } from "./reading-context.ts";
import type { WrittenMaterial } from "./schema/schema-material.ts";
import type { ReadValue } from "./schema/schema-values.ts";
import { valueAt } from "./value-at.ts";

/**
 * Notes every value that is possible but odd.
 *
 * @param written - the project as read, or any part of it
 * @param context - where notes go
 */
export function noteOddValues(written: unknown, context: ReadingContext): void {
  for (const { path, read } of readValuesIn(written, [])) {
    const reason = whyOdd(read.value, read.quantity) ?? whyOddBeside(path, written);
    if (reason === null) continue;
    const { name } = quantityOf(read.quantity);
    const received = context.file.source.writtenAt(path) ?? "";
    context.note(`odd-${name.replace(/ /g, "-")}`, path, `${name} ${received} is unusual: ${reason}`);
  }
}

/** Why a value is odd beside its neighbours: a material not said to be metal conducts as only metal does. */
function whyOddBeside(path: ProblemPath, written: unknown): string | null {
  if (path[path.length - 1] !== "conductivity") return null;
  const material = valueAt(written, path.slice(0, -1)) as Partial<WrittenMaterial>;
  if (material.name === undefined || material.kind === "metal") return null;
  return material.conductivity!.value > CONDUCTIVITY_OF_ALL_BUT_METAL.most
    ? CONDUCTIVITY_OF_ALL_BUT_METAL.reason
    : null;
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
