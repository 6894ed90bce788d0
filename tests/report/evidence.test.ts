import type { ProjectResult } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { fixed, grams, millimetres, trimmed } from "../../packages/report/src/numbers.ts";
import { sentence } from "../../packages/report/src/words.ts";
import { demoResult } from "./demo.ts";
import { annexPart, buildUpPart, uncoveredWords, visibleText } from "./page-text.ts";

/** What an officer looks for, each held by its text on the demo's pages. */

const result: ProjectResult = demoResult();
let page = "";
let whole = "";
const sheets: string[] = [];
const annexes: string[] = [];

beforeAll(async () => {
  page = await renderReport(result);
  whole = visibleText(page);
  sheets.push(...result.buildUps.map((_, index) => visibleText(buildUpPart(page, index + 1))));
  annexes.push(...result.buildUps.map((_, index) => visibleText(annexPart(page, index + 1))));
});

/** Fails with the wanted text alone, not with the page. */
function expectText(text: string, wanted: string | RegExp): void {
  const found =
    typeof wanted === "string" ? text.includes(wanted.replaceAll("`", "").replace(/\s+/g, " ")) : wanted.test(text);
  expect(found, `the page should say: ${wanted}`).toBe(true);
}

describe("the decision", () => {
  test("prints what the query says, and only that", () => {
    const query = result.query!;
    for (const text of [query.question, query.to, query.site, query.preparedBy, query.date])
      if (text) expectText(whole, text);
    for (const drawing of query.drawings) expectText(whole, drawing);
    if (!query.preparedBy) expect(whole.includes("Prepared by")).toBe(false);
  });

  test("answers the question, and says of each build-up what was found and what to change it to", () => {
    const first = visibleText(page.slice(page.indexOf('id="answer"'), page.indexOf("</header>")));
    expectText(first, /(Yes|Yes, on conditions|No|No answer) : /);
    for (const { name, judgement, remedies, heat, target } of result.buildUps) {
      const row = first.slice(first.lastIndexOf(name));
      expectText(row, sentence(judgement.short));
      const missed = target !== null && Number(fixed(heat!.transmittance, 2)) > target;
      const meeting = remedies.find(
        ({ transmittance }) => target !== null && Number(fixed(transmittance, 2)) <= target,
      );
      const toBe = (missed ? meeting : undefined) ?? remedies[0]!;
      if ((judgement.word === "change it" || missed) && remedies.length > 0)
        expectText(
          row,
          `Change it to: ${sentence(toBe.change)}: then ${toBe.judgement}, U ${fixed(toBe.transmittance, 2)}`,
        );
    }
  });

  test("what must change stands first", () => {
    const words = [...page.matchAll(/<li class="row (\w+)/g)].map(([, mark]) => mark);
    const change = result.buildUps.filter(({ judgement }) => judgement.word === "change it").length;
    expect(change).toBeGreaterThan(0);
    expect(words.slice(0, change).every((word) => word === "change")).toBe(true);
  });

  test("every condition stands once, as a box to tick, with the build-ups it is for", () => {
    const list = page.slice(page.indexOf('id="conditions"'), page.indexOf('<nav class="contents"'));
    const boxes = list.match(/class="box"/g) ?? [];
    const conditions = new Set(result.buildUps.flatMap(({ judgement }) => judgement.conditions));
    expect(boxes).toHaveLength(conditions.size);
    for (const condition of conditions) expectText(visibleText(list), condition);
  });

  test("beside every dry, dries out or sound in a study's table stands what it does not cover", () => {
    expect(uncoveredWords(page).uncovered).toEqual([]);
    expectText(whole, "Sound, dry and dries out cover vapour diffusion through unbroken layers only.");
  });
});

describe("design conditions", () => {
  test("place, severity, every line of origin; twelve months of outdoors and of every room, once", () => {
    expectText(whole, result.climate.severity);
    for (const line of result.climate.origin) expectText(whole, line.trim());
    const air = ({ temperature, relativeHumidity, vapourPressure }: (typeof result.climate.months)[number]): string =>
      `${fixed(temperature, 2)} ${fixed(relativeHumidity * 100, 1)} ${fixed(vapourPressure, 2)}`;
    for (const month of result.climate.months) expectText(whole, `${month.month.slice(0, 3)} ${air(month)}`);
    for (const room of result.rooms) {
      const isOutdoors = room.months.every(
        ({ vapourPressure }, index) => vapourPressure === result.climate.months[index]!.vapourPressure,
      );
      expectText(
        whole,
        isOutdoors ? "air as outdoors in every month" : `${room.temperatureRule}; ${room.humidityRule}`,
      );
      expectText(whole, room.source);
      if (!isOutdoors) for (const month of room.months) expectText(whole, air(month));
    }
  });
});

describe.each(result.buildUps.map((buildUp, index) => [buildUp.name, index] as const))("build-up: %s", (_, index) => {
  const buildUp = result.buildUps[index]!;
  const section = buildUp.moisture?.governing;

  test("layers room to outside and the framing: thickness, λ, R, μ or sd, source, basis", () => {
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
      if (layer.conductivity !== null) expectText(row, trimmed(layer.conductivity, 4));
      if (layer.counted) expectText(row, fixed(layer.resistance, 3));
      expectText(row, layer.basis);
    }
    for (const framing of buildUp.framings) {
      const row = text.slice(text.indexOf(framing.name));
      expectText(row, `${fixed(framing.share * 100, 1)} % of the area`);
      for (const words of [framing.origin, framing.material, framing.basis]) expectText(row, words);
      expectText(annexes[index]!, framing.usual);
      expectText(row, trimmed(framing.conductivity, 4));
      if (framing.vapourResistanceFactor !== null) expectText(row, trimmed(framing.vapourResistanceFactor, 1));
    }
  });

  test("every air layer is said to be ventilated or not, with the rule used", () => {
    for (const layer of buildUp.layers.filter(({ type }) => type === "air")) {
      expectText(sheets[index]!, /(not|slightly|well) ventilated/);
      expectText(sheets[index]!, layer.airRule!.replaceAll(" (from memory)", "").slice(0, 50));
    }
  });

  test("limits, error, corrections, U against target, heat over the year, fRsi against required", () => {
    const { heat, target } = buildUp;
    const text = sheets[index]!;
    expectText(text, `upper ${fixed(heat!.upperLimit, 3)}, lower ${fixed(heat!.lowerLimit, 3)} m²·K/W`);
    expectText(text, `at most ${fixed(heat!.possibleError * 100, 1)} %`);
    expectText(text, "Corrections");
    expectText(
      text,
      `${fixed(heat!.transmittance, 3)} W/(m²·K) ${target === null ? ", no target stated" : `, target ${fixed(target, 2)}`}`,
    );
    if (heat!.heatPerYear !== null) expectText(text, `${fixed(heat!.heatPerYear, 1)} kWh/m²`);
    expectText(text, `fRsi ${fixed(heat!.temperatureFactor, 3)}`);
    if (heat!.requiredTemperatureFactor !== null)
      expectText(text, `against ${fixed(heat!.requiredTemperatureFactor, 3)} required in ${heat!.criticalMonth}`);
    expect(text).not.toMatch(/none required\s+(✓\s*)?met/);
    for (const path of heat!.paths)
      expectText(annexes[index]!, `${path.name} ${fixed(path.share, 4)} ${fixed(path.resistance, 4)}`);
  });

  test("the months from the start month: temperature, pressures, gc and Ma; what evaporates, in the standard's terms", () => {
    if (!section) return;
    const text = sheets[index]!;
    expectText(text, section.verdict === "dry" ? "no condensation predicted" : "condensation");
    if (section.peak.amount > 0) {
      expectText(text, `${grams(section.peak.amount)} g/m² at the end of ${section.peak.month}`);
      expectText(
        text,
        section.dryBy ? `gone by ${section.dryBy}` : `${grams(section.carriedOver)} g/m² left after 12 months`,
      );
      for (const { month, planes } of section.months) {
        const sum = (part: (change: number) => number): string =>
          fixed(planes.reduce((total, { change }) => total + part(change), 0) * 1000, 1);
        const held = fixed(planes.reduce((total, plane) => total + plane.held, 0) * 1000, 1);
        expectText(
          annexes[index]!,
          `${month.slice(0, 3)} ${sum((change) => Math.max(0, change))} ${sum((change) => Math.max(0, -change))} ${held}`,
        );
        expectText(
          text,
          new RegExp(`${month.slice(0, 3)} −?[\\d.]+ [\\d.]+ [\\d.]+ [+−]?[\\d.]+ ${held.replace(".", "\\.")} `),
        );
      }
    }
  });

  test("sensitivity: every run with its verdict and amounts", () => {
    const text = sheets[index]!;
    const rows = text.slice(text.indexOf("Sensitivity"));
    expect(buildUp.sensitivity.length).toBeGreaterThan(0);
    for (const { verdict, worse, peak, carriedOver } of buildUp.sensitivity)
      expectText(rows, `${verdict}${worse ? ", worse" : ""} ${grams(peak.amount)} ${grams(carriedOver)}`);
  });

  test("faults, judgement and conditions on the sheet; every finding in full with its source in the annex", () => {
    for (const finding of buildUp.findings) {
      if (finding.severity === "fault") expectText(sheets[index]!, sentence(finding.short));
      expectText(annexes[index]!, sentence(finding.message));
      if (finding.advice) expectText(annexes[index]!, `What to do: ${sentence(finding.advice)}`);
      expectText(annexes[index]!, finding.source);
    }
    expectText(sheets[index]!, `Judgement: ${buildUp.judgement.word}`);
    for (const condition of buildUp.judgement.conditions) expectText(sheets[index]!, condition);
  });

  test("one drawing to scale, and one plot whose title says what there is to see", () => {
    const markup = buildUpPart(page, index + 1);
    expect(markup.match(/<svg class="drawing/g)).toHaveLength(1);
    expect(markup.match(/<svg id="[^"]*" class="plot"/g)).toHaveLength(1);
    expect(markup).toMatch(/<p class="plot-title"><strong>(Water gathers|No condensation)/);
    expect(annexPart(page, index + 1).match(/<svg id="[^"]*-months" class="plot"/g)).toHaveLength(1);
  });
});

describe("method, limits, sources, site", () => {
  test("method, edition, surface resistances, subdivision, start month", () => {
    expectText(whole, result.method);
    expectText(whole, "ISO 6946:2017");
    expectText(whole, "cut into equal parts of at most 0.25 m²·K/W");
    const text = whole.slice(whole.indexOf("Surface resistances and start month"));
    result.buildUps.forEach(({ heat, moisture }, index) => {
      expectText(
        text,
        new RegExp(
          `${index + 1} .{1,70} ${fixed(heat!.surfaceResistanceInside, 2)} ${fixed(heat!.surfaceResistanceOutside, 2)} ${fixed(heat!.surfaceResistanceOutsideMoisture, 2)}`,
        ),
      );
      expectText(text, moisture?.governing.startMonth ?? "no wet month");
    });
  });

  test("statement of limits: rain, capillaries, storage, sun, construction moisture, one dimension, steady months", () => {
    const limits = whole.slice(whole.indexOf("What is left out Dry"));
    for (const word of [
      "rain",
      "capillaries",
      "stored",
      "sun",
      "construction moisture",
      "one dimension",
      "steady within each month",
      "air that moves through gaps",
    ])
      expectText(limits, word);
  });

  test("site conditions to meet: laps, perimeter, sockets, timber under 20 %, vents clear", () => {
    const list = whole.slice(whole.indexOf("Site checklist and signature Show"));
    for (const word of ["laps and joints taped", "perimeter sealed", "socket", "under 20 %"]) expectText(list, word);
    if (result.buildUps.some(({ layers }) => layers.some(({ ventilation }) => ventilation === "well")))
      expectText(list, "Ventilated space");
  });

  test("every source of a value, and a place to sign", () => {
    const sources = whole.slice(whole.indexOf("Sources of the values"));
    for (const layer of result.buildUps.flatMap(({ layers }) => layers)) expectText(sources, layer.source);
    for (const word of ["Name", "Date", "Signature", "No more than this is claimed."]) expectText(sources, word);
  });
});
