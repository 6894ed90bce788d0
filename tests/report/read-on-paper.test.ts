import { readdirSync, readFileSync } from "node:fs";
import { assessProject, type ProjectResult, readProjectOrThrow, saturationPressure } from "@warmside/core";
import { governingView, renderReport } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { gramsPerArea, mostGramsPerArea, sharesOfWhole } from "../../packages/report/src/numbers.ts";
import { waterHeadline } from "../../packages/report/src/water-headline.ts";
import { pathWords } from "../../packages/report/src/words.ts";
import { everyPart } from "./every-part.ts";
import { annexPart, visibleText } from "./page-text.ts";

/** What must not puzzle someone who checks the printed report against its own figures. */

const CASES = new URL("../practice/cases/", import.meta.url);

/** A practice case by its number, assessed. */
function caseOf(number: string): ProjectResult {
  const name = readdirSync(CASES).find((file) => file.startsWith(number))!;
  return assessProject(readProjectOrThrow(readFileSync(new URL(name, CASES), "utf8")));
}

async function textOf(result: ProjectResult, comparison: "short" | "whole" = "short"): Promise<string> {
  return visibleText(await renderReport(result, { comparison })).replace(/ (?=[.,;:])/g, "");
}

/** From the site checklist to its end. */
function checklistOf(text: string): string {
  return text.slice(text.indexOf("Show this list alone"));
}

const project = (buildUp: string, more = ""): ProjectResult =>
  assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
${more}build-ups:
${buildUp}`),
  );

describe("the governing section", () => {
  test("is the same one everywhere, even where all sections share a name", async () => {
    const result = everyPart();
    const [buildUp] = result.buildUps;
    const moisture = buildUp!.moisture!;
    expect(moisture.governing.name).toBe(moisture.section);
    const last = moisture.sections.length - 1;
    const sections = moisture.sections.map((section) => ({ ...section, name: "one name" }));
    const named = {
      ...buildUp!,
      wood: buildUp!.wood.map((wood) => ({ ...wood, section: "one name" })),
      moisture: {
        ...moisture,
        section: "one name",
        governing: sections[last]!,
        sections,
      },
    };
    expect(governingView(named)!.section).toBe(named.moisture.sections[last]);
    const page = await renderReport({ ...result, buildUps: [named] });
    const data = JSON.parse(/id="result">([\s\S]*?)<\/script>/.exec(page)![1]!).buildUps[0].moisture;
    for (const [index, { months }] of data.sections.entries()) expect(months[0].nodes.length > 0).toBe(index === last);
    const ways = page.slice(page.indexOf("<span>Heat-flow paths"));
    const rows = [...ways.slice(0, ways.indexOf("</table>")).matchAll(/<tr( class="marked")?><th scope="row"/g)];
    expect(rows.map(([, marked]) => marked !== undefined)).toEqual(named.moisture.sections.map((_, at) => at === last));
    const wood = visibleText(page.slice(page.indexOf("Moisture content of the wood, %")));
    for (const { layer, months } of named.wood.filter(({ sectionIndex }) => sectionIndex === last)) {
      expect(wood).toContain(`layer ${layer + 1} inner`);
      expect(wood).toContain((months[0]!.inner * 100).toFixed(1));
    }
  });
});

describe("a tight layer that is no vapour layer", () => {
  test("on the cold side is neither called nor taped as one", async () => {
    const text = await textOf(caseOf("06"));
    expect(text).not.toContain("Heavy dashes: vapour layer.");
    expect(checklistOf(text)).not.toMatch(/taped|socket/);
  });

  test("that nothing drives vapour through is not taped, and its sockets are not sealed", async () => {
    const text = await textOf(caseOf("62"));
    expect(text).not.toContain("Heavy dashes");
    expect(checklistOf(text)).not.toMatch(/taped|socket/);
  });

  test("on the warm side it is both", async () => {
    const text = await textOf(caseOf("01"));
    expect(text).toContain("Heavy dashes: vapour layer.");
    expect(checklistOf(text)).toMatch(/taped[\s\S]*socket/);
  });
});

test("an air layer closed at its ends is called that, on the drawing's page and in the checklist", async () => {
  const text = await textOf(
    project(`  - name: Roof
    element: flat roof
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { air: 50 mm, ventilation: slight, open: closed }
      - { material: oriented strand board, thickness: 18 mm }
`),
  );
  expect(text).toContain("slightly ventilated, closed at both ends");
  expect(checklistOf(text)).toContain("50 mm clear along its whole length, closed at both ends as drawn");
  expect(text).not.toContain("at closed");
});

describe("headlines", () => {
  test("where water stays they say what the first year brings and what each more", async () => {
    const result = caseOf("24");
    const { moisture } = result.buildUps[0]!;
    const { withinMonth, repeating } = moisture!.governing;
    const words = `${gramsPerArea(withinMonth.peak.amount)} in the first year, ${gramsPerArea(repeating.growthPerYear)} more each year`;
    expect(waterHeadline(moisture!)).toEqual({ verdict: "stays wet", words, byStandard: null });
    const text = await textOf(result);
    expect(text).toContain("condensation that does not all evaporate within the year");
    expect(text).toContain(`${gramsPerArea(repeating.growthPerYear).replaceAll("\u00a0", " ")} more each year`);
  });

  test("where the standard's year reads otherwise they follow the judgement's and name both", async () => {
    const result = caseOf("24");
    const [buildUp] = result.buildUps;
    const moisture = buildUp!.moisture!;
    const withinMonth = { verdict: "dries out", peak: { amount: 0.12, month: "March" }, carriedOver: 0, dryBy: "June" };
    const sections = moisture.sections.map((section) => ({ ...section, withinMonth }) as typeof section);
    const parted = { ...moisture, sections, governing: sections[moisture.governing.index]! };
    expect(waterHeadline(parted)).toMatchObject({
      verdict: "dries out",
      words: "at most 120\u00a0g/m², in March",
      byStandard: { verdict: "stays wet" },
    });
    const text = await textOf({ ...result, buildUps: [{ ...buildUp!, moisture: parted }] });
    expect(text).toMatch(/ISO 13788: [^.]*does not all evaporate within the year, at most \d+ g\/m²/);
    expect(text).toContain(
      "With drying within each month, as judged: condensation, and all of it evaporates within the year, at most 120 g/m² in March",
    );
  });

  test("a trace has no most of its own", () => {
    expect(mostGramsPerArea(0.00004)).toBe("under 0.1\u00a0g/m²");
    expect(mostGramsPerArea(0.0004)).toBe("at most 0.4\u00a0g/m²");
  });
});

const PRICED_WALL = `  - name: Workshop wall
    element: wall
    target: 0.20 W/(m2 K)
    area: 46 m2
    openings: 6 m2
    length: 20 m
    framings: { studs: { material: softwood timber, width: 60 mm, spacing: 625 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { name: stud wool, material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { material: oriented strand board, thickness: 15 mm }
      - { name: outer boards, material: { name: faced board, conductivity: 0.022 W/(m K), vapour resistance factor: 60 }, thickness: 20 mm }
    variants:
      - { name: deeper studs, changes: [ { set: stud wool, thickness: 240 mm } ] }
      - { name: another sheet, changes: [ { set: polyethylene sheet 0.15 mm, material: vapour control layer sd 5 m } ] }
`;
const PRICES = `currency: €
heat price: 0.14 /kWh
hour rate: 45
prices:
  - { material: mineral wool slab, per: m3, price: 70, waste: 5 %, hours: 0.1 }
  - { material: softwood timber, per: m3, price: 520, waste: 10 % }
  - { material: vapour control layer sd 5 m, per: roll, price: 150, covers: 75 m2, width: 1.5 m }
  - { material: polyethylene sheet 0.15 mm, per: roll, price: 40, covers: 100 m2 }
`;

describe("a target that is missed, and prices", () => {
  const result = project(PRICED_WALL, PRICES);

  test("the missed target answers the question, and stands on the row, the sheet and above the signature", async () => {
    const text = await textOf(result);
    expect(text).toContain("No: it misses its U-value.");
    expect(text).toMatch(/U-value 0\.\d\d W\/\(m²·K\), target 0\.20: missed/);
    expect(text).toMatch(/0\.\d\d\d W\/\(m²·K\), target 0\.20 missed/);
    expect(text.slice(text.indexOf("Signature Calculated"))).toContain("No: it misses its U-value.");
  });

  test("every variant says whether it meets the target", async () => {
    const page = await renderReport(result);
    const table = page.slice(page.indexOf("<span>The build-up as drawn and its variants"));
    const cells = [...table.slice(0, table.indexOf("</table>")).matchAll(/<td class="w">(?:<strong>)?(met|missed)</g)];
    expect(cells.map(([, word]) => word)).toEqual(["missed", "met", "missed"]);
  });

  test("the quantities have unit prices and labour, and adds up", async () => {
    const text = await textOf(result, "whole");
    expect(text).toContain("a kilowatt hour of heat €0.14; an hour of work €45.00");
    expect(text).toContain("€70.00 a m³");
    expect(text).toContain("€40.00 a roll of 100 m²");
    for (const [, rows, whole] of text.matchAll(/Material Thickness([\s\S]*?)In all €([\d.]+)/g)) {
      expect(rows).toContain("Labour: 4 hours at €45.00 €180.00");
      const costs = [...rows!.matchAll(/€([\d.]+)(?= [a-zL]|$| \n?)/g)].map(([, amount]) => Number(amount));
      const priced = [...rows!.matchAll(/€[\d.]+ a [^€]*€([\d.]+)/g)].map(([, amount]) => Number(amount));
      const labour = Number(/Labour: [\d.]+ hours at €[\d.]+ €([\d.]+)/.exec(rows!)![1]);
      expect(costs.length).toBeGreaterThan(2);
      expect(Math.abs(priced.reduce((sum, amount) => sum + amount, labour) - Number(whole))).toBeLessThan(0.03);
    }
  });

  test("an extra cost that is not told has its reason, and no variant is said to be paid back in so many years", async () => {
    const text = await textOf(result, "whole");
    expect(text).toContain(
      "2 another sheet: its extra cost is unknown: it takes another amount of tape, which has no price.",
    );
    expect(text).toMatch(/paid back not before \d+ years/);
    expect(text).not.toMatch(/paid back in/);
    expect(text).toContain("Pays not before");
  });
});

describe("figures that stand side by side", () => {
  test("shares add up to 100", () => {
    expect(sharesOfWhole([0.8775, 0.1225])).toEqual(["87.7", "12.3"]);
    expect(sharesOfWhole([0.333333, 0.333333, 0.333334])).toEqual(["33.3", "33.3", "33.4"]);
    expect(sharesOfWhole([1])).toEqual(["100.0"]);
  });

  test("framing has one share wherever it is named", async () => {
    const text = await textOf(caseOf("41"));
    expect(text).toContain("12.3 % of the area");
    expect(text).toContain("noggins and corners (usual for such an element, common practice): 12.3 %");
    expect(text).toContain("framing 12.3 % of the area");
    expect(text).toContain("(87.7 % of the area)");
    expect(text).not.toContain("12.2 %");
  });

  test("without framing nothing is said to lie between it", async () => {
    const text = await textOf(caseOf("42"));
    expect(text).toMatch(/at most [\d.]+ %; no framing/);
  });

  test("a faced board's sd is shown as its facings and its core", async () => {
    const text = await textOf(caseOf("04"));
    expect(text).toMatch(/sd 1500 \+ [\d.]+ \+ 1500 m, with its facings/);
  });

  test("places are named as the layers of the layer table", async () => {
    const result = project(PRICED_WALL);
    const text = visibleText(annexPart(await renderReport(result), 1));
    expect(text).toMatch(/between layer 2, polyethylene sheet 0\.15 mm, and layer 3, stud wool/);
    expect(text).not.toContain("layer 3, mineral wool slab");
  });

  test("the ratio for walls is shown for walls", async () => {
    const ratio = "sd on the warm side of the insulation over sd on its cold side";
    expect(await textOf(caseOf("01"))).toContain(ratio);
    for (const number of ["30", "42"]) expect(await textOf(caseOf(number))).not.toContain(ratio);
  });

  test("one month is named where the surface stands alike in all", async () => {
    const result = caseOf("42");
    const { surface, heat } = result.buildUps[0]!;
    expect(surface!.humidityStood!.month).toBe(heat!.criticalMonth);
  });

  test("wood along the ways that do not govern has its wettest month", async () => {
    const result = caseOf("30");
    const [buildUp] = result.buildUps;
    const text = await textOf(result);
    const rest = buildUp!.wood.filter(({ sectionIndex }) => sectionIndex !== buildUp!.moisture!.governing.index);
    expect(rest.length).toBeGreaterThan(0);
    for (const { layer, name, sectionId, months, monthsOverLimit } of rest) {
      const most = months.reduce((one, other) =>
        Math.max(other.inner, other.outer) > Math.max(one.inner, one.outer) ? other : one,
      );
      const moisture = (Math.max(most.inner, most.outer) * 100).toFixed(1);
      expect(text).toContain(
        `${layer + 1} ${name} ${pathWords(sectionId)} ${most.month} ${moisture} ${monthsOverLimit}`,
      );
    }
  });
});

test("the design conditions name altitude and severity", async () => {
  const result = assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: munich
altitude: 900 m
severity: one in ten colder
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - { name: Wall, element: wall, layers: [ { material: mineral wool slab, thickness: 100 mm } ] }
`),
  );
  const text = await textOf(result);
  expect(text).toMatch(/Munich, one in ten colder \([^)]*\), corrected to the site’s 900 m at [\d.]+ K\/km\./);
  expect(text).toContain("The room: heated to 20 °C");
});

describe("places and rooms in the report's own words", () => {
  const result = assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: oslo
rooms:
  drying: { heating: 20 °C, humidity: class 5 }
  damp room: { temperature: 55 °C, humidity: class 4 }
  store: { unheated: true }
build-ups:
  - { name: Outer wall, element: wall, room: drying, layers: [{ material: mineral wool slab, thickness: 100 mm }] }
  - { name: Second wall, element: wall, room: damp room, layers: [{ material: mineral wool slab, thickness: 100 mm }] }
  - { name: Partition, element: partition, room: drying, faces: store, layers: [{ material: mineral wool slab, thickness: 100 mm }] }
`),
  );

  test("a room is named as one: a bare name breaks the sentence", async () => {
    const text = await textOf(result);
    for (const words of [
      "from the room “drying” to the outside",
      "from the room “drying” to the room “store”",
      "from the damp room to the outside",
      "Air month by month: outdoors, the room “drying”, the damp room",
    ])
      expect(text).toContain(words);
  });

  test("the climate is called by its place, its table named once, and its origin told once", async () => {
    const text = await textOf(result);
    expect(text).toContain("Oslo Blindern, mean year");
    expect(text.split("“oslo”").length).toBe(2);
    expect(text).toContain("Climate Oslo Blindern: see its origin");
    for (const line of result.climate.origin) expect(text.split(line.trim()).length, line).toBe(2);
  });

  test("an odd value that was not confirmed is said not to be", async () => {
    const text = await textOf(result);
    expect(text).toContain("(not confirmed in the file)");
  });

  test("a negative figure behind a minus sign stands in brackets", async () => {
    expect(await textOf(result)).not.toMatch(/− −\d/);
  });
});

test("an answer that rests on mould at the surface says first what that surface is like", async () => {
  const result = project(`  - name: Thin wall
    element: wall
    layers: [{ material: softwood timber, thickness: 40 mm }]
`);
  const [buildUp] = result.buildUps;
  const mould = buildUp!.findings.find(({ code }) => code === "surface-mould")!;
  expect(buildUp!.judgement.message).toBe(mould.message);
  const { factor, month } = mould.figures as { factor: number; month: string };
  const inside = result.rooms[0]!.months.find((entry) => entry.month === month)!;
  const outside = result.climate.months.find((entry) => entry.month === month)!;
  const surface = outside.temperature + factor * (inside.temperature - outside.temperature);
  const damp = Math.round((100 * inside.vapourPressure) / saturationPressure(surface));
  expect(damp).toBeGreaterThan(80);
  expect(await textOf(result)).toContain(
    `In ${month} the coldest surface of the room is ${surface.toFixed(1)} °C, the relative humidity at it ${damp} %; mould can grow from 80 %. ${mould.short}`,
  );
});
