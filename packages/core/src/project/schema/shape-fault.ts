import type { Problem, ProblemPath } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";

/** One thing in which a file does not have the shape of a project. */
export interface ShapeFault {
  code: ProblemCode;
  path: ProblemPath;
  details: Problem["details"];
  /** Points at the key and not at its value: for what is missing, or should not be there. */
  isAtKey: boolean;
}

/** A fault of a value that stands there. */
export function faultOfValue(code: ProblemCode, path: ProblemPath, details: Problem["details"] = {}): ShapeFault {
  return { code, path, details, isAtKey: false };
}

/** A fault of a key: missing, unknown, without a value. */
export function faultOfKey(code: ProblemCode, path: ProblemPath, details: Problem["details"] = {}): ShapeFault {
  return { code, path, details, isAtKey: true };
}
