import type * as z from "zod";
import { nearNames } from "../problems/near-names.ts";
import type { Problem, ProblemPath } from "../problems/types.ts";
import { faultsOfKind } from "./fault-of-kind.ts";
import { faultOfUnknownKey } from "./fault-of-unknown-key.ts";
import type { FileData } from "./file-data.ts";
import type { ProblemCollector } from "./problem-collector.ts";
import { projectSchema } from "./schema-project.ts";
import { LONGEST_TEXT, QUANTITY_MARK } from "./schema-values.ts";
import { faultOfKey, faultOfValue, type ShapeFault } from "./shape-fault.ts";
import { valueAt } from "./value-at.ts";

type Issue = z.core.$ZodIssue;

/**
 * Adds a problem for everything in which the file does not have the shape of a project.
 *
 * @param file - data and positions
 * @param collector - where problems go
 */
export function addProblemsOfShape(file: FileData, collector: ProblemCollector): void {
  const issues = projectSchema.safeParse(file.data).error?.issues ?? [];
  for (const { code, path, details, isAtKey } of issues.flatMap((issue) => faultsOfIssue(issue, [], file.data))) {
    if (isAtKey) collector.addAtKey(code, path, details);
    else collector.add(code, path, details);
  }
}

function faultsOfIssue(issue: Issue, around: ProblemPath, data: unknown): ShapeFault[] {
  const path = [...around, ...issue.path.map((step) => (typeof step === "symbol" ? String(step) : step))];
  switch (issue.code) {
    case "custom":
      return [faultOfCustom(issue, path, data)];
    case "unrecognized_keys":
      return issue.keys.map((key) => faultOfUnknownKey(key, path, data));
    case "invalid_union":
      return faultsOfUnion(issue, path, data);
    case "invalid_value":
      return [faultOfChoice(issue.values.map(String), path, data)];
    case "too_small":
    case "too_big":
      return [faultOfSize(issue, path)];
    default:
      return faultsOfKind(issue.message, path, data);
  }
}

/** Issues that the schema's own checks made carry a problem's code and details. */
function faultOfCustom(issue: z.core.$ZodIssueCustom, path: ProblemPath, data: unknown): ShapeFault {
  const { code, details } = issue.params as { code: string; details: Problem["details"] };
  return valueAt(data, path) === undefined ? faultOfKey(code, path, details) : faultOfValue(code, path, details);
}

/** Faults of the form that was probably meant: the one that does not fail by its kind alone. */
function faultsOfUnion(issue: z.core.$ZodIssueInvalidUnion, path: ProblemPath, data: unknown): ShapeFault[] {
  const failsByKind = (form: readonly Issue[]): boolean =>
    form.some(({ path: inner, code }) => inner.length === 0 && (code === "invalid_type" || code === "invalid_value"));
  const meant = issue.errors.find((form) => !failsByKind(form));
  if (meant !== undefined) return meant.flatMap((inner) => faultsOfIssue(inner, path, data));
  const asQuantity = issue.errors
    .flat()
    .find((inner) => inner.path.length === 0 && inner.message.startsWith(QUANTITY_MARK));
  const isNumber = typeof valueAt(data, path) === "number";
  return faultsOfKind(isNumber && asQuantity !== undefined ? asQuantity.message : issue.message, path, data);
}

function faultOfChoice(options: readonly string[], path: ProblemPath, data: unknown): ShapeFault {
  const received = valueAt(data, path);
  const expected = options.length === 1 ? String(options[0]) : `one of ${options.join(", ")}`;
  const details = { expected, key: String(path[path.length - 1]), example: options[0] ?? null };
  if (received === undefined) return faultOfKey("key-missing", path, details);
  if (received === null) return faultOfKey("value-missing", path, details);
  const near = typeof received === "string" ? nearNames(received, options) : [];
  return faultOfValue("not-one-of", path, { options, near });
}

function faultOfSize(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, path: ProblemPath): ShapeFault {
  const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
  const isText = issue.origin === "string";
  if (issue.origin === "number" || issue.origin === "int") return faultOfValue("layer-number", path, { limit });
  if (issue.code === "too_small") return faultOfValue(isText ? "text-empty" : "list-empty", path);
  return faultOfValue(isText ? "text-too-long" : "list-too-long", path, { limit: isText ? LONGEST_TEXT : limit });
}
