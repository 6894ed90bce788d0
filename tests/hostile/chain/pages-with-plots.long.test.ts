import { describe, it } from "vitest";
import { pagesAreWellFormed } from "./pages.ts";

describe("random valid project files end in a page that is well-formed, every text escaped", () => {
  it("200 of them, with plots", () => pagesAreWellFormed(200, 20));
});
