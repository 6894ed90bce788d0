import fc from "fast-check";
import { describe, it } from "vitest";
import { projectFiles } from "./random-project-files.ts";
import { resultOf } from "./run-chain.ts";

describe("random valid project files always come to a finite, lawful result (long)", () => {
  it("20 000 of them", () => {
    const property = fc.property(projectFiles, (file) => fc.pre(resultOf(file) !== null));
    fc.assert(property, { numRuns: 20_000, seed: 20_000, endOnFailure: true });
  });
});
