import { comparable, nearNames } from "../problems/near-names.ts";
import type { ProblemPath } from "../problems/types.ts";
import type { ReadingContext, SuppliedFile } from "./reading-context.ts";
import { listAt } from "./value-at.ts";

/** Supplies the files beside the project file; the caller decides which paths may be reached. */
export interface Supplies {
  file(path: string): SuppliedFile;
}

/** One of the user's own tables: its name, text and path. */
export interface FoundText {
  name: string;
  text: string;
  file: string;
}

/**
 * Fetches a table that the project names by path.
 *
 * @param written - the path as written
 * @param path - where it stands in the project file
 * @param supplies - supplies files; nothing is opened here
 * @param context - problems
 * @returns its text, or null after adding a problem
 */
export function fetchTable(
  written: string,
  path: ProblemPath,
  supplies: Supplies | undefined,
  context: Pick<ReadingContext, "file" | "collector">,
): FoundText | null {
  if (/^[a-z][a-z0-9+.-]+:\/\//i.test(written)) {
    context.collector.add("file-is-address", path, { name: written });
    return null;
  }
  const supplied = supplies?.file(written) ?? { failure: "no files are at hand here" };
  if ("text" in supplied) return { name: nameOfFile(written), text: supplied.text, file: written };
  context.collector.add("file-unreadable", path, { name: written, failure: supplied.failure });
  return null;
}

/**
 * Finds a place by name, whatever its case, hyphens and spaces.
 *
 * @param written - as written
 * @param path - where it stands
 * @param known - the places there are
 * @param context - problems
 * @returns its name as in the list of known places, or null after adding a problem
 */
export function findPlace(
  written: string,
  path: ProblemPath,
  known: readonly string[],
  context: Pick<ReadingContext, "file" | "collector">,
): string | null {
  const found = known.find((name) => comparable(name) === comparable(written));
  if (found !== undefined) return found;
  context.collector.add("climate-unknown", path, { name: written, near: nearNames(written, known), known });
  return null;
}

/**
 * Finds every place of a list.
 *
 * @param path - where the list stands
 * @param known - the places there are
 * @param context - data and problems
 * @returns their names; those with problems are left out
 */
export function findPlaces(path: ProblemPath, known: readonly string[], context: ReadingContext): string[] {
  return listAt(context.file.data, path).flatMap((written, index) => {
    const name = typeof written === "string" ? findPlace(written, [...path, index], known, context) : null;
    return name === null ? [] : [name];
  });
}

function nameOfFile(path: string): string {
  return path.replace(/^.*[\\/]/, "").replace(/\.csv$/i, "");
}
