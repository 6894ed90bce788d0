import { ACTING_ON_A_TERMINAL } from "../acting-on-a-terminal.ts";

/**
 * Data as JSON for standard output. Characters that would control a terminal are escaped, as JSON allows.
 *
 * @param data - plain data
 * @returns JSON that ends with a line end
 * @throws Error when a number in it is not finite: JSON would turn it into `null` and hide it
 */
export function json(data: unknown): { asIs: string } {
  const lines = JSON.stringify(data, onlyFinite, 2).split("\n");
  return { asIs: lines.map((line) => `${line.replace(ACTING_ON_A_TERMINAL, byCode)}\n`).join("") };
}

function byCode(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

function onlyFinite(key: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`the result holds ${value} at "${key}"`);
  return value;
}
