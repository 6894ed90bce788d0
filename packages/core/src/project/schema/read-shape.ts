import type * as z from "zod";
// Not imported by way of `z.core`, which would put all of it into a bundle.
import { config, util } from "zod/v4/core";
import type { ProblemPath } from "../../problems/types.ts";
import { pathKey } from "../text/source-map.ts";
import { valueAt } from "../value-at.ts";
import { projectSchema, type WrittenProject } from "./schema-project.ts";

type Issue = z.core.$ZodIssue;

/** The outcome of checking a project file against its schema once: what could be read, and what could not. */
export interface Shape {
  /** The project with its quantities read; null if anything in it does not have the right shape. */
  readonly whole: WrittenProject | null;
  readonly issues: readonly Issue[];
  /**
   * What the schema read at a path; null if anything in it does not have the right shape.
   * The caller names its type, which is that of the schema at the path.
   */
  at<Part>(path: ProblemPath): Part | null;
}

/** Issues after which the schema does not read the inside of a value: it fits no form, or the list is too long. */
const LEFT_UNREAD: ReadonlySet<Issue["code"]> = new Set(["invalid_union", "too_big"]);

/**
 * Checks the data of a project file against its schema. Each value is checked, and each quantity read, only here.
 *
 * @param data - the data of a project file
 * @returns every part that has the right shape, whatever is wrong elsewhere, and every issue
 */
export function readShape(data: unknown): Shape {
  // `safeParse` returns only the issues if there are any; `run`, which it uses, also returns the parts that were read.
  const { value, issues: raw } = projectSchema._zod.run({ value: data, issues: [] }, {}) as z.core.ParsePayload;
  const issues = raw.map((issue) => util.finalizeIssue(issue, {}, config()));
  const faulty = new Set<string>();
  const unread = new Set<string>();
  for (const { path, code } of issues) {
    const steps = path as (string | number)[];
    for (let length = 0; length <= steps.length; length += 1) faulty.add(pathKey(steps.slice(0, length)));
    if (LEFT_UNREAD.has(code)) unread.add(pathKey(steps));
  }
  const isUnread = (path: ProblemPath): boolean =>
    unread.size > 0 && path.some((_, index) => unread.has(pathKey(path.slice(0, index))));
  const at = <Part>(path: ProblemPath): Part | null =>
    faulty.has(pathKey(path)) || isUnread(path) ? null : ((valueAt(value, path) as Part | undefined) ?? null);
  return { whole: at<WrittenProject>([]), issues, at };
}
