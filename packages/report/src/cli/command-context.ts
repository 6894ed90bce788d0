import { dirname, resolve } from "node:path";
import { type Terminal, terminalOf } from "./terminal.ts";

/** Where the command stands: folders, surroundings and what it prints on. */
export interface CommandContext {
  /** The folder where the user stands: relative paths start here. */
  folder: string;
  /** The folder the command was started in; under npm that is the folder of the package. */
  startedIn: string;
  environment: Readonly<Record<string, string | undefined>>;
  /** Standard output and standard error. */
  answers: Terminal;
  messages: Terminal;
}

/** The parts of a process that matter here. */
export interface ProcessParts {
  cwd(): string;
  env: Readonly<Record<string, string | undefined>>;
  stdout: { isTTY?: boolean; columns?: number };
  stderr: { isTTY?: boolean; columns?: number };
}

/**
 * Reads off a process where it stands.
 *
 * @param parts - the process
 * @returns its folders, surroundings and papers
 */
export function contextOf(parts: ProcessParts): CommandContext {
  const startedIn = parts.cwd();
  return {
    folder: folderOfUser(startedIn, parts.env),
    startedIn,
    environment: parts.env,
    answers: terminalOf(parts.stdout, parts.env),
    messages: terminalOf(parts.stderr, parts.env),
  };
}

/**
 * The folder where the user stands. A script of a package is started in the folder of the package, and the user's own
 * is in INIT_CWD; where a script has since moved elsewhere, INIT_CWD tells nothing.
 *
 * @param startedIn - the folder the command was started in
 * @param environment - INIT_CWD and npm_package_json count
 * @returns an absolute path
 */
export function folderOfUser(startedIn: string, environment: CommandContext["environment"]): string {
  const before = environment.INIT_CWD;
  const manifest = environment.npm_package_json;
  if (!before) return startedIn;
  if (manifest && resolve(dirname(manifest)) !== resolve(startedIn)) return startedIn;
  return resolve(startedIn, before);
}
