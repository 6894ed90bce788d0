import {
  type BuildUpResult,
  DAYS_IN_MONTH,
  dewPoint,
  type LayerResult,
  MONTH_NAMES,
  type MonthName,
  type MonthOfAir,
  type ProjectResult,
  type SectionId,
  type SectionMonth,
  type SectionResult,
  saturationPressure,
} from "@warmside/core";

/**
 * A small result made by hand for tests of the page: one plane, worked here apart from the core.
 * Its values are plausible and prove nothing about any building.
 */

const OUTDOOR_TEMPERATURE = [3, 3.5, 6, 9, 13, 16, 18, 17.5, 15, 11, 6.5, 3.8];
const OUTDOOR_HUMIDITY = [0.89, 0.86, 0.81, 0.76, 0.75, 0.76, 0.77, 0.79, 0.83, 0.87, 0.9, 0.9];

function months(temperature: readonly number[], vapourPressure: readonly number[]): MonthOfAir[] {
  return MONTH_NAMES.map((month, index) => ({
    month,
    temperature: temperature[index]!,
    vapourPressure: vapourPressure[index]!,
    relativeHumidity: vapourPressure[index]! / saturationPressure(temperature[index]!),
  }));
}

const outdoor = months(
  OUTDOOR_TEMPERATURE,
  OUTDOOR_TEMPERATURE.map((temperature, index) => OUTDOOR_HUMIDITY[index]! * saturationPressure(temperature)),
);

function indoorMonths(excess: number): MonthOfAir[] {
  const pressure = outdoor.map(
    ({ temperature, vapourPressure }) => vapourPressure + excess * Math.min(1, Math.max(0, (20 - temperature) / 20)),
  );
  return months(Array(12).fill(20), pressure);
}

type LayerSketch = Partial<LayerResult> & { name: string };

function layer(number: number, sketch: LayerSketch): LayerResult {
  const thickness = sketch.thickness ?? 0;
  const conductivity = sketch.conductivity ?? null;
  const factor = sketch.vapourResistanceFactor ?? null;
  const sd = sketch.sd ?? (factor ?? 0) * thickness;
  return {
    number,
    type: "material",
    kind: null,
    group: null,
    thickness,
    conductivity,
    resistance: conductivity ? thickness / conductivity : 0,
    vapourResistanceFactor: factor,
    sd,
    sdUnfavourable: sd,
    sdParts: null,
    density: null,
    emissivityInner: 0.9,
    emissivityOuter: 0.9,
    source: "ISO 10456:2007 Table 3 (from memory)",
    basis: "tabulated",
    framing: null,
    ventilation: null,
    ventilationArea: null,
    open: null,
    airRule: null,
    fit: null,
    purpose: null,
    counted: true,
    ...sketch,
  };
}

const RSI = 0.13;
const RSE = 0.04;
const DELTA = 2e-10;

interface Node {
  layer: number | null;
  after: string | null;
  depth: number;
  sd: number;
  resistance: number;
}

function nodesOf(layers: readonly LayerResult[]): Node[] {
  const nodes: Node[] = [{ layer: null, after: null, depth: 0, sd: 0, resistance: 0 }];
  for (const entry of layers.filter(({ counted }) => counted)) {
    const parts = entry.type === "air" ? 1 : Math.max(1, Math.ceil(entry.resistance / 0.25 - 1e-9));
    const before = nodes.at(-1)!;
    for (let part = 1; part <= parts; part += 1) {
      const share = part / parts;
      nodes.push({
        layer: entry.number - 1,
        after: entry.name,
        depth: before.depth + share * entry.thickness,
        sd: before.sd + share * entry.sd,
        resistance: before.resistance + share * entry.resistance,
      });
    }
  }
  return nodes;
}

/** Twelve months of one plane (the node most over saturation in January), from the first wet month on. */
function yearOf(
  nodes: readonly Node[],
  indoor: readonly MonthOfAir[],
  planeWanted: boolean,
): { months: SectionMonth[]; start: MonthName | null } {
  const total = RSI + nodes.at(-1)!.resistance + RSE;
  const states = MONTH_NAMES.map((_, month) => {
    const inside = indoor[month]!;
    const outside = outdoor[month]!;
    const temperature = nodes.map(
      ({ resistance }) =>
        inside.temperature - ((inside.temperature - outside.temperature) * (RSI + resistance)) / total,
    );
    return { inside, outside, temperature, saturation: temperature.map(saturationPressure) };
  });
  const end = nodes.at(-1)!.sd;
  const straight = (month: number, sd: number): number => {
    const { inside, outside } = states[month]!;
    return inside.vapourPressure + ((outside.vapourPressure - inside.vapourPressure) * sd) / end;
  };
  const excess = nodes.map(({ sd }, index) => straight(0, sd) - states[0]!.saturation[index]!);
  const plane = planeWanted ? excess.indexOf(Math.max(...excess)) : -1;
  const balance = (month: number): number => {
    const { inside, outside, saturation } = states[month]!;
    const arrives = (inside.vapourPressure - saturation[plane]!) / nodes[plane]!.sd;
    const leaves = (saturation[plane]! - outside.vapourPressure) / (end - nodes[plane]!.sd);
    return DELTA * (arrives - leaves) * DAYS_IN_MONTH[month]! * 86_400;
  };
  const wet = MONTH_NAMES.map((_, month) => plane > 0 && balance(month) > 1e-6);
  const start = wet.findIndex((isWet, month) => isWet && !wet[(month + 11) % 12]);
  const change = Array<number>(12).fill(0);
  const held = Array<number>(12).fill(0);
  let water = 0;
  for (let step = 0; start >= 0 && step < 12; step += 1) {
    const month = (start + step) % 12;
    const before = water;
    water = before > 0 || wet[month] ? Math.max(0, before + balance(month)) : 0;
    change[month] = water - before;
    held[month] = water;
  }
  const result = MONTH_NAMES.map((name, month): SectionMonth => {
    const { inside, outside, temperature, saturation } = states[month]!;
    const isWet = change[month] !== 0 || held[month]! > 0;
    const pressure = (index: number): number => {
      const { sd } = nodes[index]!;
      if (!isWet) return straight(month, sd);
      const at = nodes[plane]!.sd;
      return sd <= at
        ? inside.vapourPressure + ((saturation[plane]! - inside.vapourPressure) * sd) / at
        : saturation[plane]! + ((outside.vapourPressure - saturation[plane]!) * (sd - at)) / (end - at);
    };
    return {
      month: name,
      outdoor: { temperature: outside.temperature, vapourPressure: outside.vapourPressure },
      indoor: { temperature: inside.temperature, vapourPressure: inside.vapourPressure },
      nodes: nodes.map((node, index) => ({
        node: index,
        layer: node.layer,
        after: node.after,
        depth: node.depth,
        sd: node.sd,
        temperature: temperature[index]!,
        saturationPressure: saturation[index]!,
        vapourPressure: pressure(index),
      })),
      planes: isWet ? [{ node: plane, change: change[month]!, held: held[month]! }] : [],
    };
  });
  return { months: result, start: start < 0 ? null : MONTH_NAMES[start]! };
}

/** One build-up around its layers. */
export function buildUpFixture(
  name: string,
  sketches: readonly LayerSketch[],
  change: Partial<BuildUpResult> = {},
  excess = 1360,
): BuildUpResult {
  const layers = sketches.map((sketch, index) => layer(index + 1, sketch));
  const indoor = indoorMonths(excess);
  const nodes = nodesOf(layers);
  const { months: year, start } = yearOf(nodes, indoor, excess > 0);
  const counted = layers.filter((entry) => entry.counted);
  const clear = RSI + RSE + counted.reduce((sum, { resistance }) => sum + resistance, 0);
  const framingShare = change.framings?.[0]?.share ?? 0;
  const bridged = change.framings?.[0]?.layers ?? [];
  const through =
    RSI +
    RSE +
    counted.reduce(
      (sum, entry) => sum + (bridged.includes(entry.number - 1) ? entry.thickness / 0.13 : entry.resistance),
      0,
    );
  const upperLimit = 1 / ((1 - framingShare) / clear + framingShare / through);
  const lowerLayers = counted.map((entry) => ({
    layer: entry.number - 1,
    name: entry.name,
    resistance:
      bridged.includes(entry.number - 1) && entry.resistance > 0
        ? 1 / ((1 - framingShare) / entry.resistance + framingShare / (entry.thickness / 0.13))
        : entry.resistance,
  }));
  const lowerLimitLayers = [
    { layer: null, name: "room surface", resistance: RSI },
    ...lowerLayers,
    { layer: null, name: "outer surface", resistance: RSE },
  ];
  const lowerLimit = lowerLimitLayers.reduce((sum, { resistance }) => sum + resistance, 0);
  const resistance = (upperLimit + lowerLimit) / 2;
  const totals = year.map(({ planes }) => planes.reduce((sum, { held }) => sum + held, 0));
  const peak = Math.max(...totals);
  const wet = peak > 0;
  const order = MONTH_NAMES.map((_, step) => (Math.max(0, MONTH_NAMES.indexOf(start as never)) + step) % 12);
  const carriedOver = wet ? totals[order[11]!]! : 0;
  const dryBy =
    wet && carriedOver === 0 ? MONTH_NAMES[order[order.findLastIndex((month) => totals[month]! > 0) + 1]!]! : null;
  const verdict = !wet ? "dry" : carriedOver > 1e-6 ? "stays wet" : "dries out";
  const summary = {
    verdict,
    peak: { amount: peak, month: wet ? MONTH_NAMES[totals.indexOf(peak)]! : null },
    carriedOver,
    dryBy,
  } as const;
  const changes = year.map(({ planes }) => Math.abs(planes[0]?.change ?? 0));
  const slug = name.toLowerCase().replaceAll(" ", "-");
  const margins = year.flatMap(({ month, nodes: states }) =>
    states.slice(1, -1).map(({ node, saturationPressure: most, vapourPressure: is }) => ({
      node,
      month,
      margin: most - is,
      relativeHumidity: is / most,
    })),
  );
  const least = margins.reduce((best, entry) => (entry.margin < best.margin ? entry : best));
  const decidingMonth = wet ? MONTH_NAMES[changes.indexOf(Math.max(...changes))]! : least.month;
  const section: SectionResult = {
    ...summary,
    index: 0,
    id: framingShare > 0 ? BETWEEN : WHOLE,
    name: framingShare > 0 ? "between framing" : "whole",
    share: 1 - framingShare,
    startMonth: start,
    writtenOff: 0,
    withinMonth: summary,
    repeating: {
      settles: verdict !== "stays wet",
      years: 1,
      level: peak,
      growthPerYear: verdict === "stays wet" ? carriedOver : 0,
    },
    leastMargin: wet ? null : least,
    decidingMonth,
    layers: counted.map((entry) => ({
      layer: entry.number - 1,
      name: entry.name,
      part: "whole" as const,
      material: entry.name,
      resistance: entry.resistance,
      sd: entry.sd,
      nodeAfter: nodes.findLastIndex((node) => node.layer === entry.number - 1),
    })),
    months: year,
  };
  return {
    plane: null,
    name,
    slug,
    element: "wall",
    room: "indoor",
    faces: "outdoors",
    target: 0.25,
    area: null,
    layers,
    framings: [],
    farSide: { name: "outdoors", rule: "outdoor air", months: outdoor },
    heat: {
      resistance,
      upperLimit,
      lowerLimit,
      transmittance: 1 / resistance,
      clearTransmittance: 1 / clear,
      correction: 0,
      framingShare,
      temperatureFactor: 1 - 0.25 / (0.25 + through - RSI),
      requiredTemperatureFactor: requiredFactor(indoor, 11),
      criticalMonth: "December",
      direction: "horizontal",
      surfaceResistanceInside: RSI,
      surfaceResistanceOutside: RSE,
      surfaceResistanceOutsideMoisture: RSE,
      limitsRatio: upperLimit / lowerLimit,
      possibleError: (upperLimit - lowerLimit) / (2 * resistance),
      paths:
        framingShare > 0
          ? [
              {
                id: BETWEEN,
                name: "between framing",
                share: 1 - framingShare,
                resistance: clear,
                layerResistances: [],
              },
              {
                id: THROUGH_STUDS,
                name: "through studs",
                share: framingShare,
                resistance: through,
                layerResistances: [],
              },
            ]
          : [{ id: WHOLE, name: "whole", share: 1, resistance: clear, layerResistances: [] }],
      lowerLimitLayers,
      corrections: [],
      correctionsLeftOut: false,
      ground: null,
      groundResistance: null,
      groundBasis: null,
      slightVentilation: null,
      heatPerYear: null,
      heatPerYearNote: null,
    },
    surface: {
      temperatureFactors: [{ where: "between framing", sectionId: BETWEEN, factor: 1 - 0.25 / (0.25 + clear - RSI) }],
      required: MONTH_NAMES.map((month, index) => ({
        month,
        mould: requiredFactor(indoor, index),
        condensation: null,
        corrosion: null,
      })),
      critical: {
        mould: { month: "December", factor: requiredFactor(indoor, 11)! },
        condensation: null,
        corrosion: null,
      },
      reason: null,
      humidityStood: { month: "January", mould: 0.66, condensation: 0.83 },
      coldest: null,
      otherFace: null,
      junctions: [],
      condensationMonths: [],
    },
    moisture: {
      ...summary,
      section: framingShare > 0 ? "between framing" : "whole",
      governing: section,
      skyOffset: 0,
      sections: [section],
    },
    sensitivity: [
      {
        name: "one in ten colder year",
        verdict,
        withinMonthVerdict: verdict,
        peak: summary.peak,
        carriedOver,
        worse: false,
        message: "The same verdict in a year two kelvin colder.",
      },
    ],
    vapourLayer: null,
    wood: [],
    trappedWater: [],
    twoSeasonCheck: null,
    leak: null,
    gaps: [],
    variableResistance: null,
    beyond: null,
    findings: [
      {
        id: `${slug}/no-vapour-layer-warm-side`,
        code: "no-vapour-layer-warm-side",
        severity: "caution",
        short: "Water gathers against the outer board.",
        message: "Water gathers against the outer board.",
        advice: "Put a vapour layer on the room side.",
        source: "ISO 13788:2012 clause 6.4 (from memory)",
        figures: { warmSide: "inside", tooOpen: null, holdsRain: false },
      },
    ],
    judgement: {
      word: "sound with conditions",
      reasons: [`${slug}/no-vapour-layer-warm-side`],
      decisive: `${slug}/no-vapour-layer-warm-side`,
      verdict,
      short: "It gathers some water each winter and loses it in spring.",
      message: "It gathers some water each winter and loses it in spring.",
      failsEvenSo: null,
      conditionsFrom: [`${slug}/no-vapour-layer-warm-side`],
      conditions: ["The vapour layer is whole at laps, sockets and its edge."],
    },
    remedies: [],
    remedySearch: null,
    ...change,
  };
}

const WHOLE: SectionId = { kind: "whole", through: [] };
const BETWEEN: SectionId = { kind: "between framing", through: [] };
const THROUGH_STUDS: SectionId = { kind: "through framing", through: ["studs"] };

function requiredFactor(indoor: readonly MonthOfAir[], month: number): number | null {
  const inside = indoor[month]!;
  const difference = inside.temperature - outdoor[month]!.temperature;
  return difference < 3
    ? null
    : Math.max(0, (dewPoint(inside.vapourPressure / 0.8) - outdoor[month]!.temperature) / difference);
}

/** Layers of a timber wall with wool; the outer board is tight enough to gather water in a damp room. */
export const WALL_LAYERS: readonly LayerSketch[] = [
  {
    name: "gypsum plasterboard",
    kind: "mineral",
    group: "lining",
    thickness: 0.0125,
    conductivity: 0.25,
    vapourResistanceFactor: 10,
    density: 700,
  },
  {
    name: "mineral wool slab",
    kind: "mineral",
    group: "insulation",
    thickness: 0.14,
    conductivity: 0.035,
    vapourResistanceFactor: 1,
    density: 45,
    framing: "studs",
  },
  {
    name: "oriented strand board",
    kind: "board",
    group: "wood-based board",
    thickness: 0.011,
    conductivity: 0.13,
    vapourResistanceFactor: 50,
    density: 650,
  },
  {
    name: "breather membrane",
    type: "sheet",
    kind: "plastic",
    group: "membrane",
    sd: 0.1,
    basis: "assumed",
    source: "assumed",
  },
  {
    name: "air layer",
    type: "air",
    thickness: 0.025,
    ventilation: "well",
    open: "both ends",
    counted: false,
    sd: 0.01,
    airRule: "well ventilated: left out from here",
  },
  {
    name: "softwood timber",
    kind: "wood",
    group: "timber",
    thickness: 0.02,
    conductivity: 0.13,
    vapourResistanceFactor: 50,
    density: 500,
    counted: false,
  },
];

/** A project of the given build-ups in De Bilt, room class 5. */
export function projectFixture(buildUps: BuildUpResult[], change: Partial<ProjectResult> = {}): ProjectResult {
  return {
    format: 2,
    junctions: [],
    method: "ISO 13788:2012 clause 6",
    project: "Alder Row pottery studio",
    reference: "AR-7",
    query: {
      question: "Does the studio wall need a vapour layer?",
      to: "Building control",
      site: "Alder Row, a level plot open to the west",
      preparedBy: "The applicant",
      date: "May 2026",
      drawings: ["AR-7-01", "AR-7-02"],
    },
    climate: {
      name: "de-bilt",
      severity: "mean year",
      origin: ["De Bilt, invented figures for tests", "Terms: none"],
      latitude: 52.1,
      longitude: 5.18,
      altitude: 2,
      altitudeCorrection: null,
      months: outdoor,
    },
    rooms: [
      {
        name: "indoor",
        temperatureRule: "heated to 20 °C",
        humidityRule: "class 5",
        source: "ISO 13788:2012 Annex A (from memory)",
        months: indoorMonths(1360),
      },
    ],
    buildUps,
    oddities: [],
    ...change,
  };
}

/** A wall that gathers water and a wall that stays dry. */
export function twoWalls(): ProjectResult {
  const studs = {
    name: "studs",
    material: "softwood timber",
    conductivity: 0.13,
    vapourResistanceFactor: 50,
    source: "ISO 10456:2007 Table 3",
    basis: "tabulated" as const,
    share: 0.15,
    origin: "45 mm at 600 mm, and 7.5 % rails",
    usual: "15 % for walls at 600 mm",
    layers: [1],
    width: 0.045,
    spacing: 0.6,
  };
  const wet = buildUpFixture("Studio wall", WALL_LAYERS, { framings: [studs] });
  const sheet: LayerSketch = {
    name: "polyethylene sheet 0.15 mm",
    type: "sheet",
    kind: "plastic",
    group: "membrane",
    sd: 50,
  };
  const tight = [WALL_LAYERS[0]!, sheet, ...WALL_LAYERS.slice(1)];
  const dry = buildUpFixture("Store wall", tight, {
    framings: [{ ...studs, layers: [2] }],
    judgement: {
      word: "sound",
      reasons: [],
      decisive: null,
      verdict: "dry",
      short: "Nothing condenses in any month.",
      message: "Nothing condenses in any month.",
      failsEvenSo: null,
      conditionsFrom: [],
      conditions: [],
    },
    findings: [],
    vapourLayer: {
      present: true,
      layers: [1],
      sd: 50,
      warmSide: "inside",
      warmSideName: "indoor",
      onWarmSide: true,
      monthsOnWarmSide: 12,
      drive: outdoor.map(({ month }) => ({ month, from: "inside", pressure: 500 })),
      resistanceShareWarmSide: 0.02,
      dewPointMargin: 8.1,
      dewPointMarginMonth: "January",
      sdRatioWarmToCold: 60,
      outerSkin: null,
      candidates: [{ layers: [1], sd: 50, side: "warm" }],
      message: "The vapour layer is the polyethylene sheet, on the warm side.",
    },
    wood: [
      {
        section: "between framing",
        sectionId: BETWEEN,
        sectionIndex: 0,
        layer: 3,
        name: "oriented strand board",
        monthsOverLimit: 0,
        months: MONTH_NAMES.map((month, index) => ({
          month,
          inner: 0.15 + 0.02 * Math.cos(index / 2),
          outer: 0.16 + 0.02 * Math.cos(index / 2),
        })),
      },
    ],
  });
  return projectFixture([wet, dry]);
}
