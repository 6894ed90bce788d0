/**
 * Tests that put something of their own in the place of a module. Since whoever does so loads everything for itself, they
 * are one file, and load it once.
 */
import { vi } from "vitest";
import "./pages-without-plots.ts";
import "./plane-too-wet.ts";
import "./read-once.ts";
import "./remedies-count.ts";

vi.mock("../../packages/core/src/calculate-build-up.ts", async (original) => {
  const real = await original<typeof import("../../packages/core/src/calculate-build-up.ts")>();
  const { seams } = await import("./seams.ts");
  return {
    ...real,
    figuresOfBuildUp: (...given: Parameters<typeof real.figuresOfBuildUp>) => {
      seams.calculations += 1;
      return real.figuresOfBuildUp(...given);
    },
  };
});

vi.mock("../../packages/core/src/quantities/unit-reader.ts", async (original) => {
  const real = await original<typeof import("../../packages/core/src/quantities/unit-reader.ts")>();
  const { seams } = await import("./seams.ts");
  return {
    ...real,
    parseUnit: (...given: Parameters<typeof real.parseUnit>) => {
      seams.parsed?.push(given);
      return real.parseUnit(...given);
    },
  };
});

vi.mock("../../packages/core/src/field/month-in-the-plane.ts", async (original) => {
  const real = await original<typeof import("../../packages/core/src/field/month-in-the-plane.ts")>();
  const { seams } = await import("./seams.ts");
  return {
    ...real,
    solvePlaneMonth: (...[vapour, ...rest]: Parameters<typeof real.solvePlaneMonth>) => {
      if (seams.isPlaneTooWet) vapour.work = real.MOST_WORK;
      return real.solvePlaneMonth(vapour, ...rest);
    },
  };
});

vi.mock("../../packages/report/src/plots/to-svg.ts", () => import("./drawn-as-a-word.ts"));
