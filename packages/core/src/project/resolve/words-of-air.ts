import { comparable } from "../../problems/near-names.ts";

/**
 * Recognises a name that is not a material but means an air space, or battens with air between them.
 *
 * @param name - as written
 * @returns "air" or "battens"; null for any other name
 * Source: words of the trade (common practice).
 * @example wordOfAir("ventilated air gap") // "air"
 */
export function wordOfAir(name: string): "air" | "battens" | null {
  const words = comparable(name).split(" ");
  if (!words.every((word) => BATTENS.has(word) || SPACES.has(word) || BESIDE.has(word))) return null;
  if (words.some((word) => BATTENS.has(word))) return "battens";
  return words.some((word) => SPACES.has(word)) ? "air" : null;
}

const BATTENS = new Set(["batten", "battens", "counterbatten", "counterbattens", "battening"]);
const SPACES = new Set([
  "air", "gap", "gaps", "airgap", "airspace", "cavity", "cavities", "void", "voids",
]); // biome-ignore format: words
/** Words that describe an air space but do not name one by themselves. */
const BESIDE = new Set([
  "and", "closed", "counter", "cross", "drained", "empty", "layer", "open", "sealed", "service", "space", "still",
  "unvented", "unventilated", "vented", "ventilated", "ventilation",
]); // biome-ignore format: words
