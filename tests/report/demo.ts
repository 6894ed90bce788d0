import { readFileSync } from "node:fs";
import { assessProject, type Project, type ProjectResult, readProjectOrThrow } from "@warmside/core";

/** The demo project, read. */
export function demoProject(): Project {
  const file = new URL("../../shared/alder-row-pottery.yaml", import.meta.url);
  return readProjectOrThrow(readFileSync(file, "utf8"));
}

/** The demo project, really assessed. */
export function demoResult(): ProjectResult {
  return assessProject(demoProject());
}
