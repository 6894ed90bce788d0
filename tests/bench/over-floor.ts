import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import { type Measured, ratioOf } from "./measure.ts";
import { sixLayerWall, surroundings } from "./six-layer-wall.ts";
import type { Measure } from "./table.ts";

/** The walls that are measured, by the sd of their vapour layer [m]. */
export const WALLS = { dry: 50, "dries out": 2, "stays wet": 0.1 } as const;

const site = surroundings().sites.reported;
const CALLS = 400;

/**
 * Heat, vapour and year of a six-layer framed wall over the saturation pressures that it cannot do without: twelve
 * months times its nodes, one exponential each.
 */
export function calculationOverFloor(): Measure[] {
  const dry = over(sixLayerWall(WALLS.dry), calculate);
  const driesOut = over(sixLayerWall(WALLS["dries out"]), calculate);
  const staysWet = over(sixLayerWall(WALLS["stays wet"]), calculate);
  const what = "heat, vapour and year of a six-layer framed wall over its saturation pressures alone";
  return [
    { name: "assessToFloor", value: dry.ratio, unit: "times", goal: { atMost: 3 }, what: `${what}; it is dry` },
    {
      name: "assessToFloorDriesOut",
      value: driesOut.ratio,
      unit: "times",
      goal: { atMost: 3.5 },
      what: "the same wall with water that dries out",
    },
    {
      name: "assessToFloorStaysWet",
      value: staysWet.ratio,
      unit: "times",
      goal: null,
      what: "the same wall with water that stays, and is run on",
    },
    { name: "assessTime", value: dry.above * 1e6, unit: "µs", goal: null, what: "one such calculation" },
    { name: "floorTime", value: dry.below * 1e6, unit: "µs", goal: null, what: "its saturation pressures alone" },
  ];
}

/** The same with vapour layer, sensitivity, checks, findings and judgement. */
export function judgementOverFloor(): Measure[] {
  const dry = over(sixLayerWall(WALLS.dry), assess, CALLS / 10);
  const wet = over(sixLayerWall(WALLS["dries out"]), assess, CALLS / 10);
  return [
    {
      name: "judgedToFloor",
      value: dry.ratio,
      unit: "times",
      goal: null,
      what: "with findings, judgement and the whole result as data (six calculations); dry",
    },
    {
      name: "judgedToFloorDriesOut",
      value: wet.ratio,
      unit: "times",
      goal: null,
      what: "the same with water that dries out",
    },
  ];
}

function over(buildUp: BuildUp, work: (buildUp: BuildUp) => number, calls: number = CALLS) {
  return ratioOf({ work: () => work(buildUp), calls }, floorOf(buildUp));
}

function calculate(buildUp: BuildUp): number {
  return calculateBuildUp(buildUp, site).governing.year.peak;
}

function assess(buildUp: BuildUp): number {
  return assessBuildUp(buildUp, surroundings()).findings.length;
}

/** The saturation pressures of all its nodes and months, and nothing else. */
function floorOf(buildUp: BuildUp): Measured {
  const temperatures = temperaturesOf(buildUp);
  const work = (): number => {
    let sum = 0;
    for (let index = 0; index < temperatures.length; index += 1) sum += saturationPressure(temperatures[index]!);
    return sum;
  };
  return { work, calls: CALLS };
}

/** Temperature of every node of both sections in every month [°C]. */
export function temperaturesOf(buildUp: BuildUp): Float64Array {
  const { sections } = calculateBuildUp(buildUp, site);
  return Float64Array.from(sections.flatMap(({ climate }) => climate.temperature.flatMap((nodes) => [...nodes])));
}
