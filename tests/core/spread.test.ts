import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { assessBuildUp, judgeBuildUp } from "../../packages/core/src/assess-build-up.ts";
import type { BuildUp, Room } from "../../packages/core/src/project/types.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { latinHypercube, type SampleTable } from "../../packages/core/src/studies/spread/latin-hypercube.ts";
import { JUDGEMENTS, spreadQuestion } from "../../packages/core/src/studies/spread/spread-question.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";
import { type Surroundings, surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { VERDICTS } from "../../packages/core/src/year/verdicts.ts";
import { howMany } from "../how-many.ts";
import { situations } from "../laws/random-build-ups.ts";
import { caseFiles } from "../practice/cases.ts";

const demo = readProjectOrThrow(readFileSync(new URL("../../shared/alder-row-pottery.yaml", import.meta.url), "utf8"));
const surroundings = surroundingsOf(demo);
const named = (name: string): BuildUp => demo.buildUps.find((buildUp) => buildUp.name === name)!;
const wall = named("Studio wall");

/** Samples given by hand, one list of quantiles each. */
const table = (rows: readonly number[][]): SampleTable => ({
  count: rows.length,
  dimensions: rows[0]!.length,
  values: Float64Array.from(rows.flat()),
});

const ROOM: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "class", class: 3 },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};

describe("inputs of the spread", () => {
  it("of the demo wall: each material once, sheets by sd, studs, gaps in the vapour layer, the room's vapour", () => {
    const { inputs } = spreadQuestion(wall, surroundings);
    expect(inputs.map(({ description }) => [description.name, description.kind])).toEqual([
      ["conductivity of gypsum plasterboard", "conductivity"],
      ["vapour resistance of gypsum plasterboard", "vapour resistance factor"],
      ["vapour resistance of polyethylene sheet 0.15 mm", "sd"],
      ["conductivity of mineral wool slab", "conductivity"],
      ["vapour resistance of mineral wool slab", "vapour resistance factor"],
      ["conductivity of softwood timber", "conductivity"],
      ["vapour resistance of softwood timber", "vapour resistance factor"],
      ["conductivity of oriented strand board", "conductivity"],
      ["vapour resistance of oriented strand board", "vapour resistance factor"],
      ["vapour resistance of breather membrane", "sd"],
      ["share of studs", "framing share"],
      ["gaps in polyethylene sheet 0.15 mm", "gap share"],
      ["vapour excess of the room", "indoor humidity"],
    ]);
  });

  describe("of two materials that have one name", () => {
    const project = (middle: string): string => `project: one name
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
${middle}
      - { material: plywood, thickness: 9 mm }
`;
    const board = (name: string, conductivity: number, factor: number, thickness: number): string =>
      `      - { material: { name: ${name}, conductivity: ${conductivity} W/(m K), vapour resistance factor: ${factor} }, thickness: ${thickness} mm }`;
    const questionOf = (middle: string) => {
      const read = readProjectOrThrow(project(middle));
      return spreadQuestion(read.buildUps[0]!, surroundingsOf(read));
    };

    it("each keeps its own values: all inputs as stated give the build-up as drawn", () => {
      const text = `${board("board", 0.13, 30, 60)}\n${board("board", 0.022, 60, 100)}`;
      const { inputs, workOut } = questionOf(text);
      const [buildUp] = readProjectOrThrow(project(text)).buildUps;
      const { heat } = assessBuildUp(buildUp!, surroundingsOf(readProjectOrThrow(project(text))));
      const { transmittance } = workOut(table([inputs.map(() => 0.5)]));
      expect(transmittance[0]).toBeCloseTo(heat!.transmittance, 12);
    });

    it("they are told apart by where they stand", () => {
      const { inputs } = questionOf(`${board("board", 0.13, 30, 60)}\n${board("board", 0.022, 60, 100)}`);
      const names = inputs.map(({ description }) => description.name);
      expect(names).toContain("conductivity of board (layer 2)");
      expect(names).toContain("conductivity of board (layer 3)");
      expect(new Set(names).size).toBe(names.length);
    });

    it("so is one metal in two thicknesses, and gaps in two sheets", () => {
      const sheet = "      - { material: breather membrane, gaps: 1 % }";
      const metal = (thickness: number): string => `      - { material: steel, thickness: ${thickness} mm }`;
      const { inputs } = questionOf([sheet, metal(0.7), sheet, metal(5)].join("\n"));
      const steel = inputs.filter(({ description }) => description.name.startsWith("vapour resistance of steel"));
      expect(steel.map(({ description }) => description.name)).toEqual([
        "vapour resistance of steel (layer 3)",
        "vapour resistance of steel (layer 5)",
      ]);
      expect(steel[0]!.description.stated).toBeGreaterThan(steel[1]!.description.stated);
      const gaps = inputs.filter(({ description }) => description.kind === "gap share");
      expect(gaps.map(({ description }) => description.name)).toEqual([
        "gaps in breather membrane (layer 2)",
        "gaps in breather membrane (layer 4)",
      ]);
    });

    it("the same material in two layers stays one input", () => {
      const { inputs } = questionOf(`${board("board", 0.13, 30, 60)}\n${board("board", 0.13, 30, 100)}`);
      const names = inputs.map(({ description }) => description.name);
      expect(names.filter((name) => name.includes("board") && !name.includes("plasterboard"))).toEqual([
        "conductivity of board",
        "vapour resistance of board",
      ]);
    });
  });

  it("stated values lie within their ends; nothing is more open than still air", () => {
    for (const buildUp of demo.buildUps) {
      for (const { description } of spreadQuestion(buildUp, surroundings).inputs) {
        expect(description.low).toBeLessThanOrEqual(description.stated);
        expect(description.high).toBeGreaterThan(description.stated);
        if (description.kind === "vapour resistance factor") expect(description.low).toBeGreaterThanOrEqual(1);
      }
    }
  });

  it("each moves what it should, the way it should", () => {
    const { inputs, workOut } = spreadQuestion(wall, surroundings);
    const stated: number[] = inputs.map(({ description }) => (description.kind === "gap share" ? 0 : 0.5));
    const place = (name: string): number => inputs.findIndex(({ description }) => description.name === name);
    const change = (name: string, quantile: number) => {
      const outcomes = workOut(table([stated, stated.with(place(name), quantile)]));
      return {
        transmittance: outcomes.transmittance[1]! - outcomes.transmittance[0]!,
        wetness: outcomes.wetness[1]! - outcomes.wetness[0]!,
      };
    };
    expect(change("conductivity of mineral wool slab", 0.9).transmittance).toBeGreaterThan(0.001);
    expect(change("share of studs", 0.9).transmittance).toBeGreaterThan(0.001);
    expect(change("vapour resistance of polyethylene sheet 0.15 mm", 0.9).wetness).toBeLessThan(0);
    expect(change("gaps in polyethylene sheet 0.15 mm", 0.9).wetness).toBeGreaterThan(0);
    expect(change("vapour excess of the room", 0.9).wetness).toBeGreaterThan(0);
    expect(change("vapour resistance of breather membrane", 0.9).wetness).toBeGreaterThan(0);
    expect(change("vapour excess of the room", 0.9).transmittance).toBe(0);
  });
});

describe("limiting cases of the spread", () => {
  it("every input as stated: the very assessment of the build-up, whatever was tried in between", () => {
    for (const buildUp of demo.buildUps) {
      const { inputs, workOut } = spreadQuestion(buildUp, surroundings);
      const unstatedGaps = (kind: string, stated: number): boolean => kind === "gap share" && stated === 0;
      const stated = inputs.map(({ description: { kind, stated } }) => (unstatedGaps(kind, stated) ? 0 : 0.5));
      const outcomes = workOut(table([stated, inputs.map(() => 0.99), inputs.map(() => 0.01), stated]));
      const assessed = assessBuildUp(buildUp, surroundings);
      for (const sample of [0, 3]) {
        expect(VERDICTS[outcomes.verdict[sample]!]).toBe(assessed.moisture!.verdict);
        expect(JUDGEMENTS[outcomes.judgement[sample]!]).toBe(assessed.judgement.word);
        expect(outcomes.transmittance[sample]!).toBeCloseTo(assessed.heat!.transmittance, 12);
        expect(outcomes.peak[sample]!).toBeCloseTo(assessed.moisture!.peak.amount, 10);
        expect(outcomes.carriedOver[sample]!).toBeCloseTo(assessed.moisture!.carriedOver, 10);
      }
    }
  });

  it("no spread: one outcome", () => {
    const still: BuildUp = {
      ...named("Raised floor"),
      room: "store",
      layers: named("Raised floor").layers.map((layer) =>
        layer.type === "air" ? layer : { ...layer, framing: null, material: { ...layer.material, spread: 0 } },
      ),
    };
    const { inputs, workOut } = spreadQuestion(still, surroundings);
    expect(inputs.every(({ description }) => description.low === description.high)).toBe(true);
    const outcomes = workOut(latinHypercube(40, inputs.length, 1));
    for (const column of Object.values(outcomes)) expect(new Set(column).size).toBe(1);
  });

  it("neither the build-up nor its surroundings are touched", () => {
    const before = structuredClone({ wall, sites: surroundings.sites });
    const { inputs, workOut } = spreadQuestion(wall, surroundings);
    workOut(latinHypercube(20, inputs.length, 1));
    expect({ wall, sites: surroundings.sites }).toEqual(before);
  });

  it("worked out in parts and in any order: the same outcomes, bit by bit", () => {
    const { inputs, workOut } = spreadQuestion(wall, surroundings);
    const samples = latinHypercube(60, inputs.length, 4);
    const whole = workOut(samples);
    const other = spreadQuestion(wall, surroundings);
    for (const from of [40, 0, 20]) {
      const values = samples.values.slice(from * samples.dimensions, (from + 20) * samples.dimensions);
      const part = other.workOut({ count: 20, dimensions: samples.dimensions, values });
      expect([...part.wetness]).toEqual([...whole.wetness.slice(from, from + 20)]);
      expect([...part.transmittance]).toEqual([...whole.transmittance.slice(from, from + 20)]);
      expect([...part.judgement]).toEqual([...whole.judgement.slice(from, from + 20)]);
    }
  });
});

const HALF = howMany(600, 2_000);

describe("law of large numbers", () => {
  it(`the two halves of ${2 * HALF} samples agree within four standard errors of their difference`, () => {
    for (const name of ["Studio wall", "Warm flat roof"]) {
      const { inputs, workOut } = spreadQuestion(named(name), surroundings);
      const { judgement, verdict } = workOut(latinHypercube(2 * HALF, inputs.length, 12));
      let decided = 0;
      for (const [column, words] of [[judgement, JUDGEMENTS.length] as const, [verdict, VERDICTS.length] as const]) {
        for (let word = 0; word < words; word += 1) {
          const [first, second] = [column.slice(0, HALF), column.slice(HALF)].map(
            (half) => half.filter((place) => place === word).length / HALF,
          ) as [number, number];
          const both = (first + second) / 2;
          expect(Math.abs(first - second)).toBeLessThanOrEqual(4 * Math.sqrt((2 * both * (1 - both)) / HALF));
          if (both > 0.02 && both < 0.98) decided += 1;
        }
      }
      expect(decided).toBeGreaterThanOrEqual(2);
    }
  });
});

describe("what the judgement depends on", () => {
  const sameWord = (buildUp: BuildUp, around: Surroundings): string => {
    const { word } = judgeBuildUp(buildUp, around).judgement;
    expect(judgeBuildUp(buildUp, around, "what the judgement depends on").judgement.word).toBe(word);
    const refused = judgeBuildUp(buildUp, around, "what may refuse it").judgement.word;
    if (word === "sound with conditions") expect(["sound", word]).toContain(refused);
    else expect(refused).toBe(word);
    return word;
  };

  it("gives the same word as everything a reader is told: demo and cases of guidance", () => {
    const texts = caseFiles().map((file) =>
      readFileSync(new URL(`../practice/cases/${file}`, import.meta.url), "utf8"),
    );
    const projects = [demo, ...texts.map((text) => readProjectOrThrow(text))];
    const words = projects.flatMap((project) =>
      project.buildUps.map((buildUp) => sameWord(buildUp, surroundingsOf(project))),
    );
    expect(new Set(words)).toEqual(new Set(JUDGEMENTS));
  });

  it(`and in ${howMany(40, 300)} random build-ups, with a much colder year, half of them with a gap that leaks air`, () => {
    const words = new Set<string>();
    const turned = { byColderYear: 0, byLeak: 0 };
    fc.assert(
      fc.property(situations, fc.boolean(), ({ buildUp, site }, leaks) => {
        const rooms = new Map([...site.rooms.keys()].map((name) => [name, { ...ROOM, name }]));
        const around = {
          rooms,
          humidityMargin: 1,
          sites: {
            reported: site,
            mean: site,
            colder: muchColder(site),
            warmer: site,
            wetter: site,
            heatedDaily: site,
          },
        };
        const leaking = leaks ? { ...buildUp, leak: { length: 1, width: 0.001, pressure: 2 } } : buildUp;
        const word = sameWord(leaking, around);
        words.add(word);
        const inSameYear = judgeBuildUp(leaking, { ...around, sites: { ...around.sites, colder: site } });
        if (inSameYear.judgement.word !== word) turned.byColderYear += 1;
        if (leaks && judgeBuildUp(buildUp, around).judgement.word !== word) turned.byLeak += 1;
      }),
      { numRuns: howMany(40, 300), seed: 2, endOnFailure: true },
    );
    expect(words.size).toBeGreaterThanOrEqual(3);
    expect(turned.byColderYear).toBeGreaterThan(0);
    expect(turned.byLeak).toBeGreaterThan(0);
  });
});

/** The same outdoors 8 K colder, its vapour at most saturation; rooms as they are. */
function muchColder(site: Site): Site {
  const temperature = site.outdoor.temperature.map((value) => value - 8);
  const vapourPressure = site.outdoor.vapourPressure.map((value, month) =>
    Math.min(value, saturationPressure(temperature[month]!)),
  );
  return { ...site, outdoor: { temperature, vapourPressure } };
}
