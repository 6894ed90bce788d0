import { createHash } from "node:crypto";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { roundFigures } from "../../packages/report/src/round-figures.ts";
import { demoResult } from "./demo.ts";
import { attributeValues } from "./page-text.ts";

const result = demoResult();
let page = "";

beforeAll(async () => {
  page = await renderReport(result);
});

describe("the document", () => {
  test("is one file that asks for nothing and runs nothing", () => {
    expect(page.match(/<(link|img|iframe|object|embed|form|video|audio|base)\b/g)).toBeNull();
    expect(page.match(/\s(src|srcset|action|style|on\w+)=/g)).toBeNull();
    expect(page.match(/url\((?!#)/g)).toBeNull();
    expect(page.match(/@import/g)).toBeNull();
    const scripts = [...page.matchAll(/<script([^>]*)>/g)].map(([, attributes]) => attributes);
    expect(scripts).toEqual([' type="application/json" id="result"']);
  });

  test("forbids every request, and allows just its own style", () => {
    const style = /<style>([\s\S]*?)<\/style>/.exec(page)![1]!;
    const digest = createHash("sha256").update(style, "utf8").digest("base64");
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(page)![1];
    expect(policy).toBe(`default-src 'none'; style-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'`);
  });

  test("tells its language and has headings in order", () => {
    expect(page.slice(0, 37)).toBe('<!doctype html>\n<html lang="en-GB"><h');
    const levels = [...page.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      if (index > 0) expect(level - levels[index - 1]!, `heading ${index + 1}`).toBeLessThanOrEqual(1);
    });
  });

  test("has no name twice, and every link and reference leads to one", () => {
    const ids = attributeValues(page, "id");
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const known = new Set(ids);
    const links = attributeValues(page, "href");
    expect(links.length).toBeGreaterThan(30);
    for (const link of links) expect(known.has(link.slice(1)), link).toBe(true);
    for (const [, id] of page.matchAll(/url\(#([^)]+)\)/g)) expect(known.has(id!), id).toBe(true);
    const labels = attributeValues(page, "aria-labelledby").flatMap((value) => value.split(" "));
    for (const id of labels) expect(known.has(id), id).toBe(true);
  });

  test("lists every part of the document in its contents, in its order, with a page each", () => {
    const contents = /<nav class="contents"[\s\S]*?<\/nav>/.exec(page)![0];
    const targets = attributeValues(contents, "href");
    const buildUps = result.buildUps.map((_, index) => `#build-up-${index + 1}`);
    expect(targets).toEqual(["#answer", "#conditions", "#design-conditions", ...buildUps, "#method", "#checklist"]);
    const pages = [...contents.matchAll(/class="page-number">(\d+)</g)].map(([, number]) => Number(number));
    expect(pages).toHaveLength(targets.length);
    expect(pages).toEqual([...pages].sort((one, other) => one - other));
  });

  test("the demo's report is under 1 MB", () => {
    expect(new TextEncoder().encode(page).length).toBeLessThan(1_000_000);
  });

  test("no figure on it is NaN, Infinity, undefined or null", () => {
    const shown = page.replace(/<script[\s\S]*?<\/script>/, "");
    expect(shown.match(/.{0,60}(NaN|Infinity|undefined|\bnull\b|\[object)/)?.[0]).toBeUndefined();
  });

  test("names the document: program, fingerprint of the input; date, revision and names only where they are given", async () => {
    const entries = (html: string): Record<string, string> => {
      const strip = /<dl class="strip">([\s\S]*?)<\/dl>/.exec(html)![1]!;
      return Object.fromEntries(
        [...strip.matchAll(/<dt>([^<]*)<\/dt><dd>([^<]*)<\/dd>/g)].map(([, key, value]) => [key, value]),
      );
    };
    const plain = entries(page);
    expect(plain.Program).toMatch(/^warmside \S/);
    expect(plain.Input).toMatch(/^[0-9a-f]{3}(-[0-9a-f]{3}){3}$/);
    expect(Object.keys(plain)).not.toEqual(expect.arrayContaining(["Date"]));
    expect("Checked by" in plain || "Revision" in plain || "Prepared by" in plain).toBe(false);
    const strip = { date: "1 May 2026", revision: "B", preparedBy: "one", checkedBy: "two" };
    const named = entries(await renderReport(result, { strip }));
    expect(named).toMatchObject({ Date: "1 May 2026", Revision: "B", "Prepared by": "one", "Checked by": "two" });
    expect(named.Input).toBe(plain.Input);
    const [first, ...others] = result.buildUps;
    const thicker = {
      ...first!,
      layers: first!.layers.map((layer) => ({ ...layer, thickness: layer.thickness * 1.01 })),
    };
    expect(entries(await renderReport({ ...result, buildUps: [thicker, ...others] })).Input).not.toBe(plain.Input);
  });

  test("folds the annex away, and opens it when asked", async () => {
    expect(page).toContain('<details id="annex" class="annex"><summary>');
    expect(await renderReport(result, { annex: true })).toContain('<details id="annex" class="annex" open><summary>');
  });

  test("one wall's report is under 300 kB", async () => {
    const wall = await renderReport({ ...result, buildUps: result.buildUps.slice(0, 1) });
    expect(new TextEncoder().encode(wall).length).toBeLessThan(300_000);
  });
});

describe("the data inside", () => {
  test("are the result's figures to six digits: whole for the governing sections, months for the others", () => {
    const json = JSON.parse(/id="result">([\s\S]*?)<\/script>/.exec(page)![1]!);
    const rounded = roundFigures(result);
    expect(Object.keys(json)).toEqual(Object.keys(rounded));
    rounded.buildUps.forEach((buildUp, index) => {
      const { moisture, ...rest } = json.buildUps[index];
      const { moisture: wanted, ...wantedRest } = buildUp;
      expect(rest).toEqual(wantedRest);
      wanted?.sections.forEach((section, place) => {
        const { months, ...figures } = moisture.sections[place];
        expect(figures).toEqual(JSON.parse(JSON.stringify({ ...section, months: undefined })));
        expect(months[0].nodes).toEqual(section.name === wanted.section ? section.months[0]!.nodes : []);
        expect(months.map(({ planes }: { planes: unknown }) => planes)).toEqual(
          section.months.map(({ planes }) => planes),
        );
      });
    });
  });
});
