import { type Document, LineCounter, parseDocument } from "yaml";
import type { Reading, TextPosition } from "../../problems/types.ts";
import type { WorkCount } from "../../problems/work-count.ts";
import { dataOfDocument } from "./data-of-document.ts";
import { faultOfText } from "./fault-of-text.ts";
import type { FileData } from "./file-data.ts";
import { problemsOfYaml } from "./problems-of-yaml.ts";

/**
 * Reads the text of a project file into plain data; nothing in it is evaluated or fetched.
 *
 * @param text - YAML or JSON
 * @param work - where steps are counted
 * @returns the data with positions, or every problem of the text itself
 */
export function parseFileText(text: string, work: WorkCount): Reading<FileData> {
  const fault = faultOfText(text);
  if (fault !== null) return { ok: false, problems: [fault] };
  work.steps += text.length;
  const lineCounter = new LineCounter();
  const positionAt = (offset: number): TextPosition => {
    const { line, col } = lineCounter.linePos(offset);
    return { line, column: col };
  };
  const document = parseSafely(text, lineCounter);
  if (document === null) {
    return {
      ok: false,
      problems: [{ code: "nesting-too-deep", path: [], position: null, received: null, details: {} }],
    };
  }
  const problems = problemsOfYaml(document, text, positionAt, work);
  return problems.length > 0 ? { ok: false, problems } : dataOfDocument(document, text, positionAt, work);
}

/** Parses the text; null when it is nested too deeply to parse. */
function parseSafely(text: string, lineCounter: LineCounter): Document.Parsed | null {
  try {
    // Repeated keys are found later, when the data is made: the package would compare every key with every other.
    const options = { lineCounter, prettyErrors: false, uniqueKeys: false, version: "1.2", schema: "core" } as const;
    return parseDocument(text, options);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
