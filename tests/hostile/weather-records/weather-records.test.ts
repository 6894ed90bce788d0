import { truncateSync, writeFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { WordedProblem } from "../../../packages/core/src/problems/types.ts";
import { contextOf } from "../../../packages/report/src/cli/command-context.ts";
import { answer } from "../../../packages/report/src/cli/program.ts";
import { runInFolder } from "../command-in-a-folder.ts";
import { BAD_RECORDS } from "./cases.ts";

describe("Bad weather records end with every problem told, and nothing is written", () => {
  test.each(BAD_RECORDS.map((bad) => [bad.title, bad] as const))("%s", async (_, bad) => {
    const files = { "meadow.csv": bad.records, "meadow-climate.csv": "mine" };
    const words = ["climate", "make", "meadow.csv", "--out", "meadow-climate.csv", ...(bad.options ?? [])];
    const asData = await runInFolder(files, [...words, "--json"]);
    const { problems } = JSON.parse(asData.answer) as { problems: WordedProblem[] };
    expect(problems.map(({ code, line }) => [code, line])).toEqual(bad.problems);
    expect(asData.after).toEqual(asData.before);

    const inWords = await runInFolder(files, words);
    expect(inWords.exit).toBe(1);
    expect(inWords.answer).toBe("");
    expect(inWords.messages).toContain("meadow.csv");
    expect(inWords.messages).not.toMatch(/undefined|\[object|\bat .*\.[tj]s:\d/);
    expect(inWords.after).toEqual(inWords.before);
  });

  test("there are at least twenty-five of them", () => {
    expect(BAD_RECORDS.length).toBeGreaterThanOrEqual(25);
    expect(new Set(BAD_RECORDS.map(({ title }) => title)).size).toBe(BAD_RECORDS.length);
  });
});

describe("Files that are not read at all", () => {
  test("over 64 MB", async () => {
    const folder = await mkdtemp(join(tmpdir(), "warmside-large-"));
    try {
      writeFileSync(join(folder, "meadow.csv"), "date,temp,rh\n");
      truncateSync(join(folder, "meadow.csv"), 64_000_001);
      const context = contextOf({ cwd: () => folder, env: {}, stdout: {}, stderr: {} });
      const outcome = await answer(["climate", "make", "meadow.csv"], context);
      expect(outcome.exit).toBe(1);
      expect(outcome.messages).toContain("64 MB");
    } finally {
      await rm(folder, { recursive: true });
    }
  });

  test.each([
    ["a folder", ["climate", "make", "."], "is a folder"],
    ["no such file", ["climate", "make", "other.csv"], "there is no such file"],
    ["a web address", ["climate", "make", "https://example.org/meadow.csv"], "is a web address"],
    [
      "its own input named for the output",
      ["climate", "make", "meadow.csv", "--out", "meadow.csv"],
      "is one of the input files",
    ],
    ["a table that someone else made", ["climate", "make", "meadow.csv"], "was not made by warmside"],
    ["an unknown role", ["climate", "make", "meadow.csv", "--column", "wind=v"], "It can hold: date, time"],
    ["an unknown unit", ["climate", "make", "meadow.csv", "--temperature-unit", "R"], "takes one of: C, F, K"],
    [
      "an impossible latitude",
      ["climate", "make", "meadow.csv", "--latitude", "91"],
      'The latitude "91" cannot be read',
    ],
    [
      "an altitude in feet",
      ["climate", "make", "meadow.csv", "--altitude", "300 ft"],
      'The altitude "300 ft" cannot be read',
    ],
  ])("%s", async (_, words, message) => {
    const ended = await runInFolder(
      { "meadow.csv": "date,temp,rh\n2003-01-01,5,80\n", "meadow-climate.csv": "mine" },
      words,
    );
    expect(ended.exit).toBe(1);
    expect(ended.messages.replaceAll("\n", " ")).toContain(message);
    expect(ended.after).toEqual(ended.before);
  });
});
