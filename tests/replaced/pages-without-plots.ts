import { describe, it } from "vitest";
import { pagesAreWellFormed } from "../hostile/chain/pages.ts";
import { howMany } from "../how-many.ts";

const COUNT = howMany(40, 2_000);

describe("random valid project files end in a page that is well-formed, every text escaped", () => {
  it(`${COUNT} of them, without plots`, () => pagesAreWellFormed(COUNT, 200));
});
