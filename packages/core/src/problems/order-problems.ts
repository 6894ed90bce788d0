import type { Problem } from "./types.ts";

/**
 * Puts problems in the order of the text: the project file by line and column, then the tables that it names.
 *
 * @param problems - problems in any order; one may occur twice
 * @returns a new list, each problem once
 */
export function orderProblems(problems: readonly Problem[]): Problem[] {
  const once = new Map<string, Problem>();
  for (const problem of problems) {
    const key = JSON.stringify([fileOf(problem), problem.code, problem.path, problem.position, problem.details.key]);
    if (!once.has(key)) once.set(key, problem);
  }
  return [...once.values()].sort(
    (one, other) =>
      fileOf(one).localeCompare(fileOf(other), "en") || lineOf(one) - lineOf(other) || columnOf(one) - columnOf(other),
  );
}

/** The table in which a problem is; empty for the project file itself. */
function fileOf(problem: Problem): string {
  const file = problem.details.file;
  return typeof file === "string" ? file : "";
}

function lineOf(problem: Problem): number {
  return problem.position?.line ?? 0;
}

function columnOf(problem: Problem): number {
  return problem.position?.column ?? 0;
}
