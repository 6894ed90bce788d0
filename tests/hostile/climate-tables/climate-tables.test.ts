import { describe, expect, test } from "vitest";
import type { WordedProblem } from "../../../packages/core/src/problems/types.ts";
import { runInFolder } from "../command-in-a-folder.ts";
import { BAD_TABLES } from "./cases.ts";

const PROJECT = `project: Kiln shed
climate: meadow.csv
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: softwood timber, thickness: 40 mm }
`;

describe("Bad climate tables end with every problem told, and nothing is written", () => {
  test.each(BAD_TABLES.map((bad) => [bad.title, bad] as const))("%s", async (_, bad) => {
    const files = { "shed.yaml": PROJECT, "meadow.csv": bad.table };
    const asData = await runInFolder(files, ["check", "shed.yaml", "--json"]);
    const { problems } = JSON.parse(asData.answer) as { problems: WordedProblem[] };
    expect(problems.map(({ code, line }) => [code, line])).toEqual(bad.problems);
    for (const problem of problems) expect(problem.expected ?? problem.write).toBeTruthy();

    const inWords = await runInFolder(files, ["assess", "shed.yaml"]);
    expect(inWords.exit).toBe(1);
    expect(inWords.answer).toBe("");
    expect(inWords.messages).toContain("meadow.csv");
    expect(inWords.messages).not.toMatch(/undefined|NaN:|\[object|\bat .*\.[tj]s:\d/);
    expect(inWords.after).toEqual(inWords.before);
  });

  test("there are at least twenty of them", () => {
    expect(BAD_TABLES.length).toBeGreaterThanOrEqual(20);
    expect(new Set(BAD_TABLES.map(({ title }) => title)).size).toBe(BAD_TABLES.length);
  });
});
