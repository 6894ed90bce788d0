import { readFileSync } from "node:fs";
import { assessProject, type ProjectResult, readProjectOrThrow } from "@warmside/core";

/** The demo project, really assessed. */
export function demoResult(): ProjectResult {
  const file = new URL("../../shared/alder-row-pottery.yaml", import.meta.url);
  return assessProject(readProjectOrThrow(readFileSync(file, "utf8")));
}
