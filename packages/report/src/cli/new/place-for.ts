import { relative, resolve } from "node:path";
import type { CommandContext } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";
import { readTextFile } from "../files/read-input.ts";

/**
 * The place of a starter project: one that is known, or a climate table that can be read.
 *
 * @param place - as given after `--climate`
 * @param folder - where the project file will stand: a table's path is written from there
 * @param context - where relative paths start
 * @returns the place as the project file writes it
 * @throws CommandProblem when it is neither
 */
export async function placeFor(place: string, folder: string, context: CommandContext): Promise<string> {
  const { SHIPPED_CLIMATES, nearNames } = await import("@warmside/core");
  const names = Object.keys(SHIPPED_CLIMATES);
  const known = names.find((name) => name === place.trim().toLowerCase().replace(/\s+/g, "-"));
  if (known !== undefined) return known;
  if (/\.csv$/i.test(place)) {
    const path = resolve(context.folder, place);
    readTextFile(path, place);
    return JSON.stringify(relative(folder, path).replaceAll("\\", "/"));
  }
  const near = nearNames(place, names);
  const offer = near.length === 0 ? `Known are: ${names.join(", ")}.` : `Did you mean ${near.join(" or ")}?`;
  throw new CommandProblem(
    "unknown-place",
    `There is no climate "${place}". ${offer} The path of a climate table, ending in .csv, works too.`,
  );
}
