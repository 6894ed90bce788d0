import { dirname, resolve } from "node:path";
import { type Project, type Reading, readProject } from "@warmside/core";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem } from "./command-result.ts";
import { type InputFile, readInput, readTextFile } from "./files/read-input.ts";

/** A project file that was read, with every other file it named. */
export interface ProjectFile {
  input: InputFile;
  /** Absolute paths of all files that were read: none of them may be written over. */
  paths: string[];
  reading: Reading<Project>;
}

/**
 * Reads a project file and the tables it names; their paths start at the folder of the project file.
 *
 * @param shown - the path as written on the command line
 * @param context - where the user stands
 * @returns the project, or every problem in it
 * @throws CommandProblem when the file itself cannot be read
 */
export function readProjectFile(shown: string, context: CommandContext): ProjectFile {
  const input = readInput(shown, context);
  const paths = [input.path];
  const file = (named: string): { text: string } | { failure: string } => {
    const path = resolve(dirname(input.path), named);
    try {
      const text = readTextFile(path, named);
      paths.push(path);
      return { text };
    } catch (error) {
      if (error instanceof CommandProblem) return { failure: error.why };
      throw error;
    }
  };
  return { input, paths, reading: readProject(input.text, { file }) };
}
