import { readdirSync, readFileSync } from "node:fs";
import { assessProject, readProjectOrThrow } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { demoProject } from "../demo.ts";
import { floorsOfEveryKind, roofFloorWall } from "../one-wall.ts";
import { annexPart, buildUpPart } from "../page-text.ts";
import {
  DAYS,
  floorTransmittance,
  MONTHS,
  type MonthAtNodes,
  monthOf,
  requiredFactor,
  saturation,
  woodMoisture,
} from "./by-the-standards.ts";
import { decimalsOf, figure, type PrintedTable, plain, tableNamed } from "./read-page.ts";

/**
 * The page retraced as an officer would: every figure is worked again from what is printed, and from nothing else. The
 * page is the only thing that comes from the program. A printed figure may differ by one in its last digit, since the
 * figures it starts from are themselves printed rounded; it never differs by more.
 */

const heathrowPartitions = readFileSync(
  new URL(
    readdirSync(new URL("../../practice/cases/", import.meta.url)).find((file) => file.startsWith("48"))!,
    new URL("../../practice/cases/", import.meta.url),
  ),
  "utf8",
);

const PAGES = await Promise.all(
  [
    assessProject(demoProject()),
    roofFloorWall(),
    floorsOfEveryKind(),
    assessProject(readProjectOrThrow(heathrowPartitions)),
  ].map((result) => renderReport(result)),
);

/** One in the last printed digit. */
function expectPrinted(text: string, value: number, what: string, more = 0): void {
  const printed = figure(text);
  expect(Number.isFinite(printed), `${what}: “${text}” is no figure`).toBe(true);
  expect(Math.abs(printed - value), `${what}: printed ${text}, retraced ${value}`).toBeLessThanOrEqual(
    10 ** -decimalsOf(text) * (1 + 1e-6) + more,
  );
}

/** Air by month: θ and p of a column group of the design conditions. */
function airOf(page: string, name: string): { temperature: number[]; pressure: number[] } {
  for (const table of page
    .split("<table")
    .slice(1)
    .map((piece) => tableNamed(`<table${piece}`, "Air month by month"))) {
    const at = table?.heads.findIndex((head) => head.startsWith(`${name} θ`)) ?? -1;
    if (table && at >= 0)
      return {
        temperature: table.rows.map((row) => figure(row[at])),
        pressure: table.rows.map((row) => figure(row[at + 2])),
      };
  }
  throw new Error(`no air of ${name}`);
}

interface Sheet {
  name: string;
  front: string;
  annex: string;
  inside: { temperature: number[]; pressure: number[] };
  outside: { temperature: number[]; pressure: number[] };
  nodes: PrintedTable;
  /** By how much temperatures may be off, since those of a ground or void are printed rounded [K]. */
  rounding: number;
}

/** A room by the name that a table has for it. */
function headOf(words: string): string {
  if (words === "the room") return "Room";
  const quoted = /“([^”]*)”/.exec(words)?.[1] ?? words.replace(/^the /, "");
  return quoted.charAt(0).toUpperCase() + quoted.slice(1);
}

function sheetsOf(page: string): Sheet[] {
  const count = page.match(/<section class="sheet page/g)!.length;
  return Array.from({ length: count }, (_, index) => {
    const front = buildUpPart(page, index + 1);
    const annex = annexPart(page, index + 1);
    const [, from, to] = /, from (.*?) to (.*?)(?: ·|$)/.exec(
      plain(/<p class="kicker">([\s\S]*?)<\/p>/.exec(front)![1]!),
    )!;
    const outdoors = airOf(page, "Outdoors");
    const asOutdoors = (words: string): boolean =>
      new RegExp(`${words.replace(/[“”]/g, ".")}: air as outdoors`, "i").test(plain(page));
    const other = tableNamed(annex, "Other side, month by month");
    const air = (words: string): Sheet["inside"] => {
      if (words === "the outside" || asOutdoors(words)) return outdoors;
      if (other !== null && (words === "the ground" || words === "the void below"))
        return {
          temperature: other.rows.map((row) => figure(row[1])),
          pressure: other.rows.map((row) => figure(row[3])),
        };
      return airOf(page, words === "the indoor room" ? "Room" : headOf(words));
    };
    const nodes = [...annex.matchAll(/<table[\s\S]*?<\/table>/g)]
      .map(([table]) => tableNamed(table, ""))
      .find((table) => table?.caption.includes("every node from the room surface"))!;
    return {
      name: plain(/<h2>([\s\S]*?)<\/h2>/.exec(front)![1]!),
      front,
      annex,
      inside: air(from!),
      outside: air(to!),
      nodes,
      rounding: other === null ? 0 : 0.005,
    };
  });
}

/** The surfaces in the hand check: Rsi, the layers, Rse, and the outer surface under a clear sky. */
function surfacesOf({ annex, outside }: Sheet): { inside: number; total: number; offset: number } {
  const hand = plain(annex.slice(annex.indexOf('data-by-hand="moisture"')));
  const [, inside, total] = /air to air: ([\d.]+) \(room surface\)[^=]*= ([\d.]+) m²/.exec(hand)!;
  const [, felt, sky] = /Other side \([^)]*\): (−?[\d.]+) °C( under a clear sky)?/.exec(hand)!;
  const month = MONTHS.indexOf(/Hand check: (\w{3})/.exec(hand)![1]!);
  return { inside: Number(inside), total: Number(total), offset: sky ? figure(felt) - outside.temperature[month]! : 0 };
}

interface Line {
  /** R and sd from the room surface. */
  resistance: number[];
  sd: number[];
}

function governingLine({ nodes }: Sheet): Line {
  return { resistance: nodes.rows.map((row) => figure(row[2])), sd: nodes.rows.map((row) => figure(row[3])) };
}

/** The line through the framing, from the layers' table: its row has d, R and sd over all layers that it crosses. */
function framedLine({ front }: Sheet): Line & { faceOf: (layer: number) => [inner: number, outer: number] } {
  const { rows } = tableNamed(front, "Layers from the room outwards")!;
  const framing = rows.find(([name]) => / in layers? [\d, ]+:/.test(name!))!;
  const crossed = / in layers? ([\d, ]+):/.exec(framing[0]!)![1]!.split(", ");
  const line: Line = { resistance: [0], sd: [0] };
  const faces = new Map<number, [number, number]>();
  for (const row of rows) {
    const number = /^\d+/.exec(row[0]!)?.[0];
    if (number === undefined || row[0]!.includes("not counted")) continue;
    const share = crossed.includes(number) ? figure(row[1]) / figure(framing[1]) : null;
    const [resistance, sd] = [3, 5].map((at) => (share === null ? figure(row[at]) : share * figure(framing[at])));
    const parts = Math.max(1, Math.ceil(resistance! / 0.25));
    const first = line.sd.length - 1;
    for (let part = 0; part < parts; part += 1) {
      line.resistance.push(line.resistance.at(-1)! + resistance! / parts);
      line.sd.push(line.sd.at(-1)! + sd! / parts);
    }
    faces.set(Number(number), [first, line.sd.length - 1]);
  }
  return { ...line, faceOf: (layer) => faces.get(layer)! };
}

/** The year of a path, the governing one or another, from the governing one's start month, at every node. */
function yearOf(
  sheet: Sheet,
  { resistance, sd }: Line = governingLine(sheet),
): Map<string, MonthAtNodes & { temperature: number[] }> {
  const { inside, total: governing, offset } = surfacesOf(sheet);
  const total = governing - governingLine(sheet).resistance.at(-1)! + resistance.at(-1)!;
  const order = monthRows(sheet).rows.map(([month]) => MONTHS.indexOf(month!));
  let held = sd.map(() => 0);
  const year = new Map<string, MonthAtNodes & { temperature: number[] }>();
  for (const month of order) {
    const [room, outdoors] = [sheet.inside.temperature[month]!, sheet.outside.temperature[month]! + offset];
    const temperature = resistance.map((r) => room - ((room - outdoors) * (inside + r)) / total);
    const solved = monthOf(
      sd,
      temperature.map(saturation),
      sheet.inside.pressure[month]!,
      sheet.outside.pressure[month]!,
      held,
      DAYS[month]!,
    );
    held = solved.held;
    year.set(MONTHS[month]!, { ...solved, temperature });
  }
  return year;
}

function monthRows({ front }: Sheet): PrintedTable {
  return tableNamed(front, "Month by month")!;
}

/** The node that the month table follows: its temperature in the critical month picks it among the printed nodes. */
function nodeOf(sheet: Sheet): number {
  const table = monthRows(sheet);
  const critical = MONTHS.indexOf(/^(\w{3})/.exec(sheet.nodes.caption)![1]!);
  const row = table.rows.find(([month]) => month === MONTHS[critical])!;
  const matching = sheet.nodes.rows.flatMap((node, index) =>
    node[4] === row[1] &&
    Math.abs(figure(node[5]) - figure(row[2])) < 0.11 &&
    Math.abs(figure(node[6]) - figure(row[3])) < 0.11
      ? [index]
      : [],
  );
  expect(matching.length, `${sheet.name}: the node of the month table`).toBeGreaterThan(0);
  return matching[0]!;
}

/** Nodes at a layer's inner and outer face on the governing path; −1 where no node lies. */
function facesOf({ nodes }: Sheet, layer: string): [inner: number, outer: number] {
  const find = (matches: (place: string) => boolean): number => nodes.rows.findIndex(([place]) => matches(place!));
  return [
    find(
      (place) => new RegExp(`and layer ${layer},`).test(place) || (place === "at the room surface" && layer === "1"),
    ),
    find((place) => new RegExp(`(between|outer face of) layer ${layer},`).test(place)),
  ];
}

const retracedFloors = new Set<string>();
const retracedFraming = new Set<string>();

const SHEETS = PAGES.flatMap((page) => sheetsOf(page).map((sheet) => [sheet.name, page, sheet] as const));

describe.each(SHEETS)("retraced: %s", (_, page, sheet) => {
  const { front, annex } = sheet;
  const text = plain(front);

  test("R of every layer and of the framing, from d and λ", () => {
    const table = tableNamed(front, "Layers from the room outwards")!;
    let counted = 0;
    for (const row of table.rows) {
      const [thickness, conductivity, resistance] = [figure(row[1]), figure(row[2]), figure(row[3])];
      if (![thickness, conductivity, resistance].every(Number.isFinite) || /facings/.test(row[0]!)) continue;
      expectPrinted(row[3]!, thickness / 1000 / conductivity, row[0]!);
      const [factor, sd] = [figure(row[4]), figure(row[5])];
      if (Number.isFinite(factor) && Number.isFinite(sd))
        expect(sd).toBeGreaterThanOrEqual((factor * thickness) / 1000 - 1e-3);
      counted += 1;
    }
    expect(counted).toBeGreaterThan(0);
  });

  test("limits of R, and U", () => {
    const [paths, layers] = [tableNamed(annex, "Upper limit")!, tableNamed(annex, "Lower limit")!];
    const conductance = paths.rows
      .filter(([name]) => name !== "Sum")
      .reduce((sum, row) => sum + figure(row[1]) / figure(row[2]), 0);
    const lower = layers.rows
      .filter(([name]) => !name!.startsWith("Sum"))
      .reduce((sum, row) => sum + figure(row[1]), 0);
    const [, printedUpper, printedLower, printedMean] = /upper ([\d.]+), lower ([\d.]+) m²·K\/W; mean ([\d.]+)/.exec(
      text,
    )!;
    expectPrinted(printedUpper!, 1 / conductance, "upper limit");
    expectPrinted(printedLower!, lower, "lower limit");
    if (!text.includes("with the slightly ventilated layer"))
      expectPrinted(printedMean!, (1 / conductance + lower) / 2, "mean");
    const [, printedU] = /U-value ?([\d.]+) W/.exec(text)!;
    const corrections = /ΔU ([\d.]+) W/.exec(text)?.[1] ?? "0";
    if (!text.includes("with the ground"))
      expectPrinted(printedU!, 1 / figure(printedMean) + Number(corrections), "U", 1e-3);
  });

  test("a floor on the ground or over a void: from what it lies on to U (ISO 13370:2017, from memory)", () => {
    const given = tableNamed(annex, "Floor and ground, ISO 13370:2017: what it is worked out from");
    if (given === null) return;
    const row = (symbol: string): string[] | undefined => given.rows.find((one) => one[1] === symbol);
    const edge = row("D") === undefined ? null : /level/.test(row("D")![0]!) ? "level" : "upright";
    const [, mean] = /; mean ([\d.]+); Rsi ([\d.]+), Rse/.exec(text)!;
    const u = floorTransmittance((symbol) => figure(row(symbol)?.[2]), Number(mean), edge, row("h") !== undefined);
    expectPrinted(/U-value ?([\d.]+) W/.exec(text)![1]!, u, "U of the floor");
    retracedFloors.add(row("h") !== undefined ? "over a void" : `on the ground, edge ${edge}`);
  });

  test("fRsi and what every month requires", () => {
    const paths = tableNamed(annex, "Upper limit")!;
    const [, rsi] = /Rsi ([\d.]+), Rse/.exec(text)!;
    const factors = [...plain(annex).matchAll(/(?:By place:|,) ([^,.:]+?) (0\.\d{3})/g)].map(
      ([, name, factor]) => [name!.trim(), factor!] as const,
    );
    const usesOther = text.includes("ground") || text.includes("void") || plain(annex).includes("slightly ventilated");
    for (const row of usesOther ? [] : paths.rows.filter(([name]) => name !== "Sum")) {
      const own = factors.find(([name]) => name === row[0] || (row[0] === "whole" && name === "whole"));
      if (own === undefined) continue;
      // Rse for moisture differs from that for U behind a ventilated layer: then the hand check has it.
      const forMoisture = /Rse ([\d.]+) for temperatures and vapour/.exec(plain(annex))![1]!;
      const forU = /Rse ([\d.]+) m²·K\/W for U/.exec(plain(annex))![1]!;
      const layers = figure(row[2]) - Number(rsi) - Number(forU);
      expectPrinted(own[1], 1 - 0.25 / (0.25 + layers + Number(forMoisture)), `fRsi ${row[0]}`);
    }
    for (const row of monthRows(sheet).rows) {
      const month = MONTHS.indexOf(row[0]!);
      const at = monthRows(sheet).heads.indexOf("fRsi required");
      const wanted = requiredFactor(
        sheet.inside.temperature[month]!,
        sheet.inside.pressure[month]!,
        sheet.outside.temperature[month]!,
      );
      if (wanted === null) expect(row[at]).toBe("–");
      else expectPrinted(row[at]!, wanted, `fRsi required in ${row[0]}`);
    }
  });

  test("temperature, saturation, vapour pressure, gc and Ma of every month of the governing path", () => {
    const year = yearOf(sheet);
    const node = nodeOf(sheet);
    const table = monthRows(sheet);
    const total = (month: MonthAtNodes): number => month.held.reduce((sum, held) => sum + held, 0);
    const most = Math.max(...[...year.values()].map(total));
    for (const row of table.rows) {
      const month = year.get(row[0]!)!;
      expectPrinted(row[1]!, month.temperature[node]!, `θ in ${row[0]}`);
      const warmer = saturation(month.temperature[node]! + sheet.rounding) - month.saturation[node]!;
      expectPrinted(row[2]!, month.saturation[node]!, `psat in ${row[0]}`, 0.1 + warmer);
      expectPrinted(row[3]!, month.pressure[node]!, `p in ${row[0]}`, 0.1 + warmer);
      if (!table.heads.some((head) => head.startsWith("gc"))) {
        expect(Math.max(...month.held)).toBeLessThan(0.05);
        continue;
      }
      expectPrinted(row[4]!, month.rates[node]!, `gc in ${row[0]}`, 1e-4 * most);
      // Twelve months of amounts add up what the printed figures were rounded by: a ten-thousandth of them.
      expectPrinted(row[5]!, total(month), `Ma in ${row[0]}`, 1e-4 * most);
    }
  });

  test("wood moisture at the faces, month by month", () => {
    const wood = tableNamed(annex, "Moisture content of the wood");
    if (wood === null) return;
    const year = yearOf(sheet);
    const framed = tableNamed(front, "Layers from the room outwards")!.rows.flatMap(([name]) =>
      /^\d+ .* with /.test(name!) ? [name!.split(" ")[0]!] : [],
    );
    wood.heads.slice(1).forEach((head, column) => {
      const [, number, side] = /layer (\d+).*(inner|outer)$/.exec(head)!;
      // Framing in a layer's place lies on another path than the one that the months follow.
      if (framed.includes(number!)) return;
      const [inner, outer] = facesOf(sheet, number!);
      const node = side === "inner" ? inner : outer;
      if (node < 0) return;
      for (const row of wood.rows) {
        const month = year.get(row[0]!)!;
        const value = woodMoisture(
          month.temperature[node]!,
          Math.min(1, month.pressure[node]! / month.saturation[node]!),
        );
        expectPrinted(row[column + 1]!, value, `${head} in ${row[0]}`);
      }
    });
  });

  test("the wettest wood that a finding names, be it the framing's own", () => {
    const said =
      /The wood moisture of (.+?) in (.+?) \((?:at|through) the .+?\)[^.]*? in \d+ months? \(([^)]*)\): ([\d.]+) %/.exec(
        text,
      );
    if (said === null) return;
    const [, , layerName, , printed] = said as unknown as [string, string, string, string, string];
    const { rows } = tableNamed(front, "Layers from the room outwards")!;
    const layer = Number(rows.find(([name]) => name!.includes(layerName))![0]!.split(" ")[0]);
    const framed = framedLine(sheet);
    // The wetter of its own way and the bay beside it, which the printed nodes follow.
    const ways = [
      { year: yearOf(sheet, framed), faces: framed.faceOf(layer) },
      { year: yearOf(sheet), faces: facesOf(sheet, String(layer)) },
    ];
    const wettest = Math.max(
      ...ways.flatMap(({ year, faces }) =>
        [...year.values()].flatMap(({ temperature, pressure, saturation: saturated }) =>
          faces.map((node) => woodMoisture(temperature[node]!, Math.min(1, pressure[node]! / saturated[node]!))),
        ),
      ),
    );
    expectPrinted(printed, wettest, said[0]);
    retracedFraming.add(sheet.name);
  });

  test("sd of a sheet with gaps", () => {
    const gaps = tableNamed(annex, "Gaps in a sheet");
    for (const row of gaps?.rows ?? []) {
      // Framing in a board's place has a row too: its sd is the framing's own, in the layer table.
      if (row[0]!.includes(", through ")) continue;
      const share = figure(row[1]) / 100;
      expectPrinted(row[3]!, 1 / ((1 - share) / figure(row[2]) + share / 0.01), row[0]!);
    }
  });

  test("heat over the year", () => {
    const printed = /Heat over the year ?([\d.]+) kWh/.exec(text)?.[1];
    if (printed === undefined || text.includes("void")) return;
    const kelvinHours = MONTHS.reduce(
      (sum, __, month) =>
        sum + Math.max(0, sheet.inside.temperature[month]! - sheet.outside.temperature[month]!) * 24 * DAYS[month]!,
      0,
    );
    const [, u] = /Calculated without rounding: U (\d+\.\d+)/.exec(plain(annex))!;
    expectPrinted(printed, (Number(u) * kelvinHours) / 1000, "heat over the year");
    expect(page).toContain("Heat over the year: U ×");
  });
});

test("floors of every kind were among them", () => {
  expect([...retracedFloors].sort()).toEqual([
    "on the ground, edge level",
    "on the ground, edge null",
    "on the ground, edge upright",
    "over a void",
  ]);
});

test("wet framing was among them", () => expect(retracedFraming.size).toBeGreaterThan(0));
