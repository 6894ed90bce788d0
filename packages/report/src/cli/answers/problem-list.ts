import type { WordedProblem } from "@warmside/core";
import { harmless, type Terminal, wrap } from "../terminal.ts";

/** More are not shown, only counted. */
export const MOST_SHOWN = 50;

/** A problem in words, and the file it lies in. */
export interface LocatedProblem extends WordedProblem {
  file: string;
}

/**
 * Problems of a file for a terminal: where, what, what was expected and what to write.
 *
 * @param problems - in words, ordered by line
 * @param file - the project file as the reader knows it
 * @param terminal - what it is printed on
 * @returns text that ends with a line end; at most 50 problems, then the count
 */
export function problemList(problems: readonly LocatedProblem[], file: string, terminal: Terminal): string {
  const shown = problems.slice(0, MOST_SHOWN).map((problem) => oneProblem(problem, terminal));
  return `${[...shown, wrap(countInWords(problems.length, file), terminal.width)].join("\n\n")}\n`;
}

const INDENT = "  ";

function oneProblem(problem: LocatedProblem, terminal: Terminal): string {
  const where =
    problem.line === null
      ? harmless(problem.file)
      : `${harmless(problem.file)}, line ${problem.line}${problem.column === null ? "" : `, column ${problem.column}`}`;
  const path = problem.path === "" ? "" : terminal.paint("dim", ` (${harmless(problem.path)})`);
  const lines = [terminal.paint("bold", where) + path, wrap(harmless(problem.message), terminal.width, INDENT)];
  for (const [label, text] of labelled(problem)) {
    if (text !== null && text !== "") lines.push(hanging(label, harmless(text), terminal));
  }
  return lines.join("\n");
}

function labelled(problem: WordedProblem): [string, string | null][] {
  return [
    ["expected", problem.expected],
    ["found", problem.received],
    ["perhaps", problem.likelySlip?.replace(/^(?:Perhaps|Probably) /, "") ?? null],
    ["write", problem.write],
  ];
}

/** A label, and its text beside it; further lines stand under the text. */
function hanging(label: string, text: string, terminal: Terminal): string {
  const indent = " ".repeat(12);
  const wrapped = text
    .split("\n")
    .map((line) => wrap(line, terminal.width, indent))
    .join("\n");
  return `${INDENT}${label}:`.padEnd(indent.length) + wrapped.slice(indent.length);
}

function countInWords(count: number, file: string): string {
  const many = count === 1 ? "1 problem" : `${count} problems`;
  const cut = count > MOST_SHOWN ? `, of which the first ${MOST_SHOWN} are shown` : "";
  return `${many} in ${file}${cut}. Nothing was worked out.`;
}
