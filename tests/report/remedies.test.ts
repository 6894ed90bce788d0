import { readFileSync } from "node:fs";
import { assessProject, type ProjectResult, readProjectOrThrow } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { fixed } from "../../packages/report/src/numbers.ts";
import { sentence } from "../../packages/report/src/words.ts";
import { annexPart, buildUpPart, visibleText } from "./page-text.ts";

const file = new URL("../practice/cases/48-damp-room-partitions.yaml", import.meta.url);
const result: ProjectResult = assessProject(readProjectOrThrow(readFileSync(file, "utf8")));
const { remedies } = result.buildUps[1]!;
let sheet = "";
let annex = "";

beforeAll(async () => {
  const page = await renderReport(result);
  sheet = visibleText(buildUpPart(page, 2));
  annex = visibleText(annexPart(page, 2));
});

describe("the remedies on the page", () => {
  test("the first stand on the sheet with what they come to, all of them in the annex", () => {
    expect(remedies.length).toBeGreaterThan(2);
    for (const { change, judgement, transmittance } of remedies) {
      const at = annex.indexOf(sentence(change));
      expect(at, change).toBeGreaterThan(0);
      const row = annex.slice(at);
      expect(row.slice(0, 400)).toContain(judgement);
      expect(row.slice(0, 400)).toContain(fixed(transmittance, 2));
    }
    for (const { change } of remedies.slice(0, 2)) expect(sheet).toContain(sentence(change));
    expect(sheet).toContain(`${remedies.length - 2} more in the annex.`);
  });

  test("give the values of what they bring in", () => {
    expect(annex).toContain("λ 0.026 W/(m·K), μ 60");
    expect(annex).toContain("λ 0.04 W/(m·K), μ 5");
    expect(annex).toContain("sd 2 m");
  });
});
