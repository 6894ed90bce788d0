import type { ProjectResult } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { fixed, grams, millimetres } from "../../packages/report/src/numbers.ts";
import { sentence } from "../../packages/report/src/words.ts";
import { demoResult } from "./demo.ts";
import { buildUpPart, uncoveredWords, visibleText } from "./page-text.ts";

/** What an officer looks for, each held by its text on the demo's pages. */

const result: ProjectResult = demoResult();
let page = "";
let whole = "";
const parts: string[] = [];

beforeAll(async () => {
  page = await renderReport(result);
  whole = visibleText(page);
  parts.push(...result.buildUps.map((_, index) => visibleText(buildUpPart(page, index + 1))));
}, 60_000);

/** Fails with the wanted text alone, not with the page. */
function expectText(text: string, wanted: string | RegExp): void {
  const found = typeof wanted === "string" ? text.includes(wanted.replace(/\s+/g, " ")) : wanted.test(text);
  expect(found, `the page should say: ${wanted}`).toBe(true);
}

describe("the first page", () => {
  test("prints what the query says, and only that", () => {
    const query = result.query!;
    for (const text of [query.question, query.to, query.site, query.preparedBy, query.date])
      if (text) expectText(whole, text);
    for (const drawing of query.drawings) expectText(whole, drawing);
    if (!query.preparedBy) expect(whole.includes("Prepared by")).toBe(false);
  });

  test("answers in five lines: question, answer, conditions, method, limits", () => {
    const first = page.slice(page.indexOf('<dl class="five">'), page.indexOf("</header>"));
    const lines = [...first.matchAll(/<div[^>]*><dt>([^<]*)<\/dt>/g)].map(([, name]) => name);
    expect(lines).toEqual(["Question", "Answer", "Conditions", "Method", "Limits"]);
    for (const { name, judgement } of result.buildUps) {
      expectText(visibleText(first), name);
      expectText(visibleText(first), sentence(judgement.short));
    }
  });

  test("says a reason in short, and all of it at the head of the build-up", () => {
    result.buildUps.forEach(({ judgement }, index) => {
      const banner = buildUpPart(page, index + 1).match(/<div class="banner[\s\S]*?<\/dl>/)![0];
      expectText(visibleText(banner), sentence(judgement.message));
    });
  });

  test("beside every dry, dries out or sound, or once below its table, stands what it does not cover", () => {
    const { words, uncovered } = uncoveredWords(page);
    expect(words).toBeGreaterThan(result.buildUps.length);
    expect(uncovered).toEqual([]);
  });
});

describe("climate and rooms", () => {
  test("place, severity, every line of origin, table", () => {
    expectText(whole, result.climate.severity);
    for (const line of result.climate.origin) expectText(whole, line.trim());
    for (const month of result.climate.months) {
      expectText(
        whole,
        `${month.month.slice(0, 3)} ${fixed(month.temperature, 1)} ${fixed(month.relativeHumidity * 100, 1)} ${fixed(month.vapourPressure, 0)}`,
      );
    }
  });

  test("indoor basis of every room by month, with its rule and source", () => {
    for (const room of result.rooms) {
      expectText(
        whole,
        `Temperature: ${room.temperatureRule}. Humidity: ${room.humidityRule}. Source: ${room.source}.`,
      );
      for (const month of room.months) {
        expectText(
          whole,
          `${month.month.slice(0, 3)} ${fixed(month.temperature, 1)} ${fixed(month.relativeHumidity * 100, 1)}`,
        );
      }
    }
  });
});

describe.each(result.buildUps.map((buildUp, index) => [buildUp.name, index] as const))("build-up: %s", (_, index) => {
  const buildUp = result.buildUps[index]!;
  const section = buildUp.moisture?.sections.find(({ name }) => name === buildUp.moisture!.section);

  test("layer schedule room to outside: thickness, λ, μ or sd, source, basis", () => {
    const rows = buildUpPart(page, index + 1).match(
      /<caption><span>Layers from the room outwards[\s\S]*?<\/table>/,
    )![0];
    const text = visibleText(rows);
    let from = 0;
    for (const layer of buildUp.layers) {
      const at = text.indexOf(`${layer.number} ${layer.name}`, from);
      expect(at, layer.name).toBeGreaterThanOrEqual(from);
      from = at;
      const row = text.slice(at);
      if (layer.thickness > 0) expectText(row, millimetres(layer.thickness));
      if (layer.conductivity !== null) expectText(row, fixed(layer.conductivity, 3));
      expectText(row, `${layer.source} ${layer.basis}`);
    }
  });

  test("bridging with its share, and the result at and between framing", () => {
    for (const framing of buildUp.framings) {
      expectText(parts[index]!, `${fixed(framing.share * 100, 1)} % of the area`);
      expectText(parts[index]!, framing.origin);
      expectText(parts[index]!, framing.usual);
    }
    for (const path of buildUp.heat!.paths)
      expectText(parts[index]!, `${path.name} ${fixed(path.share, 4)} ${fixed(path.resistance, 4)}`);
    for (const entry of buildUp.moisture?.sections ?? []) expectText(parts[index]!, entry.name);
  });

  test("every air layer and void declared ventilated or not, with the rule used", () => {
    const air = buildUp.layers.filter(({ type }) => type === "air");
    if (air.length === 0) expectText(parts[index]!, "No air layer or void.");
    for (const layer of air) {
      expectText(
        parts[index]!,
        new RegExp(`Layer ${layer.number}, .{1,12}mm: declared (not|slightly|well) ventilated`),
      );
      expectText(parts[index]!, `Rule: ${layer.airRule}`);
    }
  });

  test("U with corrections against the target", () => {
    const { heat, target } = buildUp;
    expectText(parts[index]!, `U ${fixed(heat!.transmittance, 3)} W/(m²·K) with framing and corrections`);
    if (target !== null) {
      const met = Number(fixed(heat!.transmittance, 2)) <= Number(fixed(target, 2));
      expectText(parts[index]!, `target ${fixed(target, 2)}: ${met ? "met" : "not met"}`);
    }
    expectText(parts[index]!, "Corrections");
  });

  test("temperature factor against the required one", () => {
    const { temperatureFactor, requiredTemperatureFactor, criticalMonth } = buildUp.heat!;
    expectText(parts[index]!, `Temperature factor ${fixed(temperatureFactor, 3)}`);
    if (requiredTemperatureFactor !== null) {
      expectText(
        parts[index]!,
        `against ${fixed(requiredTemperatureFactor, 3)} required to keep mould off, in ${criticalMonth}`,
      );
    }
  });

  test("per interface and month condensed, evaporated, held; peak, months wet, dry by, carried over", () => {
    if (!section) return;
    const text = parts[index]!;
    if (section.peak.amount === 0) {
      expectText(text, "Condensed, evaporated and held: nothing at any interface in any month.");
      return;
    }
    expectText(text, `Peak ${grams(section.peak.amount)} g/m² in ${section.peak.month}`);
    const wet = section.months.filter(({ planes }) => planes.some(({ held }) => held > 0)).length;
    expectText(text, `months wet: ${wet}`);
    expectText(text, section.dryBy ? `dry by ${section.dryBy}` : "not dry within the year");
    expectText(text, `carried over ${grams(section.carriedOver)} g/m²`);
    for (const { month, planes } of section.months) {
      const sum = (part: (change: number) => number): string =>
        fixed(planes.reduce((total, { change }) => total + part(change), 0) * 1000, 1);
      const held = fixed(planes.reduce((total, plane) => total + plane.held, 0) * 1000, 1);
      expectText(
        text,
        `${month.slice(0, 3)} ${sum((change) => Math.max(0, change))} ${sum((change) => Math.max(0, -change))} ${held}`,
      );
    }
    expectText(text, "the water sits:");
  });

  test("sensitivity: every run with its verdict", () => {
    expect(buildUp.sensitivity.length).toBeGreaterThan(0);
    for (const run of buildUp.sensitivity) expectText(parts[index]!, run.message);
  });

  test("every finding with what to do, its source, and the judgement with its conditions", () => {
    for (const finding of buildUp.findings) {
      expectText(parts[index]!, sentence(finding.message));
      if (finding.advice) expectText(parts[index]!, `What to do: ${sentence(finding.advice)}`);
      expectText(parts[index]!, finding.source);
    }
    for (const condition of buildUp.judgement.conditions) expectText(parts[index]!, condition);
  });

  test("a drawing to scale and plots with room and far side named in words", () => {
    const markup = buildUpPart(page, index + 1);
    expect(markup.match(/<svg class="drawing"/g)).toHaveLength(1);
    const plots = [...markup.matchAll(/<svg id="[^"]*plot-(\w+)"[\s\S]*?<\/svg>/g)];
    expect(plots.map(([, name]) => name)).toEqual(expect.arrayContaining(["temperature", "vapour", "months"]));
    for (const [svg, name] of plots.filter(([, name]) => name === "temperature" || name === "vapour")) {
      expect(svg.match(/<text[^>]*font-weight="bold"[^>]*>([^<]*)</g)?.length, name).toBeGreaterThanOrEqual(2);
      expect(svg, name).toContain("from the room surface");
    }
  });
});

describe("method, limits, sources, site", () => {
  test("method, edition, surface resistances, subdivision, start month", () => {
    expectText(whole, result.method);
    expectText(whole, "ISO 6946:2017");
    expectText(whole, "cut into equal parts of at most 0.25 m²·K/W");
    result.buildUps.forEach(({ heat, moisture }, index) => {
      const governing = moisture?.sections.find(({ name }) => name === moisture.section);
      const text = whole.slice(whole.indexOf("Surface resistances, cuts and start"));
      expectText(
        text,
        new RegExp(
          `${index + 1} .{1,70} ${fixed(heat!.surfaceResistanceInside, 2)} ${fixed(heat!.surfaceResistanceOutside, 2)} ${fixed(heat!.surfaceResistanceOutsideMoisture, 2)}`,
        ),
      );
      expectText(text, governing?.startMonth ?? "none: no wet month");
    });
  });

  test("statement of limits: rain, capillary flow, storage, sun, built-in water, one dimension, steady months", () => {
    const limits = whole.slice(whole.indexOf("What is left out The words"));
    for (const word of [
      "rain",
      "capillary flow",
      "store",
      "sun",
      "built in",
      "one dimension",
      "steady months",
      "air that moves through gaps",
    ]) {
      expectText(limits, word);
    }
  });

  test("site conditions to meet: laps, edges, sockets, timber below 20 %, vents clear", () => {
    const list = whole.slice(whole.indexOf("Site checklist Show this list alone"));
    for (const word of ["laps and joints taped", "perimeter sealed", "Sockets", "below 20 %"]) expectText(list, word);
    if (result.buildUps.some(({ layers }) => layers.some(({ ventilation }) => ventilation === "well")))
      expectText(list, "Ventilated space");
  });

  test("every source of a value, and a place to sign", () => {
    const sources = whole.slice(whole.indexOf("Sources of the values Materials"));
    for (const layer of result.buildUps.flatMap(({ layers }) => layers)) expectText(sources, layer.source);
    for (const word of ["Name", "Date", "Signature", "No more than this is claimed."]) expectText(sources, word);
  });
});
