import { dirname, resolve } from "node:path";
import type { Line } from "./lines.ts";
import type { ProgressStream } from "./progress.ts";
import { type Questions, questionsAt } from "./questions-at.ts";
import { type Terminal, terminalOf, textFor } from "./terminal.ts";

/** The folders that relative paths start at. */
export interface Folders {
  /** Where the user stands. */
  folder: string;
  /** Where the command was started; under npm that is the folder of the package. */
  startedIn: string;
}

/** The context of the command: folders, environment and output. */
export interface CommandContext extends Folders {
  environment: Readonly<Record<string, string | undefined>>;
  /** Standard output and standard error. */
  answers: Terminal;
  messages: Terminal;
  /** Prints lines on standard output at once, before the command has ended. */
  say(lines: readonly Line[]): Promise<void>;
  /** Asks questions at a terminal; null if nobody can answer. */
  questions: Questions | null;
  /** Where progress is shown: standard error. */
  progress: ProgressStream;
}

/** The folders alone, which can be sent to a thread. */
export function foldersOf({ folder, startedIn }: CommandContext): Folders {
  return { folder, startedIn };
}

interface OutputStream {
  isTTY?: boolean;
  columns?: number;
  write?(text: string, written?: () => void): unknown;
}

/** The parts of a process that matter here. */
export interface ProcessParts {
  cwd(): string;
  env: Readonly<Record<string, string | undefined>>;
  /** Left out where nobody can answer. */
  stdin?: NodeJS.ReadStream;
  stdout: OutputStream;
  stderr: OutputStream;
}

/**
 * Reads the context from a process.
 *
 * @param parts - the process
 * @returns its folders, surroundings and papers
 */
export function contextOf(parts: ProcessParts): CommandContext {
  const startedIn = parts.cwd();
  const answers = terminalOf(parts.stdout, parts.env);
  return {
    folder: folderOfUser(startedIn, parts.env),
    startedIn,
    environment: parts.env,
    answers,
    messages: terminalOf(parts.stderr, parts.env),
    say: (lines) =>
      new Promise((resolve) => {
        if (lines.length === 0 || parts.stdout.write === undefined) resolve();
        else parts.stdout.write(textFor(lines, answers), () => resolve());
      }),
    questions: parts.stdin?.isTTY === true && parts.stdout.isTTY === true ? questionsAt(parts.stdin, answers) : null,
    progress: parts.stderr,
  };
}

/**
 * The folder where the user stands. A script of a package is started in the folder of the package, and the user's own
 * is in INIT_CWD; if a script has since changed folder, INIT_CWD does not help.
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
