import type { ProblemPath } from "./types.ts";

/**
 * Writes a path in the usual notation for data, with indices from 0.
 *
 * @param path - steps into the file's data
 * @returns for example `build-ups[1].layers[2].thickness`; empty for the file as a whole
 * @example pathInText(["build-ups", 1, "layers", 2, "thickness"]) // "build-ups[1].layers[2].thickness"
 */
export function pathInText(path: ProblemPath): string {
  return path.map((step, index) => stepInText(step, index === 0)).join("");
}

function stepInText(step: string | number, isFirst: boolean): string {
  if (typeof step === "number") return `[${step}]`;
  if (!PLAIN_KEY.test(step)) return `[${JSON.stringify(step)}]`;
  return isFirst ? step : `.${step}`;
}

/** Keys that need no quotes: words with spaces and hyphens. */
const PLAIN_KEY = /^[\p{L}\p{N}_][\p{L}\p{N}_ -]*$/u;
