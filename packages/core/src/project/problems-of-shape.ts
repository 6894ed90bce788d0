import type * as z from "zod";
import { comparable, nearNames } from "../problems/near-names.ts";
import type { Problem, ProblemPath } from "../problems/types.ts";
import type { QuantityName } from "../quantities/quantity-names.ts";
import { readBareNumber, readQuantity } from "../quantities/read-quantity.ts";
import { quantityOf } from "../quantities/vocabulary.ts";
import type { FileData } from "./file-data.ts";
import { keysAt } from "./keys-of-schema.ts";
import type { ProblemCollector } from "./problem-collector.ts";
import { projectSchema } from "./schema-project.ts";
import { KIND_MARK, LONGEST_TEXT, QUANTITY_MARK } from "./schema-values.ts";
import { valueAt } from "./value-at.ts";

type Issue = z.core.$ZodIssue;

/**
 * Adds a problem for everything in which the file does not have the shape of a project.
 *
 * @param file - data and positions
 * @param collector - where problems go
 */
export function addProblemsOfShape(file: FileData, collector: ProblemCollector): void {
  const parsed = projectSchema.safeParse(file.data);
  for (const issue of parsed.error?.issues ?? []) addIssue(issue, [], file, collector);
}

function addIssue(issue: Issue, around: ProblemPath, file: FileData, collector: ProblemCollector): void {
  const path = [...around, ...issue.path.map((step) => (typeof step === "symbol" ? String(step) : step))];
  const received = valueAt(file.data, path);
  switch (issue.code) {
    case "custom":
      return addCustom(issue, path, received, collector);
    case "unrecognized_keys":
      return issue.keys.forEach((key) => addUnknownKey(key, path, file, collector));
    case "invalid_union":
      return addUnion(issue, path, file, collector);
    case "invalid_value":
      return addChoice(issue.values.map(String), path, received, collector);
    case "too_small":
    case "too_big":
      return addSize(issue, path, collector);
    default:
      return addWrongKind(issue.message, path, received, file, collector);
  }
}

function addCustom(
  issue: z.core.$ZodIssueCustom,
  path: ProblemPath,
  received: unknown,
  collector: ProblemCollector,
): void {
  const { code, details } = issue.params as { code: string; details: Problem["details"] };
  if (received === undefined) collector.addAtKey(code, path, details);
  else collector.add(code, path, details);
}

function addWrongKind(
  mark: string,
  path: ProblemPath,
  received: unknown,
  file: FileData,
  collector: ProblemCollector,
): void {
  const expected = mark.startsWith(KIND_MARK) ? mark.slice(KIND_MARK.length) : null;
  const quantity = mark.startsWith(QUANTITY_MARK) ? (mark.slice(QUANTITY_MARK.length) as QuantityName) : null;
  if (received === undefined) return collector.addAtKey("key-missing", path, whatIsExpected(expected, quantity, path));
  if (received === null) return collector.addAtKey("value-missing", path, whatIsExpected(expected, quantity, path));
  if (quantity !== null && (typeof received === "number" || typeof received === "string")) {
    if (typeof received === "number" && isHalfOfComma(path, file)) return;
    const isBare = quantityOf(quantity).unit.written === "";
    const reading = isBare ? readBareNumber(received, quantity) : readQuantity(String(received), quantity);
    if (!reading.ok) return reading.problems.forEach((problem) => collector.adopt(problem, path));
  }
  collector.add("wrong-kind", path, whatIsExpected(expected, quantity, path));
}

/** What belongs at a place, in words. */
function whatIsExpected(kind: string | null, quantity: QuantityName | null, path: ProblemPath): Problem["details"] {
  if (quantity !== null) {
    const { kind: quantityKind, example } = quantityOf(quantity);
    return { expected: `${quantityKind} such as ${example}`, key: String(path[path.length - 1]), example };
  }
  const keys = keysAt(path);
  const expected = kind ?? (keys.length > 0 ? `keys in braces: ${keys.join(", ")}` : "something else");
  return { expected, key: String(path[path.length - 1] ?? ""), example: null };
}

function addUnknownKey(key: string, path: ProblemPath, file: FileData, collector: ProblemCollector): void {
  const here = valueAt(file.data, path) as Record<string, unknown>;
  const decimalComma = here[key] === null ? keyBefore(key, here) : null;
  if (decimalComma !== null && /^\d/.test(key)) {
    const whole = `${String(here[decimalComma])}.${key}`;
    return collector.addAtKey("comma-in-braces", [...path, key], {
      key,
      first: decimalComma,
      write: `${decimalComma}: ${whole}`,
    });
  }
  const known = keysAt(path);
  const spelled = known.find((candidate) => comparable(candidate) === comparable(key));
  const near = spelled === undefined ? nearNames(key, known) : [spelled];
  collector.addAtKey("key-unknown", [...path, key], { key, near, known });
}

/** YAML in braces reads `width: 0,5 mm` as `width: 0` and a key `5 mm`: the number's half is not told twice. */
function isHalfOfComma(path: ProblemPath, file: FileData): boolean {
  const around = valueAt(file.data, path.slice(0, -1));
  if (typeof around !== "object" || around === null || Array.isArray(around)) return false;
  const keys = Object.keys(around);
  const next = keys[keys.indexOf(String(path[path.length - 1])) + 1];
  return next !== undefined && /^\d/.test(next) && (around as Record<string, unknown>)[next] === null;
}

function keyBefore(key: string, here: Record<string, unknown>): string | null {
  const keys = Object.keys(here);
  const before = keys[keys.indexOf(key) - 1];
  return before !== undefined && typeof here[before] === "number" ? before : null;
}

/** Problems of the form that was probably meant: the one that does not fail by its kind alone. */
function addUnion(
  issue: z.core.$ZodIssueInvalidUnion,
  path: ProblemPath,
  file: FileData,
  collector: ProblemCollector,
): void {
  const received = valueAt(file.data, path);
  const failsByKind = (form: Issue[]): boolean =>
    form.some((inner) => inner.path.length === 0 && (inner.code === "invalid_type" || inner.code === "invalid_value"));
  const meant = issue.errors.find((form) => !failsByKind(form));
  if (meant !== undefined) return meant.forEach((inner) => addIssue(inner, path, file, collector));
  const quantityForm = issue.errors
    .flat()
    .find((inner) => inner.path.length === 0 && inner.message.startsWith(QUANTITY_MARK));
  if (typeof received === "number" && quantityForm !== undefined) {
    return addWrongKind(quantityForm.message, path, received, file, collector);
  }
  addWrongKind(issue.message, path, received, file, collector);
}

function addChoice(options: string[], path: ProblemPath, received: unknown, collector: ProblemCollector): void {
  if (received === undefined) return collector.addAtKey("key-missing", path, choiceDetails(options, path));
  if (received === null) return collector.addAtKey("value-missing", path, choiceDetails(options, path));
  const near = typeof received === "string" ? nearNames(received, options) : [];
  collector.add("not-one-of", path, { options, near });
}

function choiceDetails(options: readonly string[], path: ProblemPath): Problem["details"] {
  const expected = options.length === 1 ? String(options[0]) : `one of ${options.join(", ")}`;
  return { expected, key: String(path[path.length - 1]), example: options[0] ?? null };
}

function addSize(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  path: ProblemPath,
  collector: ProblemCollector,
): void {
  const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
  const isText = issue.origin === "string";
  if (issue.origin === "number" || issue.origin === "int") return collector.add("layer-number", path, { limit });
  if (issue.code === "too_small") return collector.add(isText ? "text-empty" : "list-empty", path);
  collector.add(isText ? "text-too-long" : "list-too-long", path, { limit: isText ? LONGEST_TEXT : limit });
}
