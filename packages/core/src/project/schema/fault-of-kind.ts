import type { Problem, ProblemPath } from "../../problems/types.ts";
import { readBareNumber, readQuantity } from "../../quantities/read-quantity.ts";
import { type QuantityName, quantityOf } from "../../quantities/vocabulary.ts";
import type { FileData } from "../text/file-data.ts";
import { valueAt } from "../value-at.ts";
import { exampleInBraces } from "./example-of-key.ts";
import { isHalfOfComma } from "./fault-of-unknown-key.ts";
import { formsAt, keysAt } from "./keys-of-schema.ts";
import { humidityClassMeant } from "./schema-room.ts";
import { KIND_MARK, QUANTITY_MARK } from "./schema-values.ts";
import { faultOfKey, faultOfValue, type ShapeFault } from "./shape-fault.ts";

/**
 * Says what is wrong with a value of the wrong kind: missing, empty, without a unit, or something else altogether.
 *
 * @param mark - what the schema expected, marked as in `schema-values.ts`
 * @param path - where the value should stand
 * @param file - data and positions
 * @returns the faults; none if the same slip is reported elsewhere
 */
export function faultsOfKind(mark: string, path: ProblemPath, file: FileData): ShapeFault[] {
  const kind = mark.startsWith(KIND_MARK) ? mark.slice(KIND_MARK.length) : null;
  const quantity = mark.startsWith(QUANTITY_MARK) ? (mark.slice(QUANTITY_MARK.length) as QuantityName) : null;
  const details = whatIsExpected(kind, quantity, path);
  const received = valueAt(file.data, path);
  if (received === undefined) return [faultOfKey("key-missing", path, details)];
  if (received === null) return [faultOfKey("value-missing", path, details)];
  if (typeof received === "number" && isHalfOfComma(path, file)) return [];
  const humidityClass = humidityClassMeant(received, path);
  if (humidityClass !== null) return [faultOfValue("humidity-class-bare", path, { class: humidityClass })];
  if (quantity !== null && (typeof received === "number" || typeof received === "string")) {
    const isBare = quantityOf(quantity).unit.written === "";
    const reading = isBare ? readBareNumber(received, quantity) : readQuantity(String(received), quantity);
    if (!reading.ok) return reading.problems.map((problem) => faultOfValue(problem.code, path, problem.details));
  }
  return [faultOfValue("wrong-kind", path, details)];
}

/** What is expected at a place, in words. */
function whatIsExpected(kind: string | null, quantity: QuantityName | null, path: ProblemPath): Problem["details"] {
  const key = String(path[path.length - 1] ?? "");
  if (quantity !== null) {
    const { kind: quantityKind, example } = quantityOf(quantity);
    return { expected: `${quantityKind}, for example ${example}`, key, example };
  }
  return {
    expected: kind ?? keysExpected(path) ?? "something else",
    key,
    example: path.length === 1 ? (TO_FILL_IN[key] ?? null) : null,
  };
}

/** The keys of an object, with an example of it; null where no keys are fixed. */
function keysExpected(path: ProblemPath): string | null {
  const keys = keysAt(path);
  if (keys.length === 0) return null;
  const [example] = formsAt(path).flatMap((form) => exampleInBraces(form) ?? []);
  return `keys in braces: ${keys.join(", ")}${example === undefined ? "" : `; for example \`${example}\``}`;
}

/** Placeholders for values at the top of the file that only the user knows. */
const TO_FILL_IN: Readonly<Record<string, string>> = { climate: "…" };
