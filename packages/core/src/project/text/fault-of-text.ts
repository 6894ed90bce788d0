import type { Problem } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";

/**
 * What is wrong with a text before it is read as YAML.
 *
 * @param text - the text of a project file
 * @returns the problem, or null
 */
export function faultOfText(text: string): Problem | null {
  if (text.length > LONGEST_PROJECT_FILE) {
    return fault("file-too-large", null, { limit: "2 MB" });
  }
  if (/^[\uFEFF\s]*$/.test(text)) return fault("file-empty", null);
  if ((text.match(SIGNS)?.length ?? 0) > MOST_SIGNS) return fault("too-many-values", null, { limit: MOST_SIGNS });
  const strange = /[\0\uFFFD]/.exec(text);
  if (strange === null) return null;
  const line = text.slice(0, strange.index).split("\n").length;
  return fault(text.includes("\0") ? "file-not-text" : "file-encoding", line);
}

/** Longest project file that is read [characters]: about 2 MB; a real one has a few thousand. */
export const LONGEST_PROJECT_FILE = 2_000_000;

/** Signs that separate values. YAML is parsed only if a text has no more of them than a project can have. */
const SIGNS = /[\n\r,:[\]{}?!&*-]/g;

/** Most separating signs that are accepted; a hundred build-ups of sixty layers have half as many. */
export const MOST_SIGNS = 60_000;

function fault(code: ProblemCode, line: number | null, details: Problem["details"] = {}): Problem {
  return { code, path: [], position: line === null ? null : { line, column: 1 }, received: null, details };
}
