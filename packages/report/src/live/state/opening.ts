import { dataOf } from "../edit/parsed.ts";
import { readingOf } from "./answer.ts";
import type { ChosenFile } from "./files.ts";
import { replaceFile, show, state } from "./store.ts";

/**
 * Opens what was chosen: one project, with the tables it names beside it. What is no project is told, and the work
 * stays as it is; a project with problems is opened, and they are listed.
 *
 * @param files - the files
 */
export function openFiles(files: readonly ChosenFile[]): void {
  if (files.length === 0) return;
  const tables = Object.fromEntries(
    files.flatMap(({ name, text }) => (/\.csv$/i.test(name) && text !== null ? [[name, text]] : [])),
  );
  const others = files.filter(({ name }) => !/\.csv$/i.test(name));
  const [project] = others;
  if (project === undefined) {
    addTables(tables);
    return;
  }
  if (others.length > 1) {
    show({ remark: "Open one project at a time. The tables it names may be opened with it." });
    return;
  }
  if (project.text === null || !looksLikeProject(project.text)) {
    show({ remark: `${project.name} is no warmside project. Your work is unchanged.` });
    return;
  }
  replaceFile(project.text, project.name, tables);
}

/** Tables alone belong to the project that is open. */
function addTables(added: Record<string, string>): void {
  const { text, tables, readable } = state();
  const all = { ...tables, ...added };
  const { ok } = readingOf({ text, tables: all });
  show({
    tables: all,
    readable: ok ? text : readable,
    remark: `Opened beside the project: ${Object.keys(added).join(", ")}.`,
  });
}

/** A map with at least one key of a project, or a text that was meant as one but is not well formed. */
function looksLikeProject(text: string): boolean {
  const data = dataOf(text);
  if (typeof data === "object" && data !== null && !Array.isArray(data))
    return KEYS.some((key) => Object.hasOwn(data, key));
  return data === undefined && new RegExp(`^["' {]*(?:${KEYS.join("|")})["']?[ \\t]*:`, "m").test(text);
}

const KEYS = ["build-ups", "project", "indoor", "climate"];
