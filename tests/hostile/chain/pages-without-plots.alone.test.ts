import { describe, it, vi } from "vitest";
import { pagesAreWellFormed } from "./pages.ts";

vi.mock("../../../packages/report/src/plots/to-svg.ts", () => import("./drawn-as-a-word.ts"));

describe("random valid project files end in a page that is well-formed, every text escaped", () => {
  it("40 of them, without plots", () => pagesAreWellFormed(40, 200));
});
