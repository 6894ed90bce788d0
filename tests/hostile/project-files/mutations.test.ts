import { expect, it } from "vitest";
import { readMutated } from "./mutations.ts";

it("300 valid files changed at random are read, or refused in words: none is a fault of the program", () => {
  const { projects, refused } = readMutated(300);
  expect(projects).toBeGreaterThan(10);
  expect(refused).toBeGreaterThan(100);
});
