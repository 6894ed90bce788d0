import type { Problem, ProblemPath } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";

/** One place where a file does not have the shape of a project. */
export interface ShapeFault {
  code: ProblemCode;
  path: ProblemPath;
  details: Problem["details"];
  /** True if it points at the key, not at its value: for a key that is missing or should not be there. */
  isAtKey: boolean;
}

/** A fault of a value that is there. */
export function faultOfValue(code: ProblemCode, path: ProblemPath, details: Problem["details"] = {}): ShapeFault {
  return { code, path, details, isAtKey: false };
}

/** A fault of a key: missing, unknown, without a value. */
export function faultOfKey(code: ProblemCode, path: ProblemPath, details: Problem["details"] = {}): ShapeFault {
  return { code, path, details, isAtKey: true };
}
