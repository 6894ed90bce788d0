import { type ProjectResult, studyPlacement, sweepThickness } from "@warmside/core";
import { demoProject, demoResult } from "../report/demo.ts";

/** Studies of the demo that a report is about. */
export const STUDIES: readonly (readonly [string, () => ProjectResult])[] = [
  ["the study of places", () => ({ ...demoResult(), placement: studyPlacement(demoProject()) })],
  [
    "the study of thicknesses",
    () => ({
      ...demoResult(),
      sweep: sweepThickness(demoProject(), { buildUp: 0, layer: 2, from: 0, to: 0.2, step: null }),
    }),
  ],
];
