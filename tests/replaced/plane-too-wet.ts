import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { projectFiles } from "../hostile/chain/random-project-files.ts";
import { resultOf } from "../hostile/chain/run-chain.ts";
import { seams } from "./seams.ts";

/** A file of months from −60 to 59 °C, found by chance: wet nearly all over, one judgement in the plane took 15 s. */
const SEED = 2026;
const PLACE = 1320;

test("a cross-section that is wet nearly all over is worked out in the plane within the work that it may take", () => {
  const files = fc.sample(projectFiles, { seed: SEED, numRuns: PLACE + 1 });
  const result = resultOf(files[PLACE]!);
  const codes = result?.buildUps.flatMap(({ findings }) => findings.map(({ code }) => code)) ?? [];
  expect(codes).toContain("stays-wet");
  expect(codes).not.toContain("plane-too-wet");
  expect(result!.buildUps.some(({ plane }) => plane !== null)).toBe(true);
});

test("what takes more work is not worked out, and the answer says so", () => {
  const project = readProjectOrThrow(readFileSync("shared/alder-row-pottery.yaml", "utf8"));
  const foil = project.buildUps.find(({ name }) => name === "Workshop wall")!;
  const codes = (): string[] => assessBuildUp(foil, surroundingsOf(project)).findings.map(({ code }) => code);
  expect(codes()).not.toContain("plane-too-wet");
  seams.isPlaneTooWet = true;
  expect(codes()).toContain("plane-too-wet");
  seams.isPlaneTooWet = false;
});
