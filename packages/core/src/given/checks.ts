import { MONTHS_PER_YEAR } from "../constants.ts";
import type { ProblemPath } from "../problems/types.ts";
import { type QuantityName, quantityOf } from "../quantities/vocabulary.ts";
import type { Check, Fault } from "./faults.ts";

/** No faults, and the path of the value itself. Nearly every check returns these, so they are made once. */
const NONE: readonly Fault[] = [];
const HERE: ProblemPath = [];

/** Limits in place of the vocabulary's, narrower or wider [SI]. */
export interface Limits {
  low?: number;
  high?: number;
}

/** A number within the possible range of a quantity, or within the limits given. */
export function quantity(name: QuantityName, limits: Limits = {}): Check {
  const { kind, possible } = quantityOf(name);
  const low = limits.low ?? possible?.low ?? Number.NEGATIVE_INFINITY;
  const high = limits.high ?? possible?.high ?? Number.POSITIVE_INFINITY;
  return (value, path) => {
    if (typeof value !== "number" || Number.isNaN(value)) return fault(path, value, kind);
    const inside = value >= low && value <= high && Number.isFinite(value);
    return inside ? NONE : [{ kind: "range", path, value, quantity: name, low, high }];
  };
}

/** A whole number from one limit to another. */
export function whole(low: number, high: number): Check {
  return (value, path) =>
    Number.isInteger(value) && (value as number) >= low && (value as number) <= high
      ? NONE
      : fault(path, value, `a whole number from ${low} to ${high}`);
}

/** One of a few words or numbers. */
export function oneOf(...options: readonly (string | number)[]): Check {
  return (value, path) =>
    options.includes(value as string) ? NONE : [{ kind: "choice", path, value, options: options.map(String) }];
}

/** Any text. */
export const text: Check = (value, path) => (typeof value === "string" ? NONE : fault(path, value, "a text"));
/** True or false. */
export const truth: Check = (value, path) => (typeof value === "boolean" ? NONE : fault(path, value, "true or false"));

/** Null, or a value that passes the check. */
export function orNull(check: Check): Check {
  return (value, path) => (value === null ? NONE : check(value, path));
}

/** Left out, or a value that passes the check. */
export function optional(check: Check): Check {
  return (value, path) => (value === undefined ? NONE : check(value, path));
}

/** A list whose entries all pass the check. */
export function listOf(check: Check, least = 0, most: number = Number.POSITIVE_INFINITY): Check {
  return (value, path) => {
    if (!Array.isArray(value)) return fault(path, value, "a list");
    if (value.length < least || value.length > most) return fault(path, value, `a list of ${lengths(least, most)}`);
    let faults = NONE;
    for (let index = 0; index < value.length; index += 1) {
      faults = withFaultsAt(index, check(value[index], HERE), path, faults);
    }
    return faults;
  };
}

/** Twelve months, January first. */
export function months(check: Check): Check {
  return listOf(check, MONTHS_PER_YEAR, MONTHS_PER_YEAR);
}

/** An object with these keys; other keys are ignored. */
export function keys(checks: Readonly<Record<string, Check>>): Check {
  const names = Object.keys(checks);
  const each = Object.values(checks);
  return (value, path) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return fault(path, value, "an object");
    const object = value as Readonly<Record<string, unknown>>;
    let faults = NONE;
    for (let index = 0; index < names.length; index += 1) {
      const name = names[index]!;
      faults = withFaultsAt(name, each[index]!(object[name], HERE), path, faults);
    }
    return faults;
  };
}

/** An object with one key that names its kind; the kind decides which check it must pass. */
export function byKind(key: string, kinds: Readonly<Record<string, Check>>): Check {
  const anObject = keys({});
  return (value, path) => {
    const notObject = anObject(value, path);
    if (notObject.length > 0) return notObject;
    const kind = (value as Readonly<Record<string, unknown>>)[key];
    const known = typeof kind === "string" && Object.hasOwn(kinds, kind);
    if (!known) return [{ kind: "choice", path: [...path, key], value: kind, options: Object.keys(kinds) }];
    return kinds[kind]!(value, path);
  };
}

/** A Map whose values all pass the check. */
export function mapOf(check: Check): Check {
  return (value, path) =>
    value instanceof Map
      ? [...value].flatMap(([key, entry]) => check(entry, [...path, String(key)]))
      : fault(path, value, "a Map");
}

/** The faults so far, and those found under a key. Usually there are none, and then no list is made. */
function withFaultsAt(key: string | number, found: readonly Fault[], path: ProblemPath, soFar: readonly Fault[]) {
  if (found.length === 0) return soFar;
  return [...soFar, ...found.map((one): Fault => ({ ...one, path: [...path, key, ...one.path] }))];
}

function fault(path: Parameters<Check>[1], value: unknown, expected: string): Fault[] {
  return [{ kind: "type", path, value, expected }];
}

function lengths(least: number, most: number): string {
  if (least === most) return `${least}`;
  return most === Number.POSITIVE_INFINITY ? `${least} or more` : `${least} to ${most}`;
}
