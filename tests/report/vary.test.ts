import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { assessProject, fromThickness, type ProjectResult, readProjectOrThrow, varyThickness } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { readRange, readStep } from "../../packages/report/src/cli/vary/thickness-range.ts";
import { fixed } from "../../packages/report/src/numbers.ts";
import { toSvg } from "../../packages/report/src/plots/to-svg.ts";
import { variationPlot } from "../../packages/report/src/plots/variation-plot.ts";
import { sentence } from "../../packages/report/src/words.ts";
import { DEMO, SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";
import { attributeValues, visibleText } from "./page-text.ts";

const command = commandInProcess();
const project = readProjectOrThrow(readFileSync(DEMO, "utf8"));
const variation = varyThickness(project, { buildUp: 0, layer: 2, from: 0, to: 0.2, step: null });
const ASKED = ["--build-up", "Studio wall", "--layer", "mineral wool slab"];

describe("a range on the command line", () => {
  test.each([
    ["0 mm..100 mm", { from: 0, to: 0.1 }],
    ["0mm..100mm", { from: 0, to: 0.1 }],
    ["12.5 mm .. 0.2 m", { from: 0.0125, to: 0.2 }],
  ])("%s", (written, range) => expect(readRange(written)).toEqual(range));

  test.each([
    ["100 mm", "two dots between"],
    ["0..100", "is not a thickness"],
    ["0 mm..100", "Write `100 mm`"],
    ["100 mm..50 mm", "Give the smaller thickness first"],
    ["50 mm..50 mm", "Give the smaller thickness first"],
    ["0 mm..5 m", "is not a thickness"],
    ["-5 mm..5 mm", "is not a thickness"],
    ["a..b", "is not a thickness"],
  ])("%s is refused", (written, says) => expect(readRange(written)).toContain(says));

  test("a step is a thickness over nothing", () => {
    expect(readStep("5mm")).toBe(0.005);
    expect(readStep("0 mm")).toContain("must be more than 0 mm");
    expect(readStep("five")).toContain("is not a thickness");
  });
});

describe("the variation in the report", () => {
  test("quotes the judgements, and tells whole millimetres that are thick enough", () => {
    expect(fromThickness(0.0189)).toBe("19 mm");
    expect(fromThickness(0.057)).toBe("57 mm");
    const [first] = variation.turns;
    expect(sentence(variation.message)).toContain(
      `: “${first!.from}” under ${fromThickness(first!.thickness)}, “${first!.to}” from ${fromThickness(first!.thickness)}`,
    );
    expect(sentence(variation.message)).toMatch(
      / U falls from \d\.\d\d to \d\.\d\d W\/\(m²·K\) and meets the target of 0\.30 from \d+ mm\.$/,
    );
  });

  test("says what 0 mm is only where it is among the thicknesses", async () => {
    const result = assessProject(project);
    const words = "0 mm is the build-up without the layer";
    expect(await renderReport({ ...result, variation })).toContain(words);
    const thicker = { ...variation, points: variation.points.filter(({ thickness }) => thickness > 0) };
    expect(await renderReport({ ...result, variation: thicker })).not.toContain(words);
  });

  test("stands with its build-up: sentence, turns, every point; and nowhere when not asked for", async () => {
    const result = assessProject(project);
    const page = await renderReport({ ...result, variation });
    const text = visibleText(page);
    expect(text).toContain(sentence(variation.message));
    expect(text).toContain(fromThickness(variation.turns[0]!.thickness));
    expect(variation.turns.length).toBeGreaterThan(0);
    for (const { reason } of variation.turns) expect(text).toContain(sentence(reason).replace(/\s+/g, " "));
    for (const { transmittance } of variation.points) expect(text).toContain(fixed(transmittance!, 3));
    expect(page).toContain(`<h1>How thick: ${variation.layer.name}</h1>`);
    expect(page.match(/class="sheet page/g)).toHaveLength(1);
    const ids = attributeValues(page, "id");
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    expect(await renderReport(result)).not.toContain('id="variation"');
  });

  test("the plot letters the turns, and shows the water where there is any", async () => {
    const { text } = await toSvg(variationPlot(variation)!, "here");
    for (const index of variation.turns.keys()) expect(text).toContain(`>${"ABCDEF"[index]}</text>`);
    expect(text).toContain("most water in a year, g/m²");
    const dry = { ...variation, points: variation.points.slice(5) };
    expect((await toSvg(variationPlot(dry)!, "here")).text).not.toContain("most water");
    expect(variationPlot({ ...variation, points: [{ ...variation.points[0]!, transmittance: null }] })).toBeNull();
  });
});

describe("warmside vary", () => {
  test("takes the range with a space before its units, as everywhere", async () => {
    const out = join(command.folder(), "curve.html");
    const ended = await command.run(["vary", DEMO, ...ASKED, "--thickness", "0", "mm..200", "mm", "--out", out]);
    expect([ended.code, ended.err]).toEqual([0, ""]);
    expect(ended.out.replace(/\s+/g, " ")).toContain(`Layer 3, ${variation.message}`);
    expect(readFileSync(out, "utf8")).toContain("<h1>How thick: mineral wool slab</h1>");
  });

  test("--json alone prints the curve, and writes nothing", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "wall.yaml"), SMALL_PROJECT);
    const range = ["--layer", "mineral wool slab", "--thickness", "100mm..200mm", "--step", "50mm"];
    const ended = await command.run(["vary", "wall.yaml", ...range, "--json"], { cwd: folder });
    expect([ended.code, ended.err]).toEqual([0, ""]);
    const { points } = (JSON.parse(ended.out) as ProjectResult).variation!;
    expect(points.map(({ thickness }) => thickness)).toEqual([0.1, 0.14, 0.15, 0.2]);
    expect(readdirSync(folder)).toEqual(["wall.yaml"]);
  });

  test.each([
    ["no layer", ["--thickness", "0mm..100mm"], "--layer"],
    ["no range", ["--layer", "deck"], "--thickness"],
    ["a range that falls", [...ASKED, "--thickness", "100mm..0mm"], "Give the smaller thickness first"],
    ["a range without units", [...ASKED, "--thickness", "0..100"], "is not a thickness"],
    ["a layer that is none", ["--layer", "wool", "--thickness", "0mm..100mm"], "No layer is called wool"],
    [
      "a layer of several build-ups",
      ["--layer", "mineral wool slab", "--thickness", "0mm..100mm"],
      "Several build-ups",
    ],
    [
      "a build-up that is none",
      ["--layer", "deck", "--build-up", "Shed", "--thickness", "0mm..100mm"],
      "No build-up is called Shed",
    ],
    ["a sheet", ["--layer", "vapour layer", "--thickness", "0mm..100mm"], "has no thickness to vary"],
    ["a million steps", [...ASKED, "--thickness", "0mm..1m", "--step", "0.001mm"], "more than 200 such steps"],
  ])("%s ends with 1, says why and writes nothing", async (_, words, says) => {
    const folder = command.folder();
    writeFileSync(join(folder, "demo.yaml"), readFileSync(DEMO));
    const ended = await command.run(["vary", "demo.yaml", ...words], { cwd: folder });
    expect([ended.code, ended.out]).toEqual([1, ""]);
    expect(ended.err.replace(/\s+/g, " ")).toContain(says);
    expect(readdirSync(folder)).toEqual(["demo.yaml"]);
  });
});
