import { readFileSync } from "node:fs";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { type Surroundings, surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { caseFiles, readCase } from "../practice/cases.ts";

/** A build-up of the practice corpus or the demo, with what surrounds it and its result. */
export interface Case {
  title: string;
  buildUp: BuildUp;
  surroundings: Surroundings;
  assessed: BuildUpResult;
}

/** Every build-up of the practice corpus and of the demo project, assessed. */
export function corpus(): Case[] {
  const projects = caseFiles().map((file) => ({ file, project: readCase(file) }));
  const demo = readProjectOrThrow(readFileSync("shared/alder-row-pottery.yaml", "utf8"));
  return [...projects, { file: "demo", project: demo }].flatMap(({ file, project }) => {
    const surroundings = surroundingsOf(project);
    return project.buildUps.map((buildUp) => ({
      title: `${file}: ${buildUp.name}`,
      buildUp,
      surroundings,
      assessed: assessBuildUp(buildUp, surroundings),
    }));
  });
}

/** A project written as YAML, its first build-up assessed. */
export function assessText(text: string, index = 0): BuildUpResult {
  const project = readProjectOrThrow(text);
  return assessBuildUp(project.buildUps[index]!, surroundingsOf(project));
}
