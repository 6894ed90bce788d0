import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";
import type { JudgementWord, Project } from "../../packages/core/src/index.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";

/** What guidance says of one build-up; the keys are told in README.md. */
export interface Answer {
  file: string;
  "build-up": string;
  judgement: JudgementWord | JudgementWord[];
  reasons: (string | string[])[];
  "must not say"?: string[];
  kind: string;
  why: string;
}

const HERE = new URL(".", import.meta.url);

/** The answers, as they were written down before anything was run. */
export function readAnswers(): Answer[] {
  return parse(readFileSync(new URL("answers.yaml", HERE), "utf8")) as Answer[];
}

/** The names of the case files. */
export function caseFiles(): string[] {
  return readdirSync(fileURLToPath(new URL("cases/", HERE))).sort();
}

const read = new Map<string, Project>();

/** A case as a project; each file is read once. */
export function readCase(file: string): Project {
  const known = read.get(file);
  if (known !== undefined) return known;
  const project = readProjectOrThrow(readFileSync(new URL(`cases/${file}`, HERE), "utf8"));
  read.set(file, project);
  return project;
}

/** A case as the text of its file. */
export function textOfCase(file: string): string {
  return readFileSync(new URL(`cases/${file}`, HERE), "utf8");
}
