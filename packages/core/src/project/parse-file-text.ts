import { type Document, LineCounter, parseDocument, type YAMLError } from "yaml";
import type { Problem, Reading, TextPosition } from "../problems/types.ts";
import { dataOfDocument } from "./data-of-document.ts";
import { faultOfText } from "./fault-of-text.ts";
import type { FileData } from "./file-data.ts";

/**
 * Reads the text of a project file into plain data; nothing in it is evaluated or fetched.
 *
 * @param text - YAML or JSON
 * @returns the data with positions, or every problem of the text itself
 */
export function parseFileText(text: string): Reading<FileData> {
  const fault = faultOfText(text);
  if (fault !== null) return { ok: false, problems: [fault] };
  const lineCounter = new LineCounter();
  const positionAt = (offset: number): TextPosition => {
    const { line, col } = lineCounter.linePos(offset);
    return { line, column: col };
  };
  const document = parseSafely(text, lineCounter);
  if (document === null) return { ok: false, problems: [problem("nesting-too-deep", null, null)] };
  const errors = [...document.errors, ...document.warnings];
  if (errors.length > 0) return { ok: false, problems: errors.map((error) => problemOfYaml(error, text, positionAt)) };
  return dataOfDocument(document, text, positionAt);
}

function parseSafely(text: string, lineCounter: LineCounter): Document.Parsed | null {
  try {
    const options = { lineCounter, prettyErrors: false, uniqueKeys: true, version: "1.2", schema: "core" } as const;
    return parseDocument(text, options);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function problemOfYaml(error: YAMLError, text: string, positionAt: (offset: number) => TextPosition): Problem {
  const [start, end] = error.pos;
  const code = YAML_CODES[error.code] ?? "yaml-form";
  const tab = code === "yaml-form" && /^[ \t]*\t/.test(lineAround(text, start));
  const received = text.slice(start, Math.min(end, start + LONGEST_RECEIVED)).split(/\r?\n/)[0] ?? "";
  return problem(tab ? "yaml-tab" : code, positionAt(start), received.trim() === "" ? null : received);
}

/** Codes of the yaml package that deserve their own wording. */
const YAML_CODES: Partial<Record<string, string>> = {
  TAB_AS_INDENT: "yaml-tab",
  DUPLICATE_KEY: "duplicate-key",
  MULTIPLE_DOCS: "several-documents",
  MULTIPLE_ANCHORS: "yaml-anchor",
  BAD_ALIAS: "yaml-anchor",
  TAG_RESOLVE_FAILED: "yaml-tag",
  BAD_DIRECTIVE: "yaml-directive",
  NON_STRING_KEY: "key-not-text",
  BAD_INDENT: "yaml-indent",
  BLOCK_IN_FLOW: "yaml-bracket",
  MISSING_CHAR: "yaml-missing-sign",
  RESOURCE_EXHAUSTION: "nesting-too-deep",
};

const LONGEST_RECEIVED = 60;

function lineAround(text: string, offset: number): string {
  const start = text.lastIndexOf("\n", offset - 1) + 1;
  return text.slice(start, text.indexOf("\n", offset) === -1 ? text.length : text.indexOf("\n", offset));
}

function problem(code: string, position: TextPosition | null, received: string | null): Problem {
  return { code, path: [], position, received, details: {} };
}
