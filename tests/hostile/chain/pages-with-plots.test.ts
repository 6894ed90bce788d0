import { describe, it } from "vitest";
import { pagesAreWellFormed } from "./pages.ts";

describe("random valid project files end in a page that is well-formed, every text escaped", () => {
  it("20 of them, with plots", () => pagesAreWellFormed(20, 20));
});
