import {
  assessProject,
  type Project,
  type ProjectResult,
  spreadQuestion,
  studyPlacement,
  surroundingsOf,
  varyThickness,
} from "@warmside/core";
import type { ReportOptions } from "@warmside/report";
import { finished, noteOutcomes, openStudy } from "../../packages/report/src/cli/spread/studies.ts";
import { spreadResult } from "../../packages/report/src/spread-study/spread-result.ts";
import { howMany } from "../how-many.ts";
import { demoProject } from "../report/demo.ts";

type Study = readonly [title: string, result: () => ProjectResult, options?: ReportOptions];

/** Studies of a project that a report is about, and how it is rendered. */
export function studiesOf(project: () => Project): readonly Study[] {
  const result = (): ProjectResult => assessProject(project());
  return [
    ["the study of places", () => ({ ...result(), placement: studyPlacement(project()) })],
    [
      "the study of thicknesses",
      () => ({
        ...result(),
        variation: varyThickness(project(), { buildUp: 0, layer: 2, from: 0, to: 0.2, step: null }),
      }),
    ],
    ["the variants compared", result, { comparison: "whole" }],
    ["the study of the spread", () => withSpread(project())],
  ];
}

/** The demo; every day its first two build-ups, which have variants: a study says of more what it says of these. */
export function studied(): Project {
  const project = demoProject();
  return { ...project, buildUps: project.buildUps.slice(0, howMany(2, project.buildUps.length)) };
}

/** A project with a spread of few samples beside every build-up. */
function withSpread(project: Project): ProjectResult {
  const result = assessProject(project);
  const buildUps = result.buildUps.map((buildUp, place) => {
    const study = openStudy(project, place, { samples: 200, seed: 1 });
    const question = spreadQuestion(project.buildUps[place]!, surroundingsOf(project));
    noteOutcomes(study, 0, question.workOut(study.samples));
    return { ...buildUp, spread: spreadResult(finished(study)) };
  });
  return { ...result, buildUps };
}
