import type * as z from "zod";
import { nearNames } from "../../problems/near-names.ts";
import { valueMeant } from "../../problems/other-values.ts";
import type { Problem, ProblemPath } from "../../problems/types.ts";
import { inSpeech } from "../../problems/wording.ts";
import type { ProblemCode } from "../../problems/wordings.ts";
import type { ProblemCollector } from "../problem-collector.ts";
import type { FileData } from "../text/file-data.ts";
import { pathKey } from "../text/source-map.ts";
import { valueAt } from "../value-at.ts";
import { faultsOfKind } from "./fault-of-kind.ts";
import { faultOfUnknownKey, isHalfOfComma } from "./fault-of-unknown-key.ts";
import { LONGEST_TEXT, QUANTITY_MARK } from "./schema-values.ts";
import { faultOfKey, faultOfValue, type ShapeFault } from "./shape-fault.ts";

type Issue = z.core.$ZodIssue;

/**
 * Adds a problem for every issue that a schema found at a place in the file.
 *
 * @param issues - what the schema found
 * @param around - the place in the file that it checked
 * @param file - data and positions
 * @param collector - where problems go
 */
export function addProblemsOfIssues(
  issues: readonly Issue[],
  around: ProblemPath,
  file: FileData,
  collector: ProblemCollector,
): void {
  file.work.steps += issues.length;
  const faults = issues.flatMap((issue) => faultsOfIssue(issue, around, file));
  for (const { code, path, details, isAtKey } of withoutMisspelled(faults)) {
    if (isAtKey) collector.addAtKey(code, path, details);
    else collector.add(code, path, details);
  }
}

/** Drops faults caused by another one: a key is missing only because it is misspelt, or its value is not indented. */
function withoutMisspelled(faults: readonly ShapeFault[]): ShapeFault[] {
  const meantAround = new Map<string, string[]>();
  for (const { code, path, details } of faults) {
    const [first] = code === "key-unknown" || code === "key-joined" ? listed(details.near) : [];
    if (first === undefined) continue;
    const around = pathKey(path.slice(0, -1));
    const others = meantAround.get(around);
    if (others === undefined) meantAround.set(around, [first]);
    else if (!others.includes(first)) others.push(first);
  }
  const unindented = new Set(
    faults
      .filter(({ code }) => code === "key-not-indented")
      .map(({ path, details }) => pathKey([...path.slice(0, -1), String(details.under)])),
  );
  const meantIn = (around: ProblemPath): readonly unknown[] => meantAround.get(pathKey(around)) ?? [];
  const isTold = ({ code, path, details }: ShapeFault): boolean => {
    if (code === "value-missing" && unindented.has(pathKey(path))) return true;
    if (code === "key-missing") return meantIn(path.slice(0, -1)).includes(path[path.length - 1]);
    const meant = meantIn(path);
    if (code === "material-incomplete") return listed(details.missing).every((key) => meant.includes(key));
    return (LACKING[code] ?? []).some((key) => meant.includes(key));
  };
  return faults.filter((fault) => !isTold(fault));
}

function listed(detail: Problem["details"][string] | undefined): readonly string[] {
  return Array.isArray(detail) ? detail : [];
}

/** Faults of an object that lacks keys, and which keys they are. */
const LACKING: Readonly<Record<string, readonly string[]>> = {
  "layer-neither": ["material", "air"],
  "ventilation-missing": ["ventilation"],
  "room-no-temperature": ["heating", "temperature", "unheated"],
  "humidity-missing": ["humidity"],
  "framing-no-share": ["width", "spacing", "fraction"],
  "framing-half": ["width", "spacing"],
};

function faultsOfIssue(issue: Issue, around: ProblemPath, file: FileData): ShapeFault[] {
  const path = [...around, ...issue.path.map((step) => (typeof step === "symbol" ? String(step) : step))];
  switch (issue.code) {
    case "custom":
      return faultsOfCustom(issue, path, file);
    case "unrecognized_keys":
      return issue.keys.map((key) => faultOfUnknownKey(key, path, file));
    case "invalid_union":
      return faultsOfUnion(issue, path, file);
    case "invalid_value":
      return [faultOfChoice(issue.values.map(String), path, file)];
    case "too_small":
    case "too_big":
      return [faultOfSize(issue, path)];
    default:
      return faultsOfKind(issue.message, path, file);
  }
}

/** Issues from the schema's own checks, which carry the code and details of a problem. */
function faultsOfCustom(issue: z.core.$ZodIssueCustom, path: ProblemPath, file: FileData): ShapeFault[] {
  const { code, details } = issue.params as { code: ProblemCode; details: Problem["details"] };
  const received = valueAt(file.data, path);
  if (typeof received === "number" && isHalfOfComma(path, file)) return [];
  const isOfThing = received === undefined || (typeof received === "object" && !Array.isArray(received));
  return [isOfThing ? faultOfKey(code, path, details) : faultOfValue(code, path, details)];
}

/** Faults of the form that was probably meant: the first whose kind fits the value. */
function faultsOfUnion(issue: z.core.$ZodIssueInvalidUnion, path: ProblemPath, file: FileData): ShapeFault[] {
  const failsByKind = (form: readonly Issue[]): boolean =>
    form.some(({ path: inner, code }) => inner.length === 0 && (code === "invalid_type" || code === "invalid_value"));
  const meant = issue.errors.find((form) => !failsByKind(form));
  if (meant !== undefined) return meant.flatMap((inner) => faultsOfIssue(inner, path, file));
  const asQuantity = issue.errors
    .flat()
    .find((inner) => inner.path.length === 0 && inner.message.startsWith(QUANTITY_MARK));
  const isNumber = typeof valueAt(file.data, path) === "number";
  return faultsOfKind(isNumber && asQuantity !== undefined ? asQuantity.message : issue.message, path, file);
}

function faultOfChoice(options: readonly string[], path: ProblemPath, file: FileData): ShapeFault {
  const received = valueAt(file.data, path);
  const expected = options.length === 1 ? String(options[0]) : `one of ${inSpeech(options, "or")}`;
  const details = { expected, key: String(path[path.length - 1]), example: options[0] ?? null };
  if (received === undefined) return faultOfKey("key-missing", path, details);
  if (received === null) return faultOfKey("value-missing", path, details);
  const meant = isWord(received) ? valueMeant(details.key, String(received)) : null;
  const near = meant?.near ?? (typeof received === "string" ? nearNames(received, options, file.work) : []);
  return faultOfValue("not-one-of", path, { options, near, hint: meant?.hint ?? null });
}

/** YAML does not read `true` as text. */
function isWord(received: unknown): received is string | boolean {
  return typeof received === "string" || typeof received === "boolean";
}

function faultOfSize(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, path: ProblemPath): ShapeFault {
  const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
  const isText = issue.origin === "string";
  if (issue.origin === "number" || issue.origin === "int") return faultOfValue("layer-number", path, { limit });
  if (issue.code === "too_small") return faultOfValue(isText ? "text-empty" : "list-empty", path);
  return faultOfValue(isText ? "text-too-long" : "list-too-long", path, { limit: isText ? LONGEST_TEXT : limit });
}
