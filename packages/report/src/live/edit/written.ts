import { stringify } from "yaml";
import type { Data } from "./parsed.ts";

/**
 * Data on one line, as it can stand anywhere in a project file: maps and lists in brackets, words in quotation marks
 * only where they need them.
 *
 * @param data - what is to stand there
 * @param asJson - true in a file that is JSON
 * @returns the text
 * @example written({ material: "plywood", thickness: "12 mm" }, false) // "{ material: plywood, thickness: 12 mm }"
 */
export function written(data: Data, asJson: boolean): string {
  if (asJson) return JSON.stringify(data);
  const inList = stringify([data], { version: "1.2", schema: "core", collectionStyle: "flow", lineWidth: 0 });
  return inList.trim().slice(1, -1).trim();
}

/** A key as it stands in front of its colon. */
export function writtenKey(key: string, asJson: boolean): string {
  return asJson ? JSON.stringify(key) : written(key, false);
}
