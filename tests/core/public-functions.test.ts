import { readFileSync } from "node:fs";
import * as core from "@warmside/core";
import * as field from "@warmside/core/field";
import * as formulas from "@warmside/core/formulas";
import { describe, expect, it } from "vitest";
import { wholeZeros, zeros } from "../../packages/core/src/vapour/number-lists.ts";

/**
 * Every public function of `packages/core/api.md`, called as somebody's program may call it by mistake: each argument in
 * turn is of the wrong kind, no number, infinite or far out of range. It refuses with a RangeError or TypeError that
 * says what was wrong, or answers with finite numbers; and it never changes what it was given.
 */

const demo = core.readProjectOrThrow(readFileSync("shared/alder-row-pottery.yaml", "utf8"), {
  file: () => ({ failure: "none" }),
});
const project = { ...demo, buildUps: demo.buildUps.slice(0, 1) };
const buildUp = project.buildUps[0]!;
const surroundings = core.surroundingsOf(project);
const site = surroundings.sites.reported;
const room = project.rooms.get("indoor")!;
const calculation = core.calculateBuildUp(buildUp, site);
const problem: core.Problem = { code: "table-quotes", path: [], position: null, received: null, details: {} };

const GROUND = {
  area: 100,
  perimeter: 40,
  wallThickness: 0.3,
  soil: "clay or silt",
  edgeInsulation: null,
  membrane: true,
};
const VOID = {
  area: 40, perimeter: 26, wallThickness: 0.3, soil: "unknown", height: 0.3, wallTransmittance: 1.5, openings: 0.0015,
  windSpeed: 4, shelter: "average", groundInsulation: 0,
}; // biome-ignore format: one table

const side = field.sideOf(calculation.heat);
const JUNCTION_SURFACES = { inside: { level: 0.13, upright: 0.13 }, outside: { level: 0.04, upright: 0.04 } };
const corner = (surfaces: Parameters<typeof field.outerCorner>[3]) => field.outerCorner(side, side, 2, surfaces);
const MESH_RULE = { first: 0.005, growth: 1.6, greatest: 0.1, leastSteps: 2 };
const PLASTER: field.Stuff = {
  name: "plaster", material: null, isAir: false, conductivity: { x: 0.25, y: 0.25 }, permeability: { x: 2e-11, y: 2e-11 },
}; // biome-ignore format: one table
const PIECES: field.Piece[] = [
  { stuff: PLASTER, box: { x0: 0, x1: 0.3, y0: 0, y1: 0.1 } },
  { air: { name: "room", upright: 0.13, level: 0.13 }, box: { x0: 0, x1: 0.3, y0: -0.02, y1: 0 } },
  { air: { name: "outdoors", upright: 0.04, level: 0.04 }, box: { x0: 0, x1: 0.3, y0: 0.1, y1: 0.12 } },
];
const scene = field.drawnScene(PIECES);
const mesh = field.meshOf(scene, MESH_RULE);
const heat = field.heatField(scene, mesh);
const temperature = field.temperaturesOf(heat, [20, 0]);
const framed = calculation.heat.counted;
const CELL_QUESTION = {
  counted: framed,
  framing: field.drawnFraming(framed)!,
  surfaces: { inside: 0.13, outside: 0.04 },
  sheets: true,
};

/** A year of records, one reading a day. */
const RECORDS = recordsOfAYear();

function recordsOfAYear(): unknown {
  const days = Array.from({ length: 365 }, (_, day) => new Date(Date.UTC(2001, 0, 1 + day)).toISOString().slice(0, 10));
  const reading = core.readRecords(
    `date,temperature C,relative humidity %\n${days.map((day) => `${day},10,80`).join("\n")}\n`,
  );
  if (!reading.ok)
    throw new Error(reading.problems.map((each) => core.problemInText(core.wordProblem(each))).join("; "));
  return reading.value;
}

/** What each type of `api.md` may be given. */
const SAMPLES: Readonly<Record<string, unknown>> = {
  BuildUpValues: { name: "Damp room", layers: buildUp.layers },
  FramingValues: { name: "studs", material: "softwood timber", width: 0.045, spacing: 0.6 },
  ProjectValues: { climate: "heathrow", rooms: [room], buildUps: [buildUp] },
  "string | MaterialValues | Material": "plywood",
  "string | MaterialValues": "plywood",
  Ventilation: "none",
  RecordMonths: RECORDS,
  RecordsPlace: {
    place: "Alder Row",
    country: null,
    latitude: 51,
    longitude: 0,
    altitude: 20,
    origin: null,
    terms: null,
    acknowledgement: null,
  },
  "readonly Piece[]": PIECES,
  Scene: scene,
  Mesh: mesh,
  MeshRule: MESH_RULE,
  HeatField: heat,
  NodePlaces: "corners",
  Float64Array: temperature,
  Side: side,
  SideResistances: side,
  Posts: 2,
  EdgeTimber: { rim: 0.045, plates: 2 },
  WindowFrameMeasures: { width: 0.1, depth: 0.07, conductivity: 0.13, setBack: 0.05 },
  JunctionSurfaces: JUNCTION_SURFACES,
  JunctionDrawing: corner,
  HeatCalculation: calculation.heat,
  CellQuestion: CELL_QUESTION,
  'Omit<CellQuestion, "jointOf">': CELL_QUESTION,
  "readonly CountedLayer[]": framed,
  "readonly AirMonths[]": [site.outdoor, site.outdoor],
  PictureQuestion: {
    field: heat,
    frame: { x0: 0, x1: 0.3, y0: 0, y1: 0.1 },
    view: "y downwards",
    temperature,
    held: null,
    inside: { x: 0.1, y: 0 },
    outside: { x: 0.1, y: 0.1 },
    coldest: null,
    strip: null,
  },
  BuildUp: buildUp,
  Surroundings: surroundings,
  Project: project,
  PlaceAndRooms: project,
  Site: site,
  Room: room,
  AirMonths: site.outdoor,
  OutdoorClimate: project.climate,
  Severity: core.ONE_IN_TEN_COLDER,
  AltitudeCorrection: { altitude: 300, lapseRate: 0.0065 },
  BuildUpCalculation: calculation,
  Problem: problem,
  WordedProblem: core.wordProblem(problem),
  PlaceOnEarth: { latitude: 50, longitude: 5, altitude: 100 },
  VariationQuestion: { buildUp: 0, layer: 2, from: 0.1, to: 0.14, step: 0.02 },
  "readonly OutdoorClimate[]": [project.climate],
  "readonly Material[]": core.SHIPPED_MATERIALS,
  "readonly MaterialTable[]": [core.materialTable(core.SHIPPED_MATERIALS)],
  "readonly string[]": ["a", "b"],
  "Iterable<string>": ["a", "b"],
  '"and" | "or"': "and",
  '"latitude" | "longitude"': "latitude",
  'Pick<Project, "buildUps">': project,
  QuantityName: "thickness",
  Code: "trace",
  string: "text",
  "string | null": "text",
  number: 0.5,
  HeatFlowDirection: "upward",
  "readonly number[]": [1, 2],
  "readonly LayerForLimits[]": [{ resistance: 4, framingResistance: 1 }],
  Ground: GROUND,
  UnderfloorVoid: VOID,
};

interface Parameter {
  name: string;
  type: string;
  optional: boolean;
}

const REPORT = readFileSync("packages/core/api.md", "utf8");
const ENTRIES = { "@warmside/core": core, "@warmside/core/formulas": formulas, "@warmside/core/field": field };

interface PublicFunction {
  entry: keyof typeof ENTRIES;
  name: string;
  parameters: Parameter[];
}

const functionsIn = (entry: keyof typeof ENTRIES): PublicFunction[] =>
  [...partOf(entry).matchAll(/^function (\w+)(?:<[^(]*>)?\(((?:[^()]|\([^()]*\) =>)*)\): /gm)].map(
    ([, name, written]) => ({
      entry,
      name: name!,
      parameters: [...written!.matchAll(/(\w+)(\?)?: ((?:[^,()<>]|<[^<>]*>|\([^)]*\) => \w+)+)/g)].map(
        ([, parameter, mark, type]): Parameter => ({ name: parameter!, type: type!.trim(), optional: mark === "?" }),
      ),
    }),
  );

/** What the report tells of an entry. */
function partOf(entry: string): string {
  return REPORT.split(/^## /m).find((part) => part.startsWith(`${entry}\n`))!;
}

const FUNCTIONS = (Object.keys(ENTRIES) as (keyof typeof ENTRIES)[]).flatMap(functionsIn);

const HOSTILE: readonly unknown[] = [
  Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1, 5e-324, 1e308, "text", "", null, true, {}, [], Symbol.iterator,
]; // biome-ignore format: one table

/** The engine's own complaints tell nobody which argument was wrong. */
const OF_THE_ENGINE =
  /Cannot (read|convert|destructure|set)|is not (a function|iterable|defined)|undefined \(reading|of null|Invalid (array|typed)|BigInt|Maximum call/;

function frozen<Thing>(thing: Thing, seen = new Set<unknown>()): Thing {
  if (typeof thing !== "object" || thing === null || seen.has(thing) || ArrayBuffer.isView(thing)) return thing;
  seen.add(thing);
  for (const value of thing instanceof Map ? thing.values() : Object.values(thing)) frozen(value, seen);
  return Object.freeze(thing);
}

function unfinished(value: unknown, path: string, seen = new Set<unknown>()): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : `${path} is ${value}`;
  if (typeof value === "string") return /\bNaN\b|undefined|\[object/.test(value) ? `${path} says ${value}` : null;
  if (typeof value !== "object" || value === null || seen.has(value)) return null;
  seen.add(value);
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  for (const [key, entry] of entries) {
    const found = unfinished(entry, `${path}.${String(key)}`, seen);
    if (found !== null) return found;
  }
  return null;
}

/** What is wrong with a call; null where it is refused in its own words, or answered with finite numbers. */
function wrongWith(
  name: string,
  values: readonly unknown[],
  entry: keyof typeof ENTRIES = "@warmside/core",
): string | null {
  try {
    const answer = (ENTRIES[entry] as unknown as Record<string, (...values: readonly unknown[]) => unknown>)[name]!(
      ...values,
    );
    return unfinished(answer, "answer");
  } catch (error) {
    if (!(error instanceof RangeError || error instanceof TypeError || error instanceof core.ProblemsError)) {
      return `throws ${String(error)}`;
    }
    return OF_THE_ENGINE.test(error.message) || error.message.length < 12 ? `is refused by: ${error.message}` : null;
  }
}

const shown = (value: unknown): string => (typeof value === "object" ? JSON.stringify(value) : String(value));

describe("public functions given what they cannot take", () => {
  it("are all found in the API report", () => {
    for (const [entry, names] of Object.entries(ENTRIES)) {
      const values = Object.entries(names).filter(
        ([name, value]) => typeof value === "function" && !/^[A-Z]/.test(name),
      );
      const found = FUNCTIONS.filter((each) => each.entry === entry).map(({ name }) => name);
      expect(found.sort()).toEqual(values.map(([name]) => name).sort());
    }
  });

  it.each(FUNCTIONS)("$entry $name", ({ entry, name, parameters }) => {
    const usual = parameters.map((parameter) => frozen(SAMPLES[parameter.type]));
    const unknown = parameters.filter(({ optional, type }) => !optional && SAMPLES[type] === undefined);
    expect(unknown.map(({ type }) => type)).toEqual([]);
    const faults = parameters.flatMap((parameter, index) =>
      HOSTILE.flatMap((hostile) => {
        const values = usual.with(index, hostile);
        const wrong = wrongWith(name, values, entry);
        return wrong === null ? [] : [`${parameter.name} ${shown(hostile)}: ${wrong}`];
      }),
    );
    expect(faults).toEqual([]);
  });
});

/** Every path to a number in an object, the first so many. */
function numbersIn(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value === "number") return [[...path]];
  if (typeof value !== "object" || value === null || value instanceof Map || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([key, entry]) => numbersIn(entry, [...path, key]));
}

function withValueAt(thing: unknown, [step, ...rest]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value;
  const inner = withValueAt((thing as Record<string, unknown>)[step], rest, value);
  return Array.isArray(thing) ? thing.with(Number(step), inner) : { ...(thing as object), [step]: inner };
}

describe("a build-up with one number that is none", () => {
  const { variants: _variants, ...plain } = buildUp;
  const drawn = { ...plain, variants: [] };

  it.each(numbersIn(drawn).map((path) => [path.join("."), path] as const))("%s", (_, path) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1, "0.1", null]) {
      const changed = withValueAt(drawn, path, value);
      expect(wrongWith("assessBuildUp", [changed, surroundings]), String(value)).toBeNull();
      expect(wrongWith("calculateBuildUp", [changed, site]), String(value)).toBeNull();
    }
  });

  it.each([
    ["numbers", zeros],
    ["whole numbers", wholeZeros],
  ])("a list of %s whose length is none takes nothing from the block of the next", (_, list) => {
    for (const length of [Number.NaN, -1, 1.5, Number.POSITIVE_INFINITY])
      expect(() => list(length)).toThrow(RangeError);
    expect([...list(3)]).toEqual([0, 0, 0]);
  });

  it("leaves nothing behind for the next call", () => {
    const before = JSON.stringify(core.assessBuildUp(buildUp, surroundings));
    const [first, ...others] = buildUp.layers;
    const broken = { ...first!, thickness: Number.NaN };
    expect(() => core.assessBuildUp({ ...buildUp, layers: [broken, ...others] }, surroundings)).toThrow(TypeError);
    expect(JSON.stringify(core.assessBuildUp(buildUp, surroundings))).toBe(before);
  });

  it.each([
    ["thickness", -1, RangeError, "layers[0].thickness must be a length from 0.001 mm to 3000 mm, was -1000 mm"],
    ["thickness", "12 mm", TypeError, 'layers[0].thickness must be a length, was "12 mm"'],
  ] as const)("says where, what and in which range: %s %s", (key, value, kind, message) => {
    const [first, ...others] = buildUp.layers;
    const changed = { ...buildUp, layers: [{ ...first!, [key]: value }, ...others] } as core.BuildUp;
    expect(() => core.assessBuildUp(changed, surroundings)).toThrow(kind);
    expect(() => core.assessBuildUp(changed, surroundings)).toThrow(message);
  });

  it("an element that is none and a share over 1 are refused", () => {
    const door = { ...buildUp, element: "door" } as unknown as core.BuildUp;
    expect(() => core.assessBuildUp(door, surroundings)).toThrow("buildUp.element must be one of wall,");
    const layers = buildUp.layers.map((layer) =>
      layer.framing === null ? layer : { ...layer, framing: { ...layer.framing, share: 2 } },
    );
    expect(() => core.assessBuildUp({ ...buildUp, layers }, surroundings)).toThrow(RangeError);
  });
});
