import { describe, it } from "vitest";
import { pagesAreWellFormed } from "./pages.ts";

describe("random valid project files end in a page that is well-formed, every text escaped", () => {
  it("20 of them, with plots", { timeout: 1_800_000 }, () => pagesAreWellFormed(20, 20));
});
