import { expect, it } from "vitest";
import { readMutated } from "./mutations.ts";

it("20 000 valid files changed at random are read, or refused in words: none is a fault of the program", () => {
  const { projects, refused } = readMutated(20_000);
  expect(projects).toBeGreaterThan(1000);
  expect(refused).toBeGreaterThan(5000);
}, 900_000);
