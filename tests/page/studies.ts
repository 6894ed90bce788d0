import { type ProjectResult, spreadQuestion, studyPlacement, surroundingsOf, varyThickness } from "@warmside/core";
import type { ReportOptions } from "@warmside/report";
import { finished, noteOutcomes, openStudy } from "../../packages/report/src/cli/spread/studies.ts";
import { spreadResult } from "../../packages/report/src/spread-study/spread-result.ts";
import { demoProject, demoResult } from "../report/demo.ts";

/** Studies of the demo that a report is about, and how it is rendered. */
export const STUDIES: readonly (readonly [string, () => ProjectResult, ReportOptions?])[] = [
  ["the study of places", () => ({ ...demoResult(), placement: studyPlacement(demoProject()) })],
  [
    "the study of thicknesses",
    () => ({
      ...demoResult(),
      variation: varyThickness(demoProject(), { buildUp: 0, layer: 2, from: 0, to: 0.2, step: null }),
    }),
  ],
  ["the variants compared", demoResult, { comparison: "whole" }],
  ["the study of the spread", withSpread],
];

/** The demo with a spread of few samples beside every build-up. */
function withSpread(): ProjectResult {
  const project = demoProject();
  const buildUps = demoResult().buildUps.map((buildUp, place) => {
    const study = openStudy(project, place, { samples: 200, seed: 1 });
    const question = spreadQuestion(project.buildUps[place]!, surroundingsOf(project));
    noteOutcomes(study, 0, question.workOut(study.samples));
    return { ...buildUp, spread: spreadResult(finished(study)) };
  });
  return { ...demoResult(), buildUps };
}
