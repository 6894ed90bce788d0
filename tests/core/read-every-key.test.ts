import { readFileSync } from "node:fs";
import { join } from "node:path";
import { projectJsonSchema } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { EVERY_KEY, FILES_OF_EVERY_KEY, projectOf } from "./project-texts.ts";

describe("a project with every key", () => {
  const project = projectOf(EVERY_KEY, FILES_OF_EVERY_KEY);
  const [wall, roof, slab, raised, store] = project.buildUps;

  it("tells the words of the first page as they stand", () => {
    expect(project.query).toEqual({
      question: "May the walls be closed as drawn?", to: "Building control", site: "Alder Row",
      preparedBy: "the owner", date: "2024-05-01", drawings: ["101", "AR-7/02"],
    }); // biome-ignore format: one page
  });

  it("tells the year, the height and the margin", () => {
    expect(project.severity).toEqual({ name: "+1 K", offset: 1 });
    expect(project.altitudeCorrection).toEqual({ altitude: 340, lapseRate: 0.006 });
    expect(project.humidityMargin).toBe(1.1);
    expect(project.climatesForPlace).toEqual(["oslo", "melbourne-florida"]);
  });

  it("tells prices, waste as a share", () => {
    const none = { thickness: null, covers: null, width: null, lap: null };
    expect(project.prices).toEqual({
      currency: "£", hourRate: 25, heatPricePerKilowattHour: 0.12,
      entries: [
        { ...none, material: "mineral wool slab", per: "m2", price: 4.5, waste: 0.1, hours: 0.1 },
        { ...none, material: "breather membrane", per: "roll", price: 60, covers: 50, waste: 0, hours: null },
      ],
    }); // biome-ignore format: one list
  });

  it("tells every rule of its rooms in SI", () => {
    const indoor = project.rooms.get("indoor")!;
    expect(indoor.temperature).toEqual({ kind: "heated", setPoint: 20, daysPerWeek: 3, otherwise: 8 });
    expect(indoor.cooling).toBe(26);
    expect(indoor.humidityWhenCooled).toBe(0.55);
    expect(indoor.humidity).toMatchObject({ kind: "balance", volume: 90 });
    if (indoor.humidity.kind !== "balance") throw new Error("no balance");
    expect(indoor.humidity.production).toBeCloseTo(6 / 86_400, 12);
    expect(indoor.humidity.airChanges).toBeCloseTo(0.6 / 3600, 12);
    expect(project.rooms.get("kiln room")).toMatchObject({
      temperature: { kind: "by outdoor temperature" },
      humidity: { kind: "by outdoor temperature", level: "high" },
      burstsOfSteam: true,
    });
    const damp = project.rooms.get("damp room")!;
    expect(damp.temperature).toEqual({ kind: "held", months: [18, 18, 18, 18, 19, 20, 21, 21, 20, 19, 18, 18] });
    expect(damp).toMatchObject({ pool: true, humidity: { kind: "months", relativeHumidity: Array(12).fill(0.6) } });
  });

  it("tells everything of the wall", () => {
    expect(wall).toMatchObject({
      area: 24, openings: 3, length: 8, wettedByRain: "yes", unheatedSkin: true, twoSeasonCheck: true, variableResistance: true,
      junctionFactors: [{ name: "window reveal", factor: 0.75 }],
      leak: { length: 1, width: 0.001, pressure: 2 },
      trappedWater: [
        { layer: 2, amount: 1, reading: null, startMonth: 9 },
        { layer: 6, amount: null, reading: 0.28, startMonth: 9 },
        { layer: 2, amount: 1, reading: null, startMonth: 9 },
      ],
    }); // biome-ignore format: one wall
    expect(wall!.layers[1]).toMatchObject({ purpose: "vapour layer", gaps: { share: 0.001, laps: null } });
    expect(wall!.layers[2]).toMatchObject({
      fit: "gaps",
      fasteners: { perArea: 2.5, diameter: 0.004, conductivity: 17, recess: 0.02 },
    });
    expect(wall!.layers[3]).toMatchObject({ gaps: { share: 0.002 / 1.2, laps: { width: 0.002, spacing: 1.2 } } });
    expect(wall!.layers[5]).toMatchObject({
      ventilationArea: 0.002,
      open: "both ends",
      resistance: 0.1,
      emissivity: 0.9,
    });
  });

  it("tells everything of roofs, floors and the space next door", () => {
    expect(roof).toMatchObject({ pitch: 5, clearSky: true, roofSpace: "felt or boards" });
    expect(slab!.ground).toEqual({
      area: 80, perimeter: 36, wallThickness: 0.4, soil: "sand or gravel", membrane: true,
      edgeInsulation: { resistance: 1.5, thickness: 0.05, extent: 0.6, upright: true },
    }); // biome-ignore format: one slab
    expect(raised!.void).toEqual({
      area: 80, perimeter: 36, wallThickness: 0.4, soil: "rock", height: 0.4, wallTransmittance: 1.7, openings: 0.0015,
      windSpeed: 5, shelter: "exposed", groundInsulation: 0.5,
    }); // biome-ignore format: one void
    expect(raised!.voidClimate).toEqual({ temperature: Array(12).fill(8), relativeHumidity: Array(12).fill(0.9) });
    expect(store!.space).toEqual({ area: 24, external: [{ area: 30, transmittance: 0.5 }], airChanges: 1, volume: 60 });
  });

  it("notes the odd boarding of 700 mm, acknowledged by the file", () => {
    expect(project.oddities.filter(({ code }) => code.startsWith("odd"))).toEqual([
      {
        code: "odd-thickness",
        path: "build-ups[0].layers[6].thickness",
        message:
          "build-up 1, Studio wall, layer 7, outer boarding: thickness 700 mm is unusual: " +
          "layers of small buildings are mostly 0.05 to 600 mm thick.",
        accepted: true,
      },
    ]);
    const unaccepted = projectOf(EVERY_KEY.replace("accept: [odd-thickness]\n", ""), FILES_OF_EVERY_KEY);
    expect(unaccepted.oddities.map(({ code, accepted }) => [code, accepted])).toEqual([
      ["without-effect", false],
      ["without-effect", false],
      ["odd-thickness", false],
      ["without-effect", false],
      ["cooling-never-runs", false],
    ]);
  });

  it("notes what changes nothing: resistance and emissivity of well-ventilated air, a margin without classes", () => {
    const place = "build-up 1, Studio wall, layer 6, air layer";
    const why = "changes nothing: well-ventilated air counts as outdoor air";
    expect(project.oddities.filter(({ code }) => code === "without-effect")).toEqual([
      { code: "without-effect", path: "build-ups[0].layers[5].resistance", message: `${place}: resistance ${why}.`, accepted: false },
      { code: "without-effect", path: "build-ups[0].layers[5].emissivity", message: `${place}: emissivity ${why}.`, accepted: false },
      { code: "without-effect", path: "humidity margin", message: expect.stringContaining("no room has one"), accepted: false },
    ]); // biome-ignore format: a note a line
  });

  it("notes that the cooling never runs: no month is over 26 °C at 340 m, 1 K warmer than the mean year", () => {
    expect(project.oddities.filter(({ code }) => code === "cooling-never-runs")).toMatchObject([
      { path: "indoor", message: expect.stringContaining("no month at de-bilt is warmer than"), accepted: false },
    ]);
  });

  it("notes what is accepted and not there, and what is likely meant", () => {
    const notesOf = (codes: string) =>
      projectOf(EVERY_KEY.replace("[odd-thickness]", codes), FILES_OF_EVERY_KEY).oddities.filter(
        ({ code }) => code === "accepts-nothing",
      );
    expect(notesOf("[odd-thicknes, odd-area]").map(({ path, message }) => [path, message])).toEqual([
      ["accept[0]", "accept names odd-thicknes, but this file has no such note. Perhaps you mean odd-thickness."],
      ["accept[1]", "accept names odd-area, but this file has no such note. Remove it."],
    ]);
    expect(notesOf("[odd-thickness, cooling-never-runs]")).toEqual([]);
  });
});

describe("what the file leaves out", () => {
  const floors = `
project: Store
climate: oslo
indoor: { temperature: 18 °C, humidity: 50 % }
build-ups:
  - { name: Slab, element: floor, faces: ground, ground: { area: 80 m2, perimeter: 36 m }, layers: [ { material: concrete 2200, thickness: 100 mm } ] }
  - { name: Raised, element: floor, faces: void, void: { area: 80 m2, perimeter: 36 m }, layers: [ { material: plywood, thickness: 18 mm } ] }
`;
  const project = projectOf(floors);

  it("of ground and void is that of ISO 13370 (method, section 3)", () => {
    expect(project.buildUps[0]!.ground).toEqual({
      area: 80, perimeter: 36, wallThickness: 0.3, soil: "unknown", edgeInsulation: null, membrane: false,
    }); // biome-ignore format: one slab
    expect(project.buildUps[1]!.void).toEqual({
      area: 80, perimeter: 36, wallThickness: 0.3, soil: "unknown", height: 0.3, wallTransmittance: 1.5,
      openings: 0.0015, windSpeed: 4, shelter: "average", groundInsulation: 0,
    }); // biome-ignore format: one void
  });

  it("of everything optional is null, false or empty, never invented", () => {
    expect(project).toMatchObject({
      reference: null,
      query: null,
      altitudeCorrection: null,
      humidityMargin: 1,
      prices: null,
      accept: [],
    });
    expect(project.buildUps[0]).toMatchObject({
      target: null, pitch: null, clearSky: false, void: null, voidClimate: null, space: null, roofSpace: null, area: null,
      openings: null, length: null, wettedByRain: null, rainOfHeatingSeason: null, unheatedSkin: false, junctionFactors: [], oddEnds: null, twoSeasonCheck: false,
      leak: null, trappedWater: [], variableResistance: false, variants: [],
    }); // biome-ignore format: all that is left out
  });
});

describe("the JSON Schema of a project file", () => {
  const path = join(import.meta.dirname, "../../packages/core/project.schema.json");

  it("is committed as the reader has it", () => {
    expect(JSON.parse(readFileSync(path, "utf8"))).toEqual(JSON.parse(JSON.stringify(projectJsonSchema())));
  });

  it("gives every quantity its form and an example that has it", () => {
    const faults: string[] = [];
    let quantities = 0;
    const visit = (here: unknown): void => {
      if (typeof here !== "object" || here === null) return;
      const { pattern, examples } = here as { pattern?: unknown; examples?: unknown };
      if (typeof pattern === "string" && Array.isArray(examples)) {
        quantities += 1;
        if (!examples.every((example) => new RegExp(pattern).test(String(example)))) faults.push(JSON.stringify(here));
      }
      for (const value of Object.values(here)) visit(value);
    };
    visit(projectJsonSchema());
    expect(faults).toEqual([]);
    expect(quantities).toBeGreaterThan(40);
  });
});
