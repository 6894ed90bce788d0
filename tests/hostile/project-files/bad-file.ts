import { changed, SMALL_PROJECT } from "../../core/project-texts.ts";

/** One bad input: what it is, the file, and the problems that it must give, no more and no fewer. */
export interface BadFile {
  /** What is wrong with it, in words. */
  title: string;
  text: string;
  /** Tables that the project names. */
  files?: Readonly<Record<string, string>>;
  problems: readonly ExpectedProblem[];
}

export interface ExpectedProblem {
  /** Line in the project file, or in the table; null for the file as a whole. */
  line: number | null;
  code: string;
  /** A piece of the printed problem. */
  says: string;
}

/** One problem. */
export function bad(title: string, text: string, line: number | null, code: string, says: string): BadFile {
  return { title, text, problems: [{ line, code, says }] };
}

/** The small project with one piece replaced, and the one problem that it gives. */
export function piece(title: string, from: string, by: string, line: number, code: string, says: string): BadFile {
  return bad(title, changed(from, by), line, code, says);
}

/** The small project with a line put in before the climate. */
export function topLine(title: string, line: string, code: string, says: string): BadFile {
  return piece(title, "climate:", `${line}\nclimate:`, 2, code, says);
}

/** The small project with a key put into its build-up. */
export function wallKey(title: string, key: string, code: string, says: string): BadFile {
  return piece(title, "    framings:", `    ${key}\n    framings:`, 9, code, says);
}

/** The small project with another outermost layer. */
export function lastLayer(title: string, layer: string, code: string, says: string): BadFile {
  return piece(title, "{ material: softwood timber, thickness: 20 mm }", layer, 16, code, says);
}

export { changed, SMALL_PROJECT };
