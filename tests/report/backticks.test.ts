import { assessProject, type ProjectResult, varyThickness } from "@warmside/core";
import { type ReportOptions, renderReport } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { backticksAsCode, withoutBackticks } from "../../packages/report/src/backticks.ts";
import { readCase } from "../practice/cases.ts";
import { demoProject, demoResult } from "./demo.ts";
import { oneWall } from "./one-wall.ts";
import { visibleText } from "./page-text.ts";

describe("words of the project file inside a sentence", () => {
  test("stand as code on the page, escaped", () => {
    expect(backticksAsCode("Name its `purpose` in the file.").text).toBe("Name its <code>purpose</code> in the file.");
    expect(backticksAsCode("`<b>` & more").text).toBe("<code>&lt;b&gt;</code> &amp; more");
  });

  test("stand bare in the terminal", () => {
    expect(withoutBackticks("Name its `purpose` or `name`.")).toBe("Name its purpose or name.");
  });

  test("a backtick without a partner stays", () => {
    expect(backticksAsCode("a ` b").text).toBe("a ` b");
    expect(withoutBackticks("a ` b")).toBe("a ` b");
  });
});

describe("on a page no word of the project file is left between backticks", () => {
  const foil = oneWall();
  const variation = varyThickness(demoProject(), { buildUp: 1, layer: 2, from: 0, to: 0.2, step: null });
  const beyond = [
    "55-steel-studs",
    "58-cooled-room-with-a-class",
    "69-render-and-boarding-on-a-frame",
    "75-lists-written-from-outside",
  ];

  test.each<[string, () => ProjectResult, ReportOptions?]>([
    ["the demo and its variants", demoResult, { annex: true, comparison: "whole" }],
    ["a thickness that turns", () => ({ ...demoResult(), variation })],
    ["one wall", () => foil, { annex: true }],
    ...beyond.map((file): [string, () => ProjectResult, ReportOptions] => [
      file,
      () => assessProject(readCase(`${file}.yaml`)),
      { annex: true },
    ]),
  ])("%s", async (_, result, options = {}) => {
    const text = visibleText(await renderReport(result(), options));
    expect(text.length).toBeGreaterThan(2000);
    expect([...text.matchAll(/.{0,40}`.{0,40}/g)].map(([around]) => around)).toEqual([]);
  });

  test("and there were such words", () => {
    expect(variation.turns.some(({ reason }) => reason.includes("`"))).toBe(true);
    for (const file of beyond) expect(JSON.stringify(assessProject(readCase(`${file}.yaml`))), file).toContain("`");
  });
});
