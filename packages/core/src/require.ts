/**
 * Refuses an argument that is not a number within a range.
 *
 * @param value - what was given
 * @param name - its name, for example `temperature`
 * @param unit - for example `°C`; empty for a bare number
 * @param low - least value taken
 * @param high - greatest value taken
 * @throws TypeError when it is not a number, RangeError when it lies outside or is not finite
 */
export function requireNumber(value: unknown, name: string, unit: string, low: number, high: number): void {
  if (typeof value !== "number")
    throw new TypeError(`${name} must be a number${unit && ` in ${unit}`}, was ${shown(value)}`);
  if (value >= low && value <= high) return;
  const range = high === Number.MAX_VALUE ? `${low} or more` : `from ${low} to ${high}`;
  const finite = low === -Number.MAX_VALUE ? "finite" : range;
  throw new RangeError(`${name} must be ${finite}${unit && ` ${unit}`}, was ${value}`);
}

/** Refuses an argument that is not a finite number. */
export function requireFinite(value: unknown, name: string, unit = ""): void {
  requireNumber(value, name, unit, -Number.MAX_VALUE, Number.MAX_VALUE);
}

/** Refuses an argument that is not a text. */
export function requireText(value: unknown, name: string): void {
  if (typeof value !== "string") throw new TypeError(`${name} must be a text, was ${shown(value)}`);
}

/** Refuses an argument that is not one of a few words or numbers. */
export function requireOneOf(value: unknown, name: string, options: readonly (string | number)[]): void {
  if (options.includes(value as string)) return;
  throw new RangeError(`${name} must be one of ${options.join(", ")}, was ${shown(value)}`);
}

/** Refuses an argument that is not an object, or lacks a key that it needs. */
export function requireObject(value: unknown, name: string, keys: readonly string[] = []): void {
  const is = typeof value === "object" && value !== null && !Array.isArray(value);
  if (!is) throw new TypeError(`${name} must be an object, was ${shown(value)}`);
  const missing = keys.filter((key) => !Object.hasOwn(value, key));
  if (missing.length > 0) throw new TypeError(`${name} must have ${missing.join(", ")}`);
}

/** Refuses an argument that is not a function. */
export function requireFunction(value: unknown, name: string): void {
  if (typeof value !== "function") throw new TypeError(`${name} must be a function, was ${shown(value)}`);
}

/** Refuses an argument that is not a list. */
export function requireList(value: unknown, name: string): void {
  if (!Array.isArray(value)) throw new TypeError(`${name} must be a list, was ${shown(value)}`);
}

/** Refuses an argument that is not a list of finite numbers, or is too short. */
export function requireNumbers(value: unknown, name: string, unit: string, least = 0): void {
  const isList = Array.isArray(value) || value instanceof Float64Array;
  if (!isList || value.length < least) {
    const many = least > 0 ? ` of at least ${least}` : "";
    throw new TypeError(`${name} must be a list of numbers${unit && ` in ${unit}`}${many}, was ${shown(value)}`);
  }
  for (const one of value) requireNumber(one, `each of ${name}`, unit, -Number.MAX_VALUE, Number.MAX_VALUE);
}

/** The texts of an iterable, which is read in one pass; refuses anything else. */
export function requireTexts(value: unknown, name: string): string[] {
  const isList = typeof value === "object" && value !== null && Symbol.iterator in value;
  if (!isList) throw new TypeError(`${name} must be a list of texts, was ${shown(value)}`);
  const texts = [...(value as Iterable<string>)];
  for (const text of texts) requireText(text, `each of ${name}`);
  return texts;
}

function shown(value: unknown): string {
  if (value === null || typeof value !== "object")
    return typeof value === "string" ? JSON.stringify(value).slice(0, 40) : String(value);
  return Array.isArray(value) ? "a list" : "an object";
}
