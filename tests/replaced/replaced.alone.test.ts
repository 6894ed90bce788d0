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
  return { ...real, figuresOfBuildUp: vi.fn(real.figuresOfBuildUp) };
});

vi.mock("../../packages/core/src/quantities/unit-reader.ts", async (original) => {
  const real = await original<typeof import("../../packages/core/src/quantities/unit-reader.ts")>();
  return { ...real, parseUnit: vi.fn(real.parseUnit) };
});

vi.mock("../../packages/core/src/field/month-in-the-plane.ts", async (original) => {
  const real = await original<typeof import("../../packages/core/src/field/month-in-the-plane.ts")>();
  return { ...real, solvePlaneMonth: vi.fn(real.solvePlaneMonth) };
});

vi.mock("../../packages/report/src/plots/to-svg.ts", () => import("./drawn-as-a-word.ts"));
