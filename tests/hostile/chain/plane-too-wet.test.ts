import fc from "fast-check";
import { expect, test } from "vitest";
import { projectFiles } from "./random-project-files.ts";
import { resultOf } from "./run-chain.ts";

/** A file of months from −60 to 59 °C, found by chance: one judgement in the plane took 15 s. */
const SEED = 2026;
const PLACE = 1320;

test("a cross-section that is wet nearly all over is not worked out in the plane, and the answer says so", () => {
  const files = fc.sample(projectFiles, { seed: SEED, numRuns: PLACE + 1 });
  const result = resultOf(files[PLACE]!);
  const codes = result?.buildUps.flatMap(({ findings }) => findings.map(({ code }) => code)) ?? [];
  expect(codes).toContain("plane-too-wet");
});
