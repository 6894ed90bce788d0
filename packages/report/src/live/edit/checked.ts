import { type Data, dataOf, type Path } from "./parsed.ts";

/**
 * An edited text, or null if the edit did not give the intended data: every edit is read again and compared.
 *
 * @param before - the text as it was
 * @param after - the text with the edit
 * @param change - makes the change to the data that the edit was meant to make
 * @returns the edited text; null where its data is any other
 */
export function checked(before: string, after: string, change: (data: unknown) => void): string | null {
  const meant = dataOf(before);
  const came = dataOf(after);
  if (meant === undefined || came === undefined) return null;
  change(meant);
  return sameData(meant, came) ? after : null;
}

/** Puts a value into data, with what is missing on the way to it. */
export function put(data: unknown, path: Path, value: Data): void {
  let at = data as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) {
    at[key] ??= {};
    at = at[key] as Record<string | number, unknown>;
  }
  at[path.at(-1)!] = value;
}

/** The data at a path; undefined where there is none. */
export function dataAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((at, key) => (at as Record<string | number, unknown> | null | undefined)?.[key], data);
}

/** Whether two pieces of data say the same; the order of keys says nothing. */
export function sameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && sameData(dataAt(one, [key]), dataAt(other, [key])))
  );
}
