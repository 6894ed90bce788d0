import { pathInText } from "../problems/path-in-text.ts";
import type { Problem, ProblemPath } from "../problems/types.ts";
import { plainDigits, writeQuantity } from "../quantities/format-quantity.ts";
import { type QuantityName, quantityOf } from "../quantities/vocabulary.ts";

/** What is wrong with a value passed in by the caller's program. */
export type Fault =
  | { kind: "type"; path: ProblemPath; value: unknown; expected: string }
  | { kind: "choice"; path: ProblemPath; value: unknown; options: readonly string[] }
  | { kind: "range"; path: ProblemPath; value: number; quantity: QuantityName; low: number; high: number };

/** Checks a value and returns every fault in it. */
export type Check = (value: unknown, path: ProblemPath) => readonly Fault[];

/**
 * Throws if there are faults; for functions that take objects.
 *
 * @param faults - of all values passed in
 * @throws TypeError when a value is of the wrong kind, otherwise RangeError; the message names the first five faults,
 *   each with name, unit and range
 */
export function refuseFaults(faults: readonly Fault[]): void {
  if (faults.length === 0) return;
  const message = faults.slice(0, MOST_TOLD).map(faultInWords).join("; ");
  throw faults.some(({ kind }) => kind === "type") ? new TypeError(message) : new RangeError(message);
}

/**
 * Turns faults into the problems that a project file with the same values would have.
 *
 * @param faults - of the values given to a builder
 * @returns problems with the reader's own codes and words
 */
export function problemsOfFaults(faults: readonly Fault[]): Problem[] {
  return faults.map((fault): Problem => {
    const last = fault.path.at(-1);
    const subject = typeof last === "string" ? spaced(last) : "this value";
    const common = { path: fault.path, position: null, received: shown(fault.value) };
    if (fault.kind === "type") return { ...common, code: "wrong-kind", details: { subject, expected: fault.expected } };
    if (fault.kind === "choice") {
      return { ...common, code: "not-one-of", details: { subject, options: fault.options, near: [] } };
    }
    const { name, kind, example, possible } = quantityOf(fault.quantity);
    const details = {
      subject, quantity: name, kind, example, reason: possible?.reason ?? "",
      low: written(fault.low, fault.quantity), high: written(fault.high, fault.quantity),
    }; // biome-ignore format: one table
    return { ...common, received: written(fault.value, fault.quantity), code: "impossible-value", details };
  });
}

function faultInWords(fault: Fault): string {
  const place = pathInText(fault.path) || "the value";
  switch (fault.kind) {
    case "type":
      return `${place} must be ${fault.expected}, was ${shown(fault.value)}`;
    case "choice":
      return `${place} must be one of ${fault.options.join(", ")}, was ${shown(fault.value)}`;
    case "range": {
      const { value, low, high, quantity } = fault;
      const range = `${written(low, quantity)} to ${written(high, quantity)}`;
      return `${place} must be ${quantityOf(quantity).kind} from ${range}, was ${written(value, quantity)}`;
    }
  }
}

const MOST_TOLD = 5;
const LONGEST_SHOWN = 40;

function shown(value: unknown): string {
  const text = typeof value === "string" ? JSON.stringify(value) : Array.isArray(value) ? "a list" : String(value);
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

function written(value: number, quantity: QuantityName): string {
  return Number.isFinite(value) ? writeQuantity(value, quantity) : plainDigits(value);
}

/** `vapourResistanceFactorDry` as words. */
function spaced(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
