import type { WordedProblem } from "@warmside/core";
import { groups, type Line, labelled, line, paragraph } from "../lines.ts";

/** More are not shown, only counted. */
export const MOST_SHOWN = 50;

/** A problem in words, and the file that it is in. */
export interface LocatedProblem extends WordedProblem {
  file: string;
}

/**
 * Prints the problems of a file: where, what, what was expected and what to write.
 *
 * @param problems - in words, ordered by line
 * @param file - the project file as the reader knows it
 * @returns at most 50 problems, then the count
 */
export function problemList(problems: readonly LocatedProblem[], file: string): Line[] {
  const shown = problems.slice(0, MOST_SHOWN).map(oneProblem);
  return groups(...shown, [paragraph(countInWords(problems.length, file))]);
}

function oneProblem(problem: LocatedProblem): Line[] {
  const { line: number, column, path } = problem;
  const where = [problem.file, number === null ? "" : `, line ${number}`, column === null ? "" : `, column ${column}`];
  return [
    line(
      { colour: "bold", text: where.join("") },
      ...(path === "" ? [] : [{ colour: "dim", text: ` (${path})` } as const]),
    ),
    paragraph(problem.message, 2),
    ...told(problem).flatMap(([label, text]) => (text === null || text === "" ? [] : labelled(label, text))),
  ];
}

function told(problem: WordedProblem): [string, string | null][] {
  return [
    ["expected", problem.expected],
    ["found", problem.received],
    ["perhaps", problem.likelySlip?.replace(/^(?:Perhaps you mean|Perhaps|Probably) /, "") ?? null],
    ["write", problem.write.length === 0 ? null : problem.write.join(" or ")],
  ];
}

function countInWords(count: number, file: string): string {
  const many = count === 1 ? "1 problem" : `${count} problems`;
  const cut = count > MOST_SHOWN ? `, of which the first ${MOST_SHOWN} are shown` : "";
  return `${many} in ${file}${cut}. Nothing was calculated.`;
}
