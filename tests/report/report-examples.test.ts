import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sourceOf } from "../core/core-sources.ts";
import { exportedFunctions } from "../core/doc-comments.ts";

/** The report's functions, the command's left out. */
const REPORT = join(import.meta.dirname, "../../packages/report/src");
const functions = readdirSync(REPORT, { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => path.endsWith(".ts") && !path.startsWith("cli/"))
  .sort()
  .flatMap((path) => exportedFunctions(sourceOf(path, readFileSync(join(REPORT, path), "utf8"))));

const examples = functions.flatMap(({ path, name, examples: own }) =>
  own.map((example) => [path, name, example] as const),
);

describe("doc comments of the report", () => {
  test("every exported function has one", () => {
    expect(functions.length).toBeGreaterThan(50);
    expect(functions.filter(({ comment }) => !comment).map(({ path, name }) => `${path} ${name}`)).toEqual([]);
  });

  test.each(examples)("%s, example of %s", async (path, _, { expression, value }) => {
    const names = (await import(join(REPORT, path))) as Record<string, unknown>;
    const run = new Function(...Object.keys(names), `"use strict"; return [(${expression}), (${value})];`);
    const [given, stated] = run(...Object.values(names)) as [unknown, unknown];
    if (typeof stated === "number") expect(given).toBeCloseTo(stated, (value.split(".")[1] ?? "").length);
    else expect(given).toEqual(stated);
  });
});
