import { existsSync, readFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { readProject } from "@warmside/core";
import { withFingerprint } from "../../fingerprint.ts";
import type { CommandContext } from "../command-context.ts";
import { CommandProblem, type CommandResult, done } from "../command-result.ts";
import { besideInput, outputPlace } from "../files/output-place.ts";
import { readInput, readTextFile } from "../files/read-input.ts";
import { writeWhole } from "../files/write-whole.ts";
import { type Line, line } from "../lines.ts";
import { PAGE_MARK } from "../report-places.ts";

/** What the page is given: the project's text, its name, and the tables it names by their paths. */
interface GivenProject {
  text: string;
  fileName: string;
  tables: Record<string, string>;
}

/**
 * Writes the live page as one file.
 *
 * @param file - the project file as written on the command line; null for a page that begins with a stud wall
 * @param out - where to write; null for the usual place
 * @param context - where the user stands
 * @returns what to print
 * @throws CommandProblem when the file cannot be read or the page cannot be written
 */
export async function writePage(
  file: string | null,
  out: string | null,
  context: CommandContext,
): Promise<CommandResult> {
  const given = file === null ? null : givenFrom(file, context);
  const usual = given === null ? join(context.folder, "my-studio-page.html") : besideInput(given.path, "-page.html");
  const { path, shown } = outputPlace(out ?? usual, out !== null, PAGE_MARK, given?.inputs ?? [], context);
  await writeWhole([{ path, shown, content: await withFingerprint(pageWith(given?.project ?? null)) }]);
  return done([line(`Page: ${shown}`), ...(given?.notes ?? [])]);
}

function givenFrom(
  file: string,
  context: CommandContext,
): { path: string; inputs: string[]; project: GivenProject; notes: Line[] } {
  const { path, text } = readInput(file, context);
  const tables: Record<string, string> = {};
  const supply = (named: string): { text: string } | { failure: string } => {
    try {
      tables[named] = readTextFile(resolve(dirname(path), named), named);
      return { text: tables[named] };
    } catch (error) {
      if (error instanceof CommandProblem) return { failure: error.why };
      throw error;
    }
  };
  const reading = readProject(text, { file: supply });
  const count = reading.ok ? 0 : reading.problems.length;
  const note = `${file} has ${count === 1 ? "a problem" : `${count} problems`}. The page lists ${count === 1 ? "it" : "them"}.`;
  return {
    path,
    inputs: [path, ...Object.keys(tables).map((named) => resolve(dirname(path), named))],
    project: { text, fileName: basename(path), tables },
    notes: count === 0 ? [] : [line(note)],
  };
}

/** The page as it was built, with the project in the place that is kept for it. */
function pageWith(project: GivenProject | null): string {
  const page = readFileSync(builtPage(), "utf8");
  if (project === null) return page;
  const data = JSON.stringify(project).replaceAll("<", "\\u003c");
  return page.replace(EMPTY_PLACE, () => EMPTY_PLACE.replace("null", () => data));
}

/** Beside the bundled command; from the sources, in the folder of bundles. */
function builtPage(): URL {
  const addresses = ["./warmside-page.html", "../../../bundle/warmside-page.html"].map(
    (address) => new URL(address, import.meta.url),
  );
  const found = addresses.find((address) => existsSync(address));
  if (found === undefined) throw new Error("the page was not built with the command");
  return found;
}

const EMPTY_PLACE = '<script type="application/json" id="given-project">null</script>';
