import fc from "fast-check";
import { describe, it } from "vitest";
import { endsInFiniteNumbers } from "./every-number.ts";
import { situations } from "./random-build-ups.ts";

describe("random build-ups end without a number that is not finite (long)", () => {
  it("100 000 of them", () => {
    fc.assert(fc.property(situations, endsInFiniteNumbers), { numRuns: 100_000, seed: 100_000, endOnFailure: true });
  });
});
