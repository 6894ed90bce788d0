import type { RuledFinding } from "./types.ts";

/** A finding that puts a build-up beyond the method, with what to ask for instead. */
export function beyond(code: string, message: string, askFor: string, source: string, figures = {}): RuledFinding {
  return { code, severity: "fault", effect: "beyond", message, advice: `Ask for ${askFor}.`, source, figures };
}
