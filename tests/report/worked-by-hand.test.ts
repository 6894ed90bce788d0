import { assessProject, dewPoint, type ProjectResult, readProjectOrThrow, saturationPressure } from "@warmside/core";
import { renderReport } from "@warmside/report";
import { beforeAll, describe, expect, test } from "vitest";
import { fixed, readFigure } from "../../packages/report/src/numbers.ts";
import { demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";
import { twoWalls } from "./fixture.ts";
import { annexPart, decoded } from "./page-text.ts";

/**
 * The sums on the page are worked again here from what is printed, and from nothing else.
 * A printed line must follow from the printed lines above it to its last digit; the outcome must agree with the
 * unrounded calculation within what the rounding of the printed figures can do.
 */

const FIGURE = String.raw`−?[\d\u202f]+(?:\.\d+)?`;

/** A block of sums, as its text with bold figures marked by asterisks, and its tables as rows of cells. */
interface Block {
  lines: string[];
  tables: string[][][];
}

function blockOf(part: string, name: string): Block {
  const start = part.indexOf(`data-by-hand="${name}"`);
  if (start < 0) throw new Error(`no sum of ${name}`);
  const markup = part.slice(start, part.indexOf("</section>", start));
  const text = (html: string): string => decoded(html.replace(/<\/?b>/g, "*").replace(/<[^>]*>/g, "")).trim();
  const lines = [...markup.matchAll(/<(?:li|p)[^>]*>([\s\S]*?)<\/(?:li|p)>/g)].map(([, line]) => text(line!));
  const tables = [...markup.matchAll(/<table[^>]*>([\s\S]*?)<\/table>/g)].map(([, table]) =>
    [...table!.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)]
      .slice(1)
      .map(([, row]) => [...row!.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => text(cell!))),
  );
  return { lines, tables };
}

/** The figures of a line: those it starts from, and the bold one it comes to. */
function figures(line: string): { given: number[]; outcome: number; decimals: number } {
  const bold = new RegExp(`\\*(${FIGURE})\\*`).exec(line);
  if (!bold) throw new Error(`no outcome in: ${line}`);
  const before = line.slice(0, bold.index).replace(/[RU][′″]?(?=\s)/g, "");
  const given = [...before.matchAll(new RegExp(`(?<![\\d.\\u202f])${FIGURE}`, "g"))].map(([text]) => readFigure(text!));
  return { given, outcome: readFigure(bold[1]!), decimals: (bold[1]!.split(".")[1] ?? "").length };
}

/** The value rounded as printed; the half-way case may go either way in binary numbers. */
function expectPrinted(outcome: number, value: number, decimals: number, line: string): void {
  expect(Math.abs(outcome - value), line).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-6) + 1e-9);
}

const cell = (row: readonly string[], place: number): number => readFigure(row[place]!);

/** Water on both faces of a film: flows are divided by the hundredth of a millimetre of sd between them. */
const thinFilm = (): ProjectResult =>
  assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall with a film
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: { name: open film, conductivity: 0.2 W/(m K), vapour resistance factor: 1 }, thickness: 0.01 mm }
      - { material: { name: tight skin, sd: 1500 m } }
`),
  );

/** Floors of every kind: over a void, well and hardly insulated slabs, insulation along the edge. Invented. */
const floors = (): ProjectResult =>
  assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: oslo
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Over a void
    element: floor
    faces: void
    void: { area: 34 m2, perimeter: 23 m, height: 0.45 m, wind: 3.5 m/s, shelter: exposed, soil: clay or silt, ground insulation: 0.5 m2 K/W }
    framings: { joists: { material: softwood timber, width: 45 mm, spacing: 400 mm } }
    layers:
      - { material: particleboard, thickness: 22 mm }
      - { material: mineral wool slab, thickness: 120 mm, framing: joists }
      - { material: breather membrane }
  - name: Over a void whose air is stated
    element: floor
    faces: void
    void: { area: 34 m2, perimeter: 23 m, temperature: 8 °C, humidity: 80 % }
    layers:
      - { material: particleboard, thickness: 22 mm }
      - { material: mineral wool slab, thickness: 120 mm }
  - name: Slab hardly insulated, insulation below its edge
    element: floor
    faces: ground
    ground: { area: 80 m2, perimeter: 36 m, soil: rock, membrane: true, edge insulation: { resistance: 1.5 m2 K/W, thickness: 50 mm, depth: 0.8 m } }
    layers:
      - { material: concrete 2200, thickness: 100 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
  - name: Slab well insulated, insulation beside its edge
    element: floor
    faces: ground
    ground: { area: 30 m2, perimeter: 22 m, wall thickness: 0.4 m, membrane: true, edge insulation: { resistance: 1 m2 K/W, thickness: 40 mm, width: 0.5 m } }
    layers:
      - { material: concrete 2200, thickness: 100 mm }
      - { material: extruded polystyrene, thickness: 120 mm }
      - { material: polyethylene sheet 0.25 mm, purpose: damp-proof membrane }
`),
  );

/** A printed formula worked out: figures as they stand, symbols by what was printed of them. */
function worked(formula: string, symbols: ReadonlyMap<string, number>): number {
  const names = [...symbols.keys()].sort((one, other) => other.length - one.length);
  const known = names.reduce((text, name) => text.replaceAll(name, `(${symbols.get(name)})`), formula);
  const code = known
    .replace(/^.*: /, "")
    .replaceAll("\u202f", "")
    .replaceAll("−", "-")
    .replaceAll("×", "*")
    .replaceAll("π", "Math.PI")
    .replace(/\bln\b/g, "Math.log");
  expect(code.replaceAll(/Math\.(?:PI|log)/g, ""), formula).toMatch(/^[\d\s.()+*/-]+$/);
  return new Function(`return ${code}`)() as number;
}

describe.each<[string, () => ProjectResult]>([
  ["floors on the ground and over a void", floors],
  ["a wall with a very thin film", thinFilm],
  ["the demo", demoResult],
  ["a project with every part", everyPart],
  ["two walls made by hand", twoWalls],
])("sums worked by hand: %s", (_, make) => {
  const result = make();
  const parts: string[] = [];
  beforeAll(async () => {
    const page = await renderReport(result);
    parts.push(...result.buildUps.map((__, index) => annexPart(page, index + 1)));
  });

  describe.each(result.buildUps.map((buildUp, index) => [buildUp.name, index] as const))("%s", (__, index) => {
    const buildUp = result.buildUps[index]!;

    test("transmittance by the combined method", () => {
      if (!buildUp.heat) return;
      const { lines, tables } = blockOf(parts[index]!, "heat");
      const [upper, lower] = tables as [string[][], string[][]];
      const ways = upper.slice(0, -1);
      for (const way of ways) expectPrinted(cell(way, 3), cell(way, 1) / cell(way, 2), 6, way.join());
      const sum = ways.reduce((total, way) => total + cell(way, 3), 0);
      expectPrinted(cell(upper.at(-1)!, 3), sum, 6, "sum of conductances");
      const layers = lower.slice(0, -1).reduce((total, row) => total + cell(row, 1), 0);
      expectPrinted(cell(lower.at(-1)!, 1), layers, 4, "sum of resistances");
      const slightLine = lines.find((line) => line.includes("slightly ventilated: R ="));
      const [first, second, third] = lines
        .filter((line) => line !== slightLine)
        .slice(0, 3)
        .map(figures);
      expect(slightLine !== undefined).toBe(Boolean(buildUp.heat.slightVentilation));
      const slight = slightLine ? figures(slightLine) : null;
      if (slight) {
        const [share, closed, shareAgain, open] = slight.given.slice(-4);
        expect([closed, shareAgain]).toEqual([second!.outcome, share]);
        expectPrinted(slight.outcome, (1 - share!) * closed! + share! * open!, 4, slightLine!);
        expect(Math.abs(open! - buildUp.heat.slightVentilation!.openResistance)).toBeLessThanOrEqual(0.5e-4);
      }
      expect(first!.given.at(-1)).toBe(cell(upper.at(-1)!, 3));
      expectPrinted(first!.outcome, 1 / first!.given.at(-1)!, 4, lines[0]!);
      const [fromUpper, fromLower] = second!.given.slice(-3);
      expect([fromUpper, fromLower]).toEqual([first!.outcome, cell(lower.at(-1)!, 1)]);
      expectPrinted(second!.outcome, (fromUpper! + fromLower!) / 2, 4, lines[1]!);
      const [resistance, correction] = third!.given.slice(-2);
      expect(resistance).toBe((slight ?? second)!.outcome);
      expectPrinted(third!.outcome, 1 / resistance! + correction!, 4, lines[2]!);
      if (!buildUp.heat!.ground) {
        const layersShown = lower.length;
        const lost = 0.5e-4 * (2 + layersShown) * buildUp.heat!.transmittance ** 2 + 1e-4;
        expect(Math.abs(third!.outcome - buildUp.heat!.transmittance)).toBeLessThanOrEqual(lost);
      }
    });

    test("a floor on the ground or over a void, from what the file states to U and the void's air", () => {
      const basis = buildUp.heat?.groundBasis;
      if (!buildUp.heat?.ground || !basis) {
        expect(parts[index]!.includes('data-by-hand="floor"')).toBe(false);
        return;
      }
      const part = decoded(parts[index]!.replace(/<[^>]*>/g, "|")).replace(/[ |]*\|[ |]*/g, "|");
      const symbols = new Map<string, number>();
      for (const [, symbol, value] of part.matchAll(
        new RegExp(`\\|(A|P|dw|λg|Rsi|Rse|Rn|dn|D|h|Uw|ε|v|fw|Rg)\\|(${FIGURE})\\|`, "g"),
      ))
        if (!symbols.has(symbol!)) symbols.set(symbol!, readFigure(value!));
      if (basis.edgeInsulation?.upright) symbols.set("D", 2 * symbols.get("D")!);
      symbols.set("corrections", readFigure(fixed(buildUp.heat.correction, 4)));
      const combined = blockOf(parts[index]!, "heat").lines.map((line) => /R = .* = \*([\d.]+)\* m²/.exec(line)?.[1]);
      symbols.set("R", Number(combined.findLast((found) => found !== undefined)));
      const { lines } = blockOf(parts[index]!, "floor");
      const steps = lines.filter((line) => line.includes("*"));
      const surfaces = new Map([
        ["Rsi", buildUp.heat.surfaceResistanceInside],
        ["Rse", buildUp.heat.surfaceResistanceOutside],
      ]);
      for (const line of steps.filter((text) => !text.startsWith("Air of the void"))) {
        const [symbol, formula, inFigures, outcome] = line
          .replaceAll(", D twice the depth", "")
          .replaceAll(", D the width", "")
          .split(" = ");
        const printed = readFigure(outcome!.split("*")[1]!);
        expectPrinted(printed, worked(inFigures!, new Map()), 4, line);
        expectPrinted(
          printed,
          worked(formula!, symbol === "Rf" ? new Map([...symbols, ...surfaces]) : symbols),
          4,
          line,
        );
        symbols.set(symbol!, printed);
      }
      const needed = basis.void ? ["Rf", "B", "Uf", "dg", "Ug", "Ux", "U"] : ["Rf", "B", "dt", "U0", "U"];
      expect([...symbols.keys()]).toEqual(expect.arrayContaining(needed));
      expect(symbols.has("Ψ")).toBe(basis.edgeInsulation !== null);
      expect(Math.abs(symbols.get("U")! - buildUp.heat.transmittance)).toBeLessThanOrEqual(2e-4);
      for (const { symbol, value } of buildUp.heat.ground)
        expect(Math.abs(symbols.get(symbol)! - value), symbol).toBeLessThanOrEqual(3e-4 * Math.max(1, value));
      const air = steps.find((line) => line.startsWith("Air of the void"));
      expect(air !== undefined).toBe(basis.void !== null && !basis.void.isAirStated);
      if (air === undefined) return;
      const [, , inFigures, outcome] = air.split(" = ");
      const temperature = readFigure(outcome!.split("*")[1]!);
      expectPrinted(temperature, worked(inFigures!, new Map()), 3, air);
      const month = /Air of the void in (\w+):/.exec(air)![1];
      const stated = buildUp.farSide.months.find((entry) => entry.month === month)!;
      expect(Math.abs(temperature - stated.temperature)).toBeLessThanOrEqual(0.01);
    });

    test("the temperature factor asked for in the critical month", () => {
      if (!buildUp.surface?.critical.mould) return;
      const { lines } = blockOf(parts[index]!, "surface");
      const [needed, least, required] = lines.map(figures) as [
        ReturnType<typeof figures>,
        ReturnType<typeof figures>,
        ReturnType<typeof figures>,
      ];
      const pressure = needed.given.at(-2)!;
      expectPrinted(needed.outcome, pressure / 0.8, 2, lines[0]!);
      expectPrinted(least.outcome, dewPoint(needed.outcome), 3, lines[1]!);
      const [surface, outdoor, room, outdoorAgain] = required.given.slice(-4);
      expect([surface, outdoorAgain]).toEqual([least.outcome, outdoor]);
      expectPrinted(required.outcome, Math.max(0, (surface! - outdoor!) / (room! - outdoor!)), 4, lines[2]!);
      expect(Math.abs(required.outcome - buildUp.surface.critical.mould.factor)).toBeLessThanOrEqual(3e-4);
    });

    test("the critical month: temperatures, saturation, the vapour line, grams", () => {
      if (!buildUp.moisture) return;
      const { lines, tables } = blockOf(parts[index]!, "moisture");
      const rows = tables[0]!;
      const [air, total] = [lines[1]!, figures(lines[2]!)];
      const [inside, insidePressure, outside, outsidePressure] = [...air.matchAll(new RegExp(FIGURE, "g"))].map(
        ([text]) => readFigure(text),
      );
      expectPrinted(
        total.outcome,
        total.given.reduce((sum, part) => sum + part, 0),
        4,
        lines[2]!,
      );
      for (const row of rows) {
        const temperature = inside! - ((inside! - outside!) * cell(row, 1)) / total.outcome;
        expectPrinted(cell(row, 2), temperature, 3, row.join());
        expectPrinted(cell(row, 3), saturationPressure(cell(row, 2)), 2, row.join());
      }
      const [first, last] = [rows[0]!, rows.at(-1)!];
      expect(cell(first, 5)).toBe(Math.min(insidePressure!, cell(first, 3)));
      expect(cell(last, 5)).toBe(Math.min(outsidePressure!, cell(last, 3)));
      const section = buildUp.moisture.sections.find(({ name }) => name === buildUp.moisture!.section)!;
      const month = section.months.find((entry) => entry.month === section.decidingMonth)!;
      if (month.planes.length === 0) {
        for (const row of rows.slice(1, -1)) {
          const line = cell(first, 5) - ((cell(first, 5) - cell(last, 5)) * cell(row, 4)) / cell(last, 4);
          expectPrinted(cell(row, 5), line, 2, row.join());
          expect(cell(row, 5)).toBeLessThan(cell(row, 3));
          const margin = cell(row, 3) - cell(row, 5);
          expect(Math.abs(margin - section.leastMargin!.margin)).toBeLessThan(0.25);
        }
        return;
      }
      for (const row of rows.slice(1, -1)) expect(row[5]).toBe(row[3]);
      const perPascal = figures(lines.find((line) => line.startsWith("At a place with water"))!).outcome;
      const days = Number(/Over (\d+) days/.exec(lines.join(" "))![1]);
      expectPrinted(perPascal, 2e-10 * days * 86_400 * 1000, 5, "grams for a pascal");
      const flows = lines.filter((line) => line.startsWith("From "));
      expect(flows).toHaveLength(rows.length - 1);
      const grams = flows.map((line, place) => {
        const [before, after] = [rows[place]!, rows[place + 1]!];
        const { given, outcome } = figures(line);
        expect(given.slice(-4)).toEqual([cell(before, 5), cell(after, 5), cell(after, 4), cell(before, 4)]);
        expectPrinted(
          outcome,
          (perPascal * (cell(before, 5) - cell(after, 5))) / (cell(after, 4) - cell(before, 4)),
          2,
          line,
        );
        return outcome;
      });
      const balances = lines.filter((line) => line.includes("inflow minus outflow"));
      expect(balances).toHaveLength(month.planes.length);
      balances.forEach((line, place) => {
        const { outcome } = figures(line);
        expectPrinted(outcome, grams[place]! - grams[place + 1]!, 2, line);
        const held = readFigure(/Accumulated before: (\S+)/.exec(line)![1]!);
        const calculated = readFigure(/without rounding: (\S+)/.exec(line)![1]!);
        const counted = Math.max(outcome, -held);
        expectPrinted(calculated, month.planes[place]!.change * 1000, 2, line);
        expect(Math.abs(counted - calculated), line).toBeLessThanOrEqual(roundingOf(rows, place + 1, perPascal));
      });
    });
  });
});

/** What the rounding of temperatures [0.0005 K] and pressures [0.005 Pa] can do to the grams at a place. */
function roundingOf(rows: readonly string[][], place: number, perPascal: number): number {
  const slope = (row: readonly string[]): number =>
    Math.abs(saturationPressure(cell(row, 2) + 0.001) - saturationPressure(cell(row, 2)));
  const conductance = [place, place + 1].reduce(
    (sum, to) => sum + perPascal / (cell(rows[to]!, 4) - cell(rows[to - 1]!, 4)),
    0,
  );
  const pressure = Math.max(...rows.slice(place - 1, place + 2).map(slope)) + 0.01;
  const drive = rows.slice(place - 1, place + 2).map((row) => cell(row, 5));
  const lengths = [place, place + 1].map((to) => {
    const way = cell(rows[to]!, 4) - cell(rows[to - 1]!, 4);
    return (perPascal * Math.abs(drive[to - place + 1]! - drive[to - place]!) * 1e-4) / way ** 2;
  });
  return 2 * conductance * pressure + lengths.reduce((sum, length) => sum + length, 0) + 0.02;
}
