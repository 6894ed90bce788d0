import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { readTextFile } from "./read-input.ts";

/**
 * Another project file whose report has the same name: `a.yml` beside `a.yaml`, or `a-place.yaml`, assessed, beside
 * `a.yaml`, whose study of places it is.
 *
 * @param report - absolute path of the report
 * @param input - absolute path of the project file whose report it should become
 * @returns the other file's name; null where there is none
 */
export function otherProjectOf(report: string, input: string): string | null {
  const stem = basename(report).replace(/-report\.html$/, "");
  const stems = [stem, stem.replace(/-(?:place|compare|vary|spread)$/, "")];
  const names = [...new Set(stems)].flatMap((one) => ENDINGS.map((ending) => one + ending));
  return names.find((name) => name !== basename(input) && isProject(join(dirname(report), name))) ?? null;
}

const ENDINGS = [".yaml", ".yml", ".json"];

/** A result of `--json` may stand under such a name too. */
function isProject(path: string): boolean {
  try {
    return existsSync(path) && /(?:^|[\s{,])["']?build-ups["']?\s*:/.test(readTextFile(path, path));
  } catch {
    return false;
  }
}
