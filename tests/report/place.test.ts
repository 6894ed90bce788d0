import { copyFileSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { assessProject, type ProjectResult, readProjectOrThrow, studyPlacement } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { DEMO } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";
import { uncoveredWords, visibleText } from "./page-text.ts";

const command = commandInProcess();
const project = readProjectOrThrow(readFileSync(DEMO, "utf8"));
const placement = studyPlacement(project);

describe("warmside place", () => {
  test("writes the report, prints what each grid shows, and ends with 0", async () => {
    const folder = command.folder();
    const out = join(folder, "places.html");
    const ended = await command.run(["place", DEMO, "--out", out]);
    expect([ended.code, ended.err]).toEqual([0, ""]);
    const answer = ended.out.replace(/\s+/g, " ");
    for (const { message, leftOut, layer } of placement.buildUps) {
      expect(answer).toContain(layer === null ? `left out. ${leftOut}` : message!);
    }
    expect(readFileSync(out, "utf8")).toContain("<h1>Where the vapour layer may lie</h1>");
  });

  test("--json alone prints the result with the study, and writes nothing", async () => {
    const folder = command.folder();
    copyFileSync(DEMO, join(folder, "demo.yaml"));
    const ended = await command.run(["place", "demo.yaml", "--json"], { cwd: folder });
    expect([ended.code, ended.err]).toEqual([0, ""]);
    const result = JSON.parse(ended.out) as ProjectResult;
    expect(result.placement).toEqual(JSON.parse(JSON.stringify(placement)));
    expect(result.buildUps).toHaveLength(project.buildUps.length);
    expect(readdirSync(folder)).toEqual(["demo.yaml"]);
  });

  test("a file with problems ends with 1 and lists them", async () => {
    const ended = await command.run(["place", join(command.folder(), "none.yaml")]);
    expect(ended.code).toBe(1);
    expect(ended.out).toBe("");
    expect(ended.err).toContain("none.yaml");
  });
});

describe("the study in the report", () => {
  let withStudy = "";
  let without = "";
  beforeAll(async () => {
    const result = assessProject(project);
    withStudy = await renderReport({ ...result, placement });
    without = await renderReport(result);
  });

  test("is the document's own subject when asked for, and nowhere when not", () => {
    const moved = placement.buildUps.filter(({ layer }) => layer !== null);
    expect(withStudy.match(/id="study-\d+"/g)).toHaveLength(moved.length);
    expect(without).not.toContain('id="study-');
  });

  test("shows sentence, layer, every position and every cell's judgement, verdict, water and margin", () => {
    for (const [index, grid] of placement.buildUps.entries()) {
      const from = withStudy.indexOf(`id="study-${index + 1}"`);
      const part = withStudy.slice(from, withStudy.indexOf("</section>", from));
      const text = grid.layer === null ? visibleText(withStudy) : visibleText(part);
      expect(visibleText(withStudy)).toContain(grid.message ?? grid.leftOut!);
      if (grid.layer === null) continue;
      expect(text).toContain(grid.layer.name);
      for (const { words } of grid.positions) expect(text).toContain(words);
      const cells = [...part.matchAll(/<td[^>]*><strong>(.*?)<\/strong><span class="remark">(.*?)<\/span><\/td>/g)];
      const expected = grid.rows.flatMap((row) => row.cells);
      expect(cells.map(([, judgement]) => judgement)).toEqual(expected.map(({ judgement }) => judgement));
      for (const [cell, [, , remark]] of cells.entries()) {
        const { verdict, peak, dewPointMargin } = expected[cell]!;
        const shown = visibleText(remark!);
        expect(shown).toContain(verdict!);
        expect(shown.includes("at most")).toBe(peak!.amount > 0);
        expect(shown.includes("margin")).toBe(dewPointMargin !== null);
        if (dewPointMargin !== null) expect(shown).toMatch(new RegExp(`${Math.abs(dewPointMargin).toFixed(1)}\\sK`));
      }
    }
  });

  test("a verdict in a cell is the word alone; what it does not cover stands once below the table", () => {
    expect(uncoveredWords(withStudy).uncovered).toEqual([]);
  });
});
