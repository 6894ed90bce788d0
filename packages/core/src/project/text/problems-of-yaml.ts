import { type Document, isCollection, isScalar, visit, type YAMLError } from "yaml";
import type { Problem, TextPosition } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";
import type { WorkCount } from "../../problems/work-count.ts";

/**
 * Turns the errors of the YAML package into problems. A slip in the structure causes errors in the lines after it, so
 * only the first such slip is reported, and none if there are tabs. Other errors are reported once per line.
 *
 * @param document - the parsed document, with or without errors
 * @param text - the text it was parsed from
 * @param positionAt - line and column of an offset
 * @param work - counts the errors examined
 * @returns problems in the order of the text
 */
export function problemsOfYaml(
  document: Document.Parsed,
  text: string,
  positionAt: (offset: number) => TextPosition,
  work: WorkCount,
): Problem[] {
  const errors = [...document.errors, ...document.warnings].sort((one, other) => one.pos[0] - other.pos[0]);
  work.steps += errors.length;
  const isTabbed = ({ pos: [offset] }: YAMLError): boolean => {
    TABBED.lastIndex = offset - (positionAt(offset).column - 1);
    return TABBED.test(text);
  };
  const named = errors.map((error) => ({ error, code: codeOf(error, isTabbed) }));
  const tooDeep = named.find(({ code }) => code === "nesting-too-deep");
  const firstOfStructure = named.find(({ code }) => STRUCTURE.has(code));
  const told = tooDeep
    ? [tooDeep]
    : named.filter((entry) => !STRUCTURE.has(entry.code) || (entry === firstOfStructure && !hasTabs(named)));
  const seen = new Set<string>();
  return told.flatMap(({ error, code }): Problem[] => {
    const more = moreThanAt(error.pos[0], text);
    if (more !== null) {
      const at = positionAt(error.pos[0]);
      return [{ code: "yaml-more-than", path: [], position: at, received: `> ${more}`, details: { write: more } }];
    }
    const offset = OPENED.has(code) ? startOfOpened(document, error.pos[0]) : error.pos[0];
    const position = positionAt(offset);
    const key = `${code} ${position.line}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const details: Problem["details"] =
      code === "yaml-two-keys" ? { lineFurtherIn: lineFurtherIn(position.line, text) } : {};
    return [{ code, path: [], position, received: receivedAt(code, offset, text), details }];
  });
}

/** The number after a `>`, which YAML takes for the start of a long text; null elsewhere. */
function moreThanAt(offset: number, text: string): string | null {
  const around = text.slice(Math.max(0, offset - 2), offset + LONGEST_RECEIVED);
  return /^[^>]{0,2}> ?(\d[^,}\]\r\n#]*)/.exec(around)?.[1]?.trim() ?? null;
}

/** The next line with text, if it is indented further than the given line; otherwise null. */
function lineFurtherIn(line: number, text: string): number | null {
  const lines = text.split(/\r?\n/);
  const next = lines.findIndex((content, index) => index >= line && content.trim() !== "");
  return next >= 0 && indentOf(lines[next]!) > indentOf(lines[line - 1]!) ? next + 1 : null;
}

/** How far the key of a line is indented; a hyphen before it counts as indentation. */
function indentOf(line: string): number {
  return /^[ -]*/.exec(line)![0].length;
}

/** Codes of the YAML package with a wording of their own. All others are reported as a line that cannot be read. */
const CODES: Partial<Record<string, ProblemCode>> = {
  TAB_AS_INDENT: "yaml-tab",
  MULTIPLE_DOCS: "several-documents",
  MULTIPLE_ANCHORS: "yaml-anchor",
  BAD_ALIAS: "yaml-anchor",
  TAG_RESOLVE_FAILED: "yaml-tag",
  BAD_DIRECTIVE: "yaml-directive",
  NON_STRING_KEY: "key-not-text",
  BAD_INDENT: "yaml-indent",
  BLOCK_IN_FLOW: "yaml-comma",
  BLOCK_AS_IMPLICIT_KEY: "yaml-two-keys",
  MULTILINE_IMPLICIT_KEY: "yaml-colon",
  BAD_SCALAR_START: "yaml-start",
  BAD_DQ_ESCAPE: "yaml-escape",
  RESOURCE_EXHAUSTION: "nesting-too-deep",
};

/** Slips in the structure: each causes errors in the lines after it. */
const STRUCTURE: ReadonlySet<ProblemCode> = new Set([
  "yaml-indent",
  "yaml-two-keys",
  "yaml-colon",
  "yaml-comma",
  "yaml-open",
  "yaml-quote",
  "yaml-form",
]);

/** Slips found where an open bracket or quotation should end, but reported where it begins. */
const OPENED: ReadonlySet<ProblemCode> = new Set(["yaml-open", "yaml-quote"]);

function codeOf(error: YAMLError, isTabbed: (error: YAMLError) => boolean): ProblemCode {
  const { code, message } = error;
  if (/^Missing closing .quote/.test(message)) return "yaml-quote";
  if (/^Flow (map|sequence) in block collection/.test(message)) return "yaml-open";
  if (/without - indicator/.test(message)) return "yaml-indent";
  const known = CODES[code] ?? "yaml-form";
  return STRUCTURE.has(known) && isTabbed(error) ? "yaml-tab" : known;
}

function hasTabs(named: readonly { code: ProblemCode }[]): boolean {
  return named.some(({ code }) => code === "yaml-tab");
}

/** Where the innermost brace, bracket or quotation mark around an offset was opened. */
function startOfOpened(document: Document.Parsed, offset: number): number {
  let start = offset;
  visit(document, {
    Node(_, node) {
      const isOpened = isCollection(node) ? node.flow === true : isScalar(node) && /^QUOTE/.test(node.type ?? "");
      const [from, to] = node.range ?? [offset, offset];
      if (isOpened && from <= offset && to >= offset - 1) start = from;
    },
  });
  return start;
}

function receivedAt(code: ProblemCode, offset: number, text: string): string | null {
  const received =
    text
      .slice(offset, offset + LONGEST_RECEIVED)
      .split(/\r?\n/)[0]
      ?.trim() ?? "";
  return received === "" || code === "nesting-too-deep" || code === "yaml-tab" ? null : received;
}

const LONGEST_RECEIVED = 60;

/** A line that begins with spaces and a tab, matched from its beginning. */
const TABBED = / *\t/y;
