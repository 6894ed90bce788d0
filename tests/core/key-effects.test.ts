import { projectKeys } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { KEY_EFFECTS, toldOf } from "./key-effects.ts";

describe("every key of the project file makes the difference that it is there for", () => {
  it.each(KEY_EFFECTS.map((effect) => ({ key: effect[0], effect })))("$key", ({ effect }) => {
    expect(toldOf(effect, 0)).not.toBe(toldOf(effect, 1));
  });

  it("none is left out", () => {
    const shown = new Set(KEY_EFFECTS.map(([key]) => key));
    expect(keysOfSchema().filter((key) => !shown.has(key) && !WITHOUT.includes(key))).toEqual([]);
  });
});

/** Told by `warmside materials` alone: the monthly method stores no heat. */
const WITHOUT = ["material/specific heat"];

/** Keys that take a value of their own: what only holds other keys is shown by these. */
function keysOfSchema(): string[] {
  return projectKeys().flatMap(({ path, example }) => (example === null || path === "prices" ? [] : path));
}
