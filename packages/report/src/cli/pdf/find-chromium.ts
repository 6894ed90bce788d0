import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";
import type { CommandContext } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";

/**
 * Finds a browser that can print: the one named by CHROMIUM, or a usual one on the PATH or in its usual place.
 *
 * @param environment - CHROMIUM, PATH and, on Windows, the folders of programs
 * @returns its path
 * @throws CommandProblem when there is none
 */
export function findChromium(environment: CommandContext["environment"]): string {
  const named = environment.CHROMIUM;
  if (named) {
    if (isProgram(named)) return named;
    throw new CommandProblem("no-browser", `CHROMIUM names ${named}, which is not a program. ${PRINT_YOURSELF}`);
  }
  const found = candidates(environment).find(isProgram);
  if (found !== undefined) return found;
  throw new CommandProblem("no-browser", `A PDF needs Chromium or Chrome, and none was found. ${PRINT_YOURSELF}`);
}

const PRINT_YOURSELF =
  "Omit --pdf, open the report in any browser and print it from there; " +
  "or name the program in the variable CHROMIUM. Nothing was written.";

const NAMES = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "chrome.exe",
  "msedge.exe",
];

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

const WINDOWS_PLACES = ["Google/Chrome/Application/chrome.exe", "Microsoft/Edge/Application/msedge.exe"];

function candidates(environment: CommandContext["environment"]): string[] {
  const onPath = (environment.PATH ?? "")
    .split(delimiter)
    .filter((folder) => folder !== "")
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const programFolders = [environment.PROGRAMFILES, environment["PROGRAMFILES(X86)"], environment.LOCALAPPDATA];
  const onWindows = programFolders
    .filter((folder): folder is string => Boolean(folder))
    .flatMap((folder) => WINDOWS_PLACES.map((place) => join(folder, place)));
  return [...onPath, ...USUAL_PLACES, ...onWindows];
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
