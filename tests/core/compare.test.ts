import { assessBuildUp, assessProject, compareVariants, surroundingsOf } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { moneyInWords } from "../../packages/core/src/studies/variants/variant-in-words.ts";
import { changed, projectOf } from "./project-texts.ts";

/**
 * A wall of 62 m² with 9 m² of openings, 24 m long, and its variants. Studs take 45/600 + 7.5 % = 15 % of the area.
 * Prices are invented for these tests.
 */
const WALL = `project: Alder Row pottery studio
climate: de-bilt
currency: £
hour rate: 25
heat price: 0.10 /kWh
prices:
  - { material: gypsum plasterboard, per: sheet, price: 9, covers: 2.88 m2, waste: 10 % }
  - { material: polyethylene sheet 0.15 mm, per: roll, price: 40, covers: 50 m2, width: 2 m, lap: 100 mm }
  - { material: mineral wool slab, thickness: 140 mm, per: m2, price: 9.50, waste: 5 %, hours: 0.1 }
  - { material: mineral wool slab, thickness: 200 mm, per: m2, price: 13.50, waste: 5 %, hours: 0.1 }
  - { material: wood fibre insulation board, per: m3, price: 250 }
  - { material: softwood timber, thickness: 140 mm, per: m, price: 3.20 }
  - { material: softwood timber, thickness: 200 mm, per: m, price: 4.60 }
  - { material: softwood timber, per: m3, price: 600, waste: 10 % }
  - { material: tape, per: m, price: 0.50 }
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Studio wall
    element: wall
    area: 62 m2
    openings: 9 m2
    length: 24 m
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { air: 25 mm, ventilation: well }
      - { name: boarding, material: softwood timber, thickness: 20 mm }
    variants:
      - name: deeper studs
        changes: [ { set: mineral wool slab, thickness: 200 mm } ]
      - name: two boards
        changes: [ { add: { material: gypsum plasterboard, thickness: 12.5 mm }, before: gypsum plasterboard } ]
      - name: wood fibre outside
        changes: [ { add: { material: wood fibre insulation board, thickness: 60 mm }, after: mineral wool slab } ]
      - name: no vapour layer
        changes: [ { remove: polyethylene sheet 0.15 mm } ]
`;

const comparisonOf = (text: string) => compareVariants(projectOf(text))!;
const rowsOf = (text: string) => comparisonOf(text).buildUps[0]!.rows;
const [drawn, deeper, twoBoards, woodFibre, none] = rowsOf(WALL) as ReturnType<typeof rowsOf> & { length: 5 };
const goods = (row: typeof drawn, material: string, use = "layer") =>
  row!.goods.find((one) => one.material === material && one.use === use)!;

describe("what there is to buy, worked by hand for 53 m²", () => {
  it("insulation: 85 % of the area between studs, with 5 % waste", () => {
    const wool = goods(drawn, "mineral wool slab");
    expect(wool.perArea).toEqual({ area: 0.85, volume: expect.closeTo(0.119, 12), length: null });
    expect(wool.inAll!.area).toBeCloseTo(45.05, 10); // 0.85 × 53
    expect(wool.toBuy!.count).toBeCloseTo(47.3025, 10); // × 1.05
    expect(wool.toBuy!.unit).toBe("m2");
  });

  it("boards and rolls whole: 53 × 1.1 / 2.88 = 20.2 sheets are 21, and 53 / 50 rolls are 2", () => {
    expect(goods(drawn, "gypsum plasterboard").toBuy).toEqual({ count: 21, unit: "sheet" });
    expect(goods(drawn, "polyethylene sheet 0.15 mm").toBuy).toEqual({ count: 2, unit: "roll" });
  });

  it("a count that comes out whole is not rounded up: 60 m² by rolls of 20 m² are 3", () => {
    const text = changed("openings: 9 m2", "openings: 2 m2", WALL).replace("covers: 50 m2", "covers: 20 m2");
    expect(goods(rowsOf(text)[0]!, "polyethylene sheet 0.15 mm").toBuy).toEqual({ count: 3, unit: "roll" });
  });

  it("nor one that is whole but for its last digit: 53 m² with 10 % waste by sheets of 2.65 m² are 22", () => {
    const text = changed("covers: 2.88 m2", "covers: 2.65 m2", WALL);
    expect((1 / 2.65) * (1 + 0.1) * 53).toBeGreaterThan(22);
    expect(goods(rowsOf(text)[0]!, "gypsum plasterboard").toBuy).toEqual({ count: 22, unit: "sheet" });
  });

  it("studs: 15 % of the volume, and 0.15 / 0.045 m for each square metre", () => {
    const studs = goods(drawn, "softwood timber", "framing");
    expect(studs.thickness).toBeCloseTo(0.14, 12);
    expect(studs.perArea!.volume).toBeCloseTo(0.021, 12);
    expect(studs.perArea!.length).toBeCloseTo(3.333333, 6);
    expect(studs.toBuy!.count).toBeCloseTo(176.666667, 5);
  });

  it("tape: 53 / (2 − 0.1) m along laps and 2·(24 + 62/24) m around the edges", () => {
    const tape = goods(drawn, "tape", "tape");
    expect(tape.inAll!.length).toBeCloseTo(27.894737 + 53.166667, 5);
    expect(tape.note).toBe("28 m along laps; 53 m around the edges; openings and pipes come on top.");
  });

  it("laps are 100 mm unless stated", () => {
    const usual = rowsOf(changed(", lap: 100 mm", "", WALL))[0]!;
    expect(goods(usual, "tape", "tape").inAll!.length).toBeCloseTo(81.061404, 5);
    const wider = rowsOf(changed("lap: 100 mm", "lap: 150 mm", WALL))[0]!;
    expect(goods(wider, "tape", "tape").inAll!.length).toBeCloseTo(53 / 1.85 + 53.166667, 5);
  });

  it("hours are for each layer of it", () => {
    const rows = rowsOf(changed("covers: 2.88 m2, waste: 10 %", "covers: 2.88 m2, waste: 10 %, hours: 0.2", WALL));
    expect(rows[0]!.cost!.hoursPerArea).toBeCloseTo(0.3, 12);
    expect(rows[2]!.cost!.hoursPerArea).toBeCloseTo(0.5, 12);
  });

  it("two layers of one board are bought together", () => {
    expect(goods(twoBoards!, "gypsum plasterboard").perArea!.area).toBe(2);
    expect(goods(twoBoards!, "gypsum plasterboard").toBuy).toEqual({ count: 41, unit: "sheet" }); // 106 × 1.1 / 2.88 = 40.5
  });

  it("one timber through two layers is as deep as both and counted once by its length", () => {
    const text = changed(
      "      - { air: 25 mm",
      "      - { material: oriented strand board, thickness: 11 mm, framing: studs }\n      - { air: 25 mm",
      WALL,
    );
    const studs = goods(rowsOf(text)[0]!, "softwood timber", "framing");
    expect(studs.thickness).toBeCloseTo(0.151, 12);
    expect(studs.perArea!.length).toBeCloseTo(3.333333, 6);
    expect(studs.toBuy?.unit).toBe("m3");
  });

  it("framing by its share has a volume and no length, and a price by the metre does not fit it", () => {
    const text = changed("width: 45 mm, spacing: 600 mm", "fraction: 12 %", WALL);
    const studs = goods(rowsOf(text)[0]!, "softwood timber", "framing");
    expect(studs.perArea).toEqual({ area: null, volume: expect.closeTo(0.0168, 12), length: null });
    expect([studs.toBuy, studs.costPerArea]).toEqual([null, null]);
  });

  it("without an area everything is for a square metre, and there is no tape", () => {
    const text = changed("    area: 62 m2\n    openings: 9 m2\n", "", WALL);
    const [row] = rowsOf(text);
    expect(row!.goods.map(({ inAll, toBuy }) => [inAll, toBuy])).toEqual(row!.goods.map(() => [null, null]));
    expect(row!.goods.some(({ use }) => use === "tape")).toBe(false);
    expect(row!.cost!.inAll).toBeNull();
    expect(row!.cost!.perArea).toBeCloseTo(39.08292, 4); // as below, without tape
  });

  it("a size without a price counts rolls and costs nothing", () => {
    const text = changed("per: roll, price: 40, ", "per: roll, ", WALL);
    const sheet = goods(rowsOf(text)[0]!, "polyethylene sheet 0.15 mm");
    expect(sheet.toBuy).toEqual({ count: 2, unit: "roll" });
    expect([sheet.costPerArea, sheet.costInAll]).toEqual([null, null]);
  });

  it("paint is no sheet to tape", () => {
    const text = changed(
      "      - { material: gypsum",
      "      - { material: emulsion paint }\n      - { material: gypsum",
      WALL,
    );
    expect(goods(rowsOf(text)[0]!, "tape", "tape").inAll!.length).toBeCloseTo(81.061404, 5);
  });
});

describe("cost, worked by hand", () => {
  // boards 1.1/2.88·9 = 3.4375; sheet 40/50 = 0.8; wool 0.85·1.05·9.5 = 8.47875; studs 3.33333·3.2 = 10.66667;
  // boarding 0.02·1.1·600 = 13.2; tape 81.0614·0.5/53 = 0.764730
  it("for a square metre: rolls and sheets by their share, and 0.1 h of work at 25 an hour", () => {
    expect(drawn!.cost!.materialsPerArea).toBeCloseTo(37.347647, 5);
    expect(drawn!.cost!.labourPerArea).toBeCloseTo(2.5, 12);
    expect(drawn!.cost!.perArea).toBeCloseTo(39.847647, 5);
    expect(drawn!.cost!.unpriced).toEqual([]);
  });

  // 21·9 + 2·40 + 449.37375 + 565.33333 + 699.6 + 40.5307 + 53·2.5
  it("in all: whole rolls and sheets", () => {
    expect(drawn!.cost!.inAll).toBeCloseTo(2156.337785, 5);
  });

  it("the price for a thickness goes before the one for any", () => {
    expect(goods(deeper!, "mineral wool slab").costPerArea).toBeCloseTo(0.85 * 1.05 * 13.5, 10);
    expect(goods(deeper!, "softwood timber", "framing").costPerArea).toBeCloseTo(4.6 / 0.3, 10);
  });

  it("what has no price is named, and the difference is known where it is the same in both", () => {
    const without = WALL.replace(/ {2}- \{ material: softwood timber, per: m3.*\n/, "");
    const [base, thicker, , outside] = rowsOf(without);
    expect(base!.cost!.unpriced).toEqual(["softwood timber"]);
    expect(base!.cost!.materialsPerArea).toBeCloseTo(37.347647 - 13.2, 5);
    expect(thicker!.againstBase!.extraCost).toBeCloseTo(0.85 * 1.05 * 4 + 1.4 / 0.3, 5); // boarding cancels
    expect(outside!.againstBase!.extraCost).toBeCloseTo(15, 5); // 0.06 × 250
  });

  it("the difference is not known where goods without a price differ", () => {
    const without = WALL.replace(/ {2}- \{ material: wood fibre.*\n/, "");
    const outside = rowsOf(without)[3]!;
    expect(outside.cost!.unpriced).toEqual(["wood fibre insulation board"]);
    expect([outside.againstBase!.extraCost, outside.againstBase!.yearsToPay]).toEqual([null, null]);
  });

  it("without any price there is no cost, and everything else is compared", () => {
    const bare = WALL.replace(/currency[\s\S]*?indoor/, "indoor");
    const study = comparisonOf(bare);
    expect(study.buildUps[0]!.rows.map(({ cost }) => cost)).toEqual([null, null, null, null, null]);
    expect(study.buildUps[0]!.rows[1]!.againstBase!.heat).toBeCloseTo(deeper!.againstBase!.heat!, 10);
    expect(study.assumptions.join(" ")).toContain("No prices are given");
    expect(study.currency).toBe("");
  });

  it("a price that no build-up uses is told", () => {
    expect(comparisonOf(WALL).notes).toEqual([]);
    expect(comparisonOf(changed("material: tape", "material: tpae", WALL)).notes).toEqual([
      "No build-up uses tpae, which has a price: check the spelling of the name.",
    ]);
  });

  it("a price for any thickness that is used for several is told, but not one for the volume", () => {
    const text = changed(", thickness: 140 mm, per: m2, price: 9.50", ", per: m2, price: 9.50", WALL);
    const again = text.replace(
      "{ set: mineral wool slab, thickness: 200 mm }",
      "{ set: mineral wool slab, thickness: 100 mm }",
    );
    expect(comparisonOf(text).notes).toEqual([]);
    expect(comparisonOf(again).notes).toEqual([
      "The price of mineral wool slab per m2 is used for 100 mm and 140 mm alike: state its thickness.",
    ]);
  });
});

describe("heat and money against the build-up as drawn", () => {
  it("heat over the year is U times 24 hours times the days times the difference to 20 °C, in kWh/m²", () => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const { temperature } = projectOf(WALL).climate;
    const hours = temperature.reduce((sum, outside, month) => sum + Math.max(0, 20 - outside) * 24 * days[month]!, 0);
    expect(drawn!.heatPerYear).toBeCloseTo((drawn!.transmittance! * hours) / 1000, 8);
    expect(drawn!.heatPerYearInAll).toBeCloseTo(53 * drawn!.heatPerYear!, 8);
  });

  it("saved heat, for 60 mm more and for each metre of it; money at 0.10 for a kilowatt hour", () => {
    const saved = drawn!.heatPerYear! - deeper!.heatPerYear!;
    expect(saved).toBeGreaterThan(5);
    expect(deeper!.againstBase).toMatchObject({
      thickness: expect.closeTo(0.06, 12),
      floorArea: expect.closeTo(1.44, 10), // 0.06 × 24
      heat: expect.closeTo(saved, 10),
      heatInAll: expect.closeTo(53 * saved, 8),
      heatPerThickness: expect.closeTo(saved / 0.06, 8),
      money: expect.closeTo(0.1 * saved, 10),
      moneyPerThickness: expect.closeTo((0.1 * saved) / 0.06, 8),
    });
  });

  it("years until it pays: extra cost over the money saved in a year", () => {
    const { extraCost, money, yearsToPay } = deeper!.againstBase!;
    expect(extraCost).toBeCloseTo(0.85 * 1.05 * 4 + 1.4 / 0.3, 5); // wool and studs
    expect(yearsToPay).toBeCloseTo(extraCost! / money!, 10);
  });

  it("no years without a heat price, nor where nothing is saved; none at all where it costs less", () => {
    const withoutPrice = rowsOf(changed("heat price: 0.10 /kWh\n", "", WALL));
    expect(withoutPrice[1]!.againstBase).toMatchObject({ money: null, moneyInAll: null, yearsToPay: null });
    expect(none!.againstBase!.heat).toBeCloseTo(0, 10);
    expect(none!.againstBase!.yearsToPay).toBeNull();
    const dearer = rowsOf(changed("price: 9.50", "price: 95", WALL));
    expect(dearer[1]!.againstBase!.extraCost).toBeLessThan(0);
    expect(dearer[1]!.againstBase!.yearsToPay).toBe(0);
  });

  it("floor under the wall is its thickness times its length; a roof has none unless it is so steep that it is a wall", () => {
    expect(drawn!.thickness).toBeCloseTo(0.1975, 12);
    expect(drawn!.floorArea).toBeCloseTo(4.74, 10);
    const roof = WALL.replace("element: wall", "element: pitched roof");
    expect(rowsOf(roof)[0]!.floorArea).toBeNull();
    const steep = WALL.replace("element: wall", "element: pitched roof\n    pitch: 70 deg");
    expect(rowsOf(steep)[0]!.floorArea).toBeCloseTo(4.74, 10);
  });
});

describe("a variant is assessed as any build-up", () => {
  it("as if the file had been written so", () => {
    const written = changed("thickness: 140 mm, framing", "thickness: 200 mm, framing", WALL).replace(
      / {4}variants:[\s\S]*/,
      "",
    );
    const [result] = assessProject(projectOf(written)).buildUps;
    expect(deeper).toMatchObject({
      judgement: result!.judgement.word,
      verdict: result!.moisture!.verdict,
      peak: result!.moisture!.peak,
      transmittance: result!.heat!.transmittance,
      clearTransmittance: result!.heat!.clearTransmittance,
      temperatureFactor: result!.heat!.temperatureFactor,
      requiredTemperatureFactor: result!.heat!.requiredTemperatureFactor,
    });
  });

  it("with how much it rests on its vapour layer, and what comes of it opened and left out", () => {
    const project = projectOf(WALL);
    const result = assessBuildUp(project.buildUps[0]!, surroundingsOf(project));
    const run = (name: string) => result.sensitivity.find((one) => one.name === name)!;
    expect(drawn!.vapourLayer).toEqual({ name: "polyethylene sheet 0.15 mm", sd: 50 });
    expect(drawn!.dependence).toBe("forgives gaps");
    expect(drawn!.whenOpened!.peak).toBe(run("vapour layer ten times more open").peak.amount);
    expect(drawn!.whenLeftOut!.verdict).toBe(run("no vapour layer").verdict);
    expect(woodFibre!.dependence).toBe("forgives gaps");
    expect([none!.vapourLayer, none!.dependence]).toEqual([null, null]);
  });

  it("a board on the cold side is no vapour layer", () => {
    const sheathing = "      - { material: oriented strand board, thickness: 18 mm }\n      - { air: 25 mm";
    const [withSheet, , , , without] = rowsOf(changed("      - { air: 25 mm", sheathing, WALL));
    expect(withSheet!.vapourLayer!.name).toBe("polyethylene sheet 0.15 mm");
    expect(without!.vapourLayer).toBeNull();
  });

  it("without a vapour layer nothing is told of one opened or left out", () => {
    const sheathing = "      - { material: oriented strand board, thickness: 18 mm }\n      - { air: 25 mm";
    const without = rowsOf(changed("      - { air: 25 mm", sheathing, WALL))[4];
    expect(without).toMatchObject({ vapourLayer: null, dependence: null, whenOpened: null, whenLeftOut: null });
  });

  it("beyond the method it has no figures, and no difference in heat", () => {
    const text = changed(
      "{ remove: polyethylene sheet 0.15 mm }",
      "{ set: mineral wool slab, framing: rails }",
      WALL,
    ).replace(
      "      studs:",
      "      rails: { material: { name: steel, conductivity: 50 W/(m K), vapour resistance factor: 1000000, kind: metal }, width: 2 mm, spacing: 600 mm }\n      studs:",
    );
    const steel = rowsOf(text)[4]!;
    expect(steel.judgement).toBe("beyond this method");
    expect(steel.againstBase!.yearsToPay).toBeNull();
    expect(JSON.stringify(steel)).not.toMatch(/NaN|Infinity/);
  });

  it("only build-ups with variants are compared, and a project without any has no comparison", () => {
    const plain = projectOf(WALL.replace(/ {4}variants:[\s\S]*/, ""));
    expect(compareVariants(plain)).toBeNull();
    expect(assessProject(plain)).not.toHaveProperty("comparison");
    expect(assessProject(projectOf(WALL)).comparison).toEqual(comparisonOf(WALL));
  });
});

describe("one sentence a variant", () => {
  it("tells U, thickness, judgement, heat, cost and when it pays", () => {
    expect(deeper!.sentence).toBe(
      "U falls from 0.31 to 0.22 W/(m²·K) and it is 60 mm thicker; the judgement stays sound; it saves 6.9 kWh/m² of heat a year, 1.2 for each 10 mm; it costs £8.24/m² more, paid back not before 12 years.",
    );
  });

  it("tells another vapour layer, and what the judgement turns to", () => {
    expect(none!.sentence).toMatch(
      /^U stays 0\.31 W\/\(m²·K\) and it is no thicker; it has no vapour layer on the warm side; the judgement (stays sound|changes from sound to [a-z ]+); it costs £\d+\.\d\d\/m² less\.$/,
    );
  });

  it("money: a sign stands close, a word apart, cents below a hundred", () => {
    expect(moneyInWords(-12.5, "£")).toBe("£12.50");
    expect(moneyInWords(1234.5, "EUR")).toBe("EUR 1235");
    expect(moneyInWords(3, "")).toBe("3.00");
  });
});
