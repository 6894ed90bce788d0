import { dirname, resolve } from "node:path";
import { type Project, type Reading, readProject } from "@warmside/core";
import { oddityInWords } from "../answers/oddity-in-words.ts";
import type { Folders } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";
import { readInput, readTextFile } from "../files/read-input.ts";
import type { Line } from "../lines.ts";

/** A project file that was read, with every other file it named. */
export interface ProjectFile {
  /** Absolute paths of all files that were read, the project file first: none of them may be written over. */
  paths: string[];
  reading: Reading<Project>;
}

/**
 * Reads a project file and the tables it names; their paths start at the folder of the project file.
 *
 * @param shown - the path as written on the command line
 * @param folders - where relative paths start
 * @returns the project, or every problem in it
 * @throws CommandProblem when the file itself cannot be read
 */
export function readProjectFile(shown: string, folders: Folders): ProjectFile {
  const input = readInput(shown, folders);
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
  return { paths, reading: readProject(input.text, { file }) };
}

/** A project file without a problem. */
export interface FileInOrder {
  refused: null;
  /** Absolute paths of all files that were read, the project file first: none of them may be written over. */
  paths: readonly string[];
  buildUps: number;
  variants: number;
  oddities: Project["oddities"];
  /** The oddities in words. */
  notes: readonly Line[];
}

/**
 * What a command needs to know of a project file before it is assessed.
 *
 * @param file - as read
 * @param project - what is in it
 * @returns plain data
 */
export function fileInOrder({ paths }: ProjectFile, { buildUps, oddities }: Project): FileInOrder {
  return {
    refused: null,
    paths,
    buildUps: buildUps.length,
    variants: buildUps.reduce((sum, { variants }) => sum + variants.length, 0),
    oddities,
    notes: oddities.map(oddityInWords),
  };
}
