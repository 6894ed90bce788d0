import { readProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { SMALL_PROJECT } from "../../core/project-texts.ts";

describe("a name that every object has by itself is no name for a room or a framing: a plot's colours are kept by it", () => {
  it.each(["toString", "valueOf", "hasOwnProperty", "constructor"])("%s", (name) => {
    for (const [from, to] of [
      ["damp room:", `${name}:`],
      ["studs:", `${name}:`],
    ] as const) {
      const reading = readProject(SMALL_PROJECT.replace(from, to));
      expect(reading.ok ? [] : reading.problems.map(({ code }) => code)).toContain("key-forbidden");
    }
  });
});
