import type * as z from "zod";
// Not by way of `z.core`: a bundle would take all of that in.
import { config, util } from "zod/v4/core";
import type { ProblemPath } from "../../problems/types.ts";
import { pathKey } from "../text/source-map.ts";
import { valueAt } from "../value-at.ts";
import { projectSchema, type WrittenProject } from "./schema-project.ts";

type Issue = z.core.$ZodIssue;

/** A project file laid on its schema once: what could be read, and what could not. */
export interface Shape {
  /** The project with its quantities read; null where anything in it has not the right shape. */
  readonly whole: WrittenProject | null;
  readonly issues: readonly Issue[];
  /**
   * What the schema read at a path; null where that, or anything in it, has not the right shape.
   * Its type is that of the schema at the path, which the caller names.
   */
  at<Part>(path: ProblemPath): Part | null;
}

/** Issues after which the schema leaves what is inside a value as it stands: one of no form, a list too long. */
const LEFT_UNREAD: ReadonlySet<Issue["code"]> = new Set(["invalid_union", "too_big"]);

/**
 * Lays the data of a project file on its schema: each value is checked, and each quantity read, this one time.
 *
 * @param data - of a project file
 * @returns all parts that have the right shape, whatever is wrong elsewhere, and every issue
 */
export function readShape(data: unknown): Shape {
  // `safeParse` keeps nothing beside an issue; `run`, which it is made of, hands back the parts that could be read.
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
