import { readFileSync } from "node:fs";
import { assessProject, type ProjectResult, readProjectOrThrow } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { buildUpPart, visibleText } from "./page-text.ts";

const file = new URL("../practice/cases/48-damp-room-partitions.yaml", import.meta.url);
const result: ProjectResult = assessProject(readProjectOrThrow(readFileSync(file, "utf8")));
const { remedies } = result.buildUps[1]!;
let section = "";

beforeAll(async () => {
  const part = buildUpPart(await renderReport(result), 2);
  section = part.slice(part.indexOf("Each change was worked out"));
}, 60_000);

describe("the remedies on the page", () => {
  test("say in short what each rests on", () => {
    const rows = section.split("<tr>").slice(1).map(visibleText);
    expect(remedies.length).toBeGreaterThan(2);
    for (const [index, { change, conditions }] of remedies.entries()) {
      expect(rows[index + 1]).toContain(change);
      expect(rows[index + 1]!.includes(" none "), change).toBe(conditions.length === 0);
    }
    expect(section).toContain("The build-up depends on vapour control layer sd 2 m (sd 2 m) being continuous");
    expect(section).toContain(
      "Mould can grow between mineral wool slab and gypsum plasterboard (between framing), on gypsum",
    );
    expect(section.match(/ten times more open|more humid than mould needs/)).toBeNull();
  });

  test("give the values of what they bring in", () => {
    const words = visibleText(section);
    expect(words).toContain("polyurethane foam unfaced (λ 0.026 W/(m·K), μ 60)");
    expect(words).toContain("wood fibre insulation board (λ 0.04 W/(m·K), μ 5)");
    expect(words).toContain("vapour control layer sd 2 m (sd 2 m)");
  });
});
