import { copyFileSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { assessProject, moneyInWords, type ProjectResult, readProjectOrThrow } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { fixed, grams, millimetres } from "../../packages/report/src/numbers.ts";
import { comparisonPlot } from "../../packages/report/src/plots/comparison-plot.ts";
import { toSvg } from "../../packages/report/src/plots/to-svg.ts";
import { withoutEmptyColumns } from "../../packages/report/src/table.ts";
import { DEMO, SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";
import { annexPart, attributeValues, uncoveredWords, visibleText } from "./page-text.ts";

const command = commandInProcess();
const demo = readFileSync(DEMO, "utf8");

/** The demo with prices, invented for these tests. */
const PRICED = demo.replace(
  "indoor:",
  `currency: £
heat price: 0.12 /kWh
prices:
  - { material: gypsum plasterboard, per: sheet, price: 9, covers: 2.88 m2, waste: 10 % }
  - { material: mineral wool slab, per: m3, price: 65, waste: 5 %, hours: 0.1 }
  - { material: foil-faced PIR board, per: m3, price: 240, waste: 5 % }
  - { material: wood fibre insulation board, per: m3, price: 250 }
  - { material: wood fibre batt, per: m3, price: 110 }
  - { material: oriented strand board, per: sheet, price: 18, covers: 2.98 m2 }
  - { material: breather membrane, per: roll, price: 90, covers: 75 m2, width: 1.5 m }
  - { material: vapour control layer sd 20 m, per: roll, price: 120, covers: 75 m2 }
  - { material: vapour control layer sd 5 m, per: roll, price: 150, covers: 75 m2 }
  - { material: softwood timber, per: m3, price: 520, waste: 10 % }
  - { material: plywod, per: m2, price: 12 }
indoor:`,
);

const result = assessProject(readProjectOrThrow(PRICED));
const study = result.comparison!;
let whole = "";
let short = "";
beforeAll(async () => {
  whole = await renderReport(result, { comparison: "whole" });
  short = await renderReport(result);
});

/** The pages of a compared build-up as text. */
function pagesOf(page: string, slug: string): string {
  return page === whole
    ? visibleText(whole)
    : visibleText(annexPart(page, result.buildUps.findIndex((buildUp) => buildUp.slug === slug) + 1));
}

describe("the comparison in the report", () => {
  test("shows every variant with its changes, sentence, reason, U, thickness and water", () => {
    for (const { slug, rows } of study.buildUps) {
      const text = pagesOf(whole, slug);
      for (const [number, row] of rows.entries()) {
        for (const change of row.changes) expect(text).toContain(change);
        if (row.sentence !== null)
          expect(text).toContain(`${number} ${row.variant}. ${row.sentence} ${row.reason}`.replace(/\s+/g, " "));
        if (row.transmittance !== null) expect(text).toContain(fixed(row.transmittance, 2));
        expect(text).toContain(millimetres(row.thickness));
        if (row.peak !== null) expect(text).toContain(grams(row.peak.amount));
      }
    }
  });

  test("shows the vapour layers, money, goods and what the figures rest on", () => {
    const text = pagesOf(whole, "workshop-wall");
    const { rows } = study.buildUps.find(({ slug }) => slug === "workshop-wall")!;
    for (const { cost, againstBase } of rows) {
      expect(text).toContain(moneyInWords(cost!.perArea, "£"));
      if (againstBase?.yearsToPay) expect(text).toContain(fixed(againstBase.yearsToPay, 1));
    }
    expect(rows.some(({ againstBase }) => (againstBase?.yearsToPay ?? 0) > 0)).toBe(true);
    expect(text).toContain("No build-up uses plywod, which has a price: check the spelling of the name.");
    expect(text).toContain("Quantities, for one square metre: the file states no area");
    for (const sentence of study.assumptions) expect(text).toContain(sentence);
    expect(pagesOf(whole, "studio-wall")).toContain("Quantities, for 53 m², openings taken off");
    expect(pagesOf(whole, "studio-wall")).toContain(
      "Without a price, and left out of the costs: polyethylene sheet 0.15 mm",
    );
  });

  test("assess has the short table only, and travels without goods", () => {
    const text = pagesOf(short, "workshop-wall");
    expect(text).toContain("The build-up as drawn and its variants, each calculated in full");
    expect(text).not.toContain("Quantities, for");
    expect(short.match(/id="build-up-\d+-plot-variants"/g)).toBeNull();
    const data = (page: string): ProjectResult => JSON.parse(/id="result">([\s\S]*?)<\/script>/.exec(page)![1]!);
    expect(data(short).comparison!.buildUps[0]!.rows[0]).not.toHaveProperty("goods");
    expect(data(whole).comparison!.buildUps[0]!.rows[0]!.goods.length).toBeGreaterThan(5);
  });

  test("has no name twice, no link to nowhere, no figure that is none, and beside every sound what it does not cover", () => {
    const ids = attributeValues(whole, "id");
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    for (const link of attributeValues(whole, "href")) expect(ids).toContain(link.slice(1));
    const shown = whole.replace(/<script[\s\S]*?<\/script>/, "");
    expect(shown.match(/.{0,60}(NaN|Infinity|undefined|\bnull\b|\[object)/)?.[0]).toBeUndefined();
    expect(uncoveredWords(whole).uncovered).toEqual([]);
  });

  test("hostile names do nothing", async () => {
    const text = demo.replace("name: mineral wool in the depth", `name: '<img src=x onerror=alert(1)>"&'`);
    const page = await renderReport(assessProject(readProjectOrThrow(text)), { comparison: "whole" });
    expect(page).not.toContain("<img");
    expect(page).toContain("&lt;img src=x onerror=alert(1)&gt;&quot;&amp;");
  });
});

describe("a table without its empty columns", () => {
  const columns = ["Material", "Area", "Waste", "To order"].map((head) => ({ head, kind: "words" as const }));

  test("loses those that hold dashes or no hundredth in every row, with their sums", () => {
    const rows = [
      ["–", "1.00", "0\u00a0%", "–"],
      ["board", "–", "0\u00a0%", ""],
    ];
    const table = withoutEmptyColumns({ caption: "goods", columns, rows, sums: [["In all", "1.00", "", ""]] });
    expect(table.columns.map(({ head }) => head)).toEqual(["Material", "Area"]);
    expect(table.rows).toEqual([
      ["–", "1.00"],
      ["board", "–"],
    ]);
    expect(table.sums).toEqual([["In all", "1.00"]]);
  });

  test("keeps one in which any row says something", () => {
    const rows = [
      ["sheet", "1.00", "0\u00a0%", "–"],
      ["board", "1.00", "10\u00a0%", "2 sheets"],
    ];
    expect(withoutEmptyColumns({ caption: "goods", columns, rows }).columns).toHaveLength(4);
  });
});

describe("the plot of the choice", () => {
  const workshop = study.buildUps.find(({ slug }) => slug === "workshop-wall")!;
  const plain = assessProject(readProjectOrThrow(demo)).comparison!.buildUps.find(
    ({ slug }) => slug === "workshop-wall",
  )!;

  test("numbers every variant beside its mark; marks on one another share a label", async () => {
    const { text } = await toSvg(comparisonPlot(plain)!, "here");
    const numbers = [...text.matchAll(/>(\d+(?:, \d+)*)<\/text>/g)].flatMap(([, label]) =>
      label!.split(", ").map(Number),
    );
    for (const number of plain.rows.keys()) expect(numbers).toContain(number);
    expect(text).toContain(">thickness, mm<");
  });

  test("is drawn against cost only where everything has a price", () => {
    expect(comparisonPlot(plain)!.title).toBe("U against thickness");
    const allPriced = {
      ...workshop,
      rows: workshop.rows.map((row) => ({ ...row, cost: { ...row.cost!, unpriced: [] } })),
    };
    expect(comparisonPlot(allPriced)!.title).toBe("U against cost");
    const first = { ...allPriced.rows[0]!, cost: { ...allPriced.rows[0]!.cost!, unpriced: ["plywood"] } };
    expect(comparisonPlot({ ...allPriced, rows: [first, ...allPriced.rows.slice(1)] })!.title).toBe(
      "U against thickness",
    );
  });

  test("there is none where all marks would lie on one another", () => {
    expect(comparisonPlot({ ...plain, rows: [plain.rows[0]!, plain.rows[0]!] })).toBeNull();
    expect(comparisonPlot({ ...plain, rows: [{ ...plain.rows[0]!, transmittance: null }] })).toBeNull();
  });

  test("fifty variants are drawn, every one with at least its number", async () => {
    const rows = Array.from({ length: 51 }, (_, index) => ({
      ...plain.rows[0]!,
      variant: index === 0 ? null : `variant with a long name ${index}`,
      transmittance: 0.2 + ((index * 7) % 17) / 100,
      thickness: 0.2 + ((index * 5) % 13) / 100,
    }));
    const { text } = await toSvg(comparisonPlot({ ...plain, rows })!, "here");
    const numbers = [...text.matchAll(/>(\d+(?:, \d+)*)<\/text>/g)].flatMap(([, label]) =>
      label!.split(", ").map(Number),
    );
    for (const number of rows.keys()) expect(numbers).toContain(number);
  });
});

describe("warmside compare", () => {
  test("writes the report, prints a sentence for each variant, and ends with 0", async () => {
    const out = join(command.folder(), "compared.html");
    const ended = await command.run(["compare", DEMO, "--out", out]);
    expect([ended.code, ended.err]).toEqual([0, ""]);
    const answer = ended.out.replace(/\s+/g, " ");
    for (const { rows } of assessProject(readProjectOrThrow(demo)).comparison!.buildUps)
      for (const { sentence } of rows) expect(answer).toContain(sentence ?? "");
    expect(readFileSync(out, "utf8")).toContain("Quantities, for");
  });

  test("--json alone prints the result with the comparison, and writes nothing", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "priced.yaml"), PRICED);
    const ended = await command.run(["compare", "priced.yaml", "--json"], { cwd: folder });
    expect([ended.code, ended.err]).toEqual([0, ""]);
    expect((JSON.parse(ended.out) as ProjectResult).comparison).toEqual(JSON.parse(JSON.stringify(study)));
    expect(readdirSync(folder)).toEqual(["priced.yaml"]);
  });

  test("a price table beside the project file is read; a missing one is a problem", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "my-prices.csv"), "material,per,price\nplywood,m2,12\n");
    writeFileSync(join(folder, "wall.yaml"), demo.replace("indoor:", "prices: my-prices.csv\nindoor:"));
    const ended = await command.run(["compare", "wall.yaml", "--json"], { cwd: folder });
    expect((JSON.parse(ended.out) as ProjectResult).comparison!.buildUps[0]!.rows[0]!.cost).toBeNull();
    copyFileSync(join(folder, "wall.yaml"), join(command.folder(), "wall.yaml"));
    writeFileSync(join(folder, "other.yaml"), demo.replace("indoor:", "prices: none.csv\nindoor:"));
    const refused = await command.run(["compare", "other.yaml"], { cwd: folder });
    expect(refused.code).toBe(1);
    expect(refused.err).toContain("none.csv");
  });

  test("the variants of a starter project work once their marks are taken away", async () => {
    const folder = command.folder();
    expect((await command.run(["new", "--element", "wall", "--out", "mine.yaml"], { cwd: folder })).code).toBe(0);
    const lines = readFileSync(join(folder, "mine.yaml"), "utf8").split("\n");
    const from = lines.findIndex((line) => line.trim() === "# variants:");
    expect(from).toBeGreaterThan(0);
    const taken = lines.map((line, index) => (index < from ? line : line.replace(/^ {4}# /, "    ")));
    writeFileSync(join(folder, "mine.yaml"), taken.join("\n"));
    const ended = await command.run(["compare", "mine.yaml"], { cwd: folder });
    expect([ended.code, ended.err]).toEqual([0, ""]);
    expect(ended.out).toContain("2 deeper studs: ");
  });

  test("a project without variants ends with 1 and says what to write", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "plain.yaml"), SMALL_PROJECT);
    const ended = await command.run(["compare", "plain.yaml"], { cwd: folder });
    expect([ended.code, ended.out]).toEqual([1, ""]);
    expect(ended.err.replace(/\s+/g, " ")).toContain("there is nothing to compare. Write `variants:` into a build-up");
    expect(readdirSync(folder)).toEqual(["plain.yaml"]);
  });
});
