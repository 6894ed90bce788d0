import { describe, expect, it, test } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import {
  edgeInsulationTransmittance,
  slabTransmittance,
  suspendedFloorTransmittance,
  voidTransmittances,
} from "../../packages/core/src/heat/ground-floor.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { EdgeInsulation, Ground, UnderfloorVoid } from "../../packages/core/src/project/types.ts";
import {
  groundMonths,
  ventilatedVoidMonths,
  yearlyMean,
} from "../../packages/core/src/surroundings/far-side-months.ts";
import { buildUp, framing, resisting } from "./build-up-by-hand.ts";
import { halfUnit, printedNumbers, printedTable } from "./printed-table.ts";

const slab: Ground = {
  area: 80,
  perimeter: 36,
  wallThickness: 0.3,
  soil: "sand or gravel",
  edgeInsulation: null,
  membrane: true,
};
const edge = (extent: number, upright: boolean): EdgeInsulation => ({
  resistance: 1.5,
  thickness: 0.05,
  extent,
  upright,
});
const crawlSpace: UnderfloorVoid = {
  area: 80,
  perimeter: 36,
  wallThickness: 0.3,
  soil: "clay or silt",
  height: 0.3,
  wallTransmittance: 1.5,
  openings: 0.0015,
  windSpeed: 4,
  shelter: "average",
  groundInsulation: 0,
};
const named = (working: { symbol: string; value: number }[], symbol: string) =>
  working.find((value) => value.symbol === symbol)!.value;

describe("Approved Document L1, 2002 edition, Appendix C (from memory): solid ground floors on clay", () => {
  const resistances = [0, 0.5, 1, 1.5, 2, 2.5];
  const columns = ["R0", "R0.5", "R1.0", "R1.5", "R2.0", "R2.5"] as const;
  const rows = printedNumbers("slab-on-clay", "perimeter_by_area_per_m", ...columns);

  test.each(rows)(
    "perimeter over area $perimeter_by_area_per_m /m: six resistances, to the printed second decimal",
    (row) => {
      for (const [at, column] of columns.entries()) {
        const ground: Ground = {
          ...slab,
          area: 100,
          perimeter: 100 * row.perimeter_by_area_per_m,
          soil: "clay or silt",
        };
        const { transmittance } = slabTransmittance(ground, resistances[at]!);
        expect(Math.abs(transmittance - row[column]), column).toBeLessThanOrEqual(halfUnit(2));
      }
    },
  );
});

describe("Approved Document L1, 2002 edition, Appendix C (from memory): edge insulation", () => {
  const columns = ["R0.5", "R1.0", "R1.5", "R2.0"] as const;
  const rows = printedTable("edge-insulation", "direction", "extent_m", ...columns);

  // The table does not print the insulation's thickness: λ 0.035 is taken for it.
  test.each(rows)("$direction, $extent_m m: four resistances, to the printed second decimal", (row) => {
    for (const [at, column] of columns.entries()) {
      const resistance = 0.5 * (at + 1);
      const insulation = {
        resistance,
        thickness: 0.035 * resistance,
        extent: Number(row.extent_m),
        upright: row.direction === "upright",
      };
      const factor = edgeInsulationTransmittance(insulation, 0.615, 1.5);
      expect(Math.abs(factor - Number(row[column])), column).toBeLessThanOrEqual(halfUnit(2));
    }
  });
});

describe("worked: slab of 10 × 8 m on sand, exposed perimeter 36 m (ISO 13370:2017; four figures)", () => {
  it("B is 4.444 m and dt 0.72 m without insulation", () => {
    const { working } = slabTransmittance(slab, 0);
    expect(named(working, "B")).toBeCloseTo(4.444, 3);
    expect(named(working, "dt")).toBeCloseTo(0.72, 12);
  });

  test.each([
    [0, 0.8214],
    [1, 0.4349],
    [2.5, 0.258],
  ])("Rf %d: U %d", (resistance, expected) => {
    expect(slabTransmittance(slab, resistance).transmittance).toBeCloseTo(expected, 4);
  });

  test.each([
    ["level, 1.0 m wide", edge(1, false), -0.401, 0.641],
    ["upright, 0.6 m deep", edge(0.6, true), -0.4443, 0.6215],
  ] as const)("edge insulation %s", (_, insulation, factor, transmittance) => {
    const floor = slabTransmittance({ ...slab, edgeInsulation: insulation }, 0);
    expect(named(floor.working, "Ψ")).toBeCloseTo(factor, 4);
    expect(floor.transmittance).toBeCloseTo(transmittance, 4);
  });

  it("by way of the layers: Rf is their resistance without the surfaces", () => {
    const floor = buildUp([resisting(0.4), resisting(0.6)], { element: "floor", faces: "ground", ground: slab });
    expect(calculateHeat(floor, "downward").transmittance).toBeCloseTo(0.4349, 4);
  });
});

describe("by hand: a studio slab of 6 × 4 m with all sides exposed (B = 24/10 = 2.4 m, πB = 7.5398)", () => {
  const studio: Ground = { ...slab, area: 24, perimeter: 20, wallThickness: 0.25, soil: "clay or silt" };

  it("bare, on clay: dt 0.565, U0 0.9859", () => {
    // dt = 0.25 + 1.5·(0.17 + 0 + 0.04) = 0.565 < B
    // U0 = 2·1.5/(7.5398 + 0.565)·ln(7.5398/0.565 + 1) = 0.370151·ln(14.34483) = 0.370151·2.663389
    expect(slabTransmittance(studio, 0).transmittance).toBeCloseTo(0.370151 * 2.663389, 4);
  });

  it("Rf 2.0, on clay: dt 3.565 is over B, U0 0.3218", () => {
    // dt = 0.25 + 1.5·2.21 = 3.565; U0 = 1.5/(0.457·2.4 + 3.565) = 1.5/4.6618
    expect(slabTransmittance(studio, 2).transmittance).toBeCloseTo(1.5 / 4.6618, 4);
  });

  it("Rf 0.3, on rock, wall 0.2 m: dt 1.985, U0 1.1526", () => {
    // dt = 0.2 + 3.5·0.51 = 1.985; U0 = 7/(7.5398 + 1.985)·ln(7.5398/1.985 + 1) = 0.734924·ln(4.798388) = 0.734924·1.568280
    const onRock = { ...studio, soil: "rock", wallThickness: 0.2 } as const;
    expect(slabTransmittance(onRock, 0.3).transmittance).toBeCloseTo(0.734924 * 1.56828, 4);
  });

  it("Rf 1.0, ground unknown (λ 2.0): dt 2.67 is over B, U0 0.5309", () => {
    // dt = 0.25 + 2·1.21 = 2.67; U0 = 2/(1.0968 + 2.67) = 2/3.7668
    expect(slabTransmittance({ ...studio, soil: "unknown" }, 1).transmittance).toBeCloseTo(2 / 3.7668, 4);
  });

  it("bare, with level edge insulation R 1.0, 40 mm, 0.6 m wide", () => {
    // d′ = 1.5·(1.0 − 0.04/1.5) = 1.46; Ψ = −(1.5/π)·[ln(0.6/0.565 + 1) − ln(0.6/2.025 + 1)]
    //   = −0.477465·[0.723650 − 0.259511] = −0.221610; U = 0.985856 + 2·(−0.221610)/2.4 = 0.801181
    const insulated = { ...studio, edgeInsulation: { resistance: 1, thickness: 0.04, extent: 0.6, upright: false } };
    const floor = slabTransmittance(insulated, 0);
    expect(named(floor.working, "Ψ")).toBeCloseTo(-0.22161, 4);
    expect(floor.transmittance).toBeCloseTo(0.801181, 4);
  });

  it("the two formulas of U0 meet where dt is B, to the standard's own 1 %", () => {
    const atJoin = (2.4 - 0.25) / 1.5 - 0.21;
    const below = slabTransmittance(studio, atJoin - 1e-9).transmittance;
    const above = slabTransmittance(studio, atJoin + 1e-9).transmittance;
    expect(Math.abs(below / above - 1)).toBeLessThan(0.01);
  });
});

describe("worked: suspended floor, 10 × 8 m, on clay (ISO 13370:2017; four figures)", () => {
  it("Ug 0.6515, Ux 0.3004", () => {
    const ways = voidTransmittances(crawlSpace, 0.2);
    expect(ways.ground).toBeCloseTo(0.6515, 4);
    expect(ways.outdoors).toBeCloseTo(0.3004, 4);
  });

  test.each([
    [0.2, 0.6287],
    [2.5, 0.257],
  ])("Rf %d: U %d", (resistance, expected) => {
    expect(suspendedFloorTransmittance(crawlSpace, resistance).transmittance).toBeCloseTo(expected, 4);
  });

  it("by way of the layers, and with joists by the combined method", () => {
    const plain = buildUp([resisting(2.5)], { element: "floor", faces: "void", void: crawlSpace });
    expect(calculateHeat(plain, "downward").transmittance).toBeCloseTo(0.257, 4);
    // R 2.5 with 0.8 in 12 %: upper 1/(0.88/2.84 + 0.12/1.14) = 2.40896, lower 0.34 + 1/(0.88/2.5 + 0.12/0.8) = 2.33203
    // mean 2.37050; 1/U = 2.37050 + 1/(0.651493 + 0.30038) = 2.37050 + 1.05056
    const joists = buildUp([resisting(2.5, framing("joists", 0.12, 0.1 / 0.8))], {
      element: "floor",
      faces: "void",
      void: crawlSpace,
    });
    expect(calculateHeat(joists, "downward").transmittance).toBeCloseTo(1 / (2.3705 + 1.05056), 4);
  });
});

describe("by hand: a raised studio floor, 6 × 4 m, exposed to wind, ground insulated", () => {
  const studio: UnderfloorVoid = {
    ...crawlSpace,
    area: 24,
    perimeter: 20,
    height: 0.45,
    wallTransmittance: 0.8,
    openings: 0.003,
    windSpeed: 3,
    shelter: "exposed",
    groundInsulation: 0.5,
  };

  it("Ug 0.6318, Ux 0.8438, Uf 0.2994, U 0.2489", () => {
    // dg = 0.3 + 1.5·(0.17 + 0.5 + 0.04) = 1.365; Ug = 3/(7.5398 + 1.365)·ln(7.5398/1.365 + 1) = 0.336897·1.875436
    // Ux = 2·0.45·0.8/2.4 + 1450·0.003·3·0.10/2.4 = 0.3 + 0.54375; Uf = 1/(0.17 + 3 + 0.17)
    const ways = voidTransmittances(studio, 3);
    expect(ways.ground).toBeCloseTo(0.336897 * 1.875436, 4);
    expect(ways.outdoors).toBeCloseTo(0.84375, 12);
    expect(ways.floor).toBeCloseTo(1 / 3.34, 12);
    // 1/U = 3.34 + 1/(0.631829 + 0.84375) = 4.01770
    expect(suspendedFloorTransmittance(studio, 3).transmittance).toBeCloseTo(1 / 4.0177, 4);
  });

  it("air of the void in January: 7.884 °C", () => {
    // (0.299401·20 + 0.631829·10 + 0.84375·2)/(0.299401 + 0.631829 + 0.84375) = 13.99381/1.77498
    const outdoors = {
      temperature: [2, 10, 10, 10, 10, 10, 18, 10, 10, 10, 10, 10],
      vapourPressure: new Array(12).fill(600),
    };
    const inside = { temperature: new Array(12).fill(20), vapourPressure: new Array(12).fill(1000) };
    expect(yearlyMean(outdoors.temperature)).toBeCloseTo(10, 12);
    const air = ventilatedVoidMonths(studio, 3, inside, outdoors);
    expect(air.temperature[0]).toBeCloseTo(13.99381 / 1.77498, 4);
    expect(air.vapourPressure).toEqual(new Array(12).fill(600));
  });

  it("infinite ventilation: the void is as outdoors, and only the floor is left in U", () => {
    const windy = { ...studio, openings: 1e6 };
    expect(suspendedFloorTransmittance(windy, 3).transmittance).toBeCloseTo(1 / 3.34, 6);
    const outdoors = { temperature: [-3, ...new Array(11).fill(9)], vapourPressure: new Array(12).fill(2000) };
    const inside = { temperature: new Array(12).fill(20), vapourPressure: new Array(12).fill(1000) };
    const air = ventilatedVoidMonths(windy, 3, inside, outdoors);
    expect(air.temperature[0]).toBeCloseTo(-3, 5);
    // Vapour at most saturation: 2000 Pa cannot be at −3 °C.
    expect(air.vapourPressure[0]).toBeCloseTo(saturationPressure(air.temperature[0]!), 9);
  });

  it("no ventilation and no height: only the ground takes heat", () => {
    const closed = { ...studio, openings: 0, height: 0 };
    expect(suspendedFloorTransmittance(closed, 3).transmittance).toBeCloseTo(1 / (3.34 + 1 / 0.631829), 5);
  });
});

describe("the ground under a slab", () => {
  it("is at the year's mean, by days, and saturated", () => {
    // (31·0 + 28·12 + 306·12)/365 = 334·12/365 = 10.98082
    const months = groundMonths({
      temperature: [0, ...new Array(11).fill(12)],
      vapourPressure: new Array(12).fill(500),
    });
    expect(months.temperature[5]).toBeCloseTo(10.98082, 5);
    expect(months.vapourPressure[5]).toBeCloseTo(saturationPressure(10.98082), 3);
  });
});
