/**
 * The calculating part of @warmside/core: build-up, climate and rooms in, figures out. It reads no files or units,
 * writes no findings, and is small enough for a web page. For a judgement, use `assessBuildUp` from the whole package.
 */

// air and vapour
export { dewPoint } from "./air/dew-point.ts";
export { humidityByVolume, relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";

// what goes in
export type * from "./project/types.ts";

// outdoor and indoor climate
export { climateMonths } from "./climate/climate-months.ts";
export { applySeverity, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "./climate/severity.ts";
export { type ImpossibleMonth, impossibleMonths } from "./rooms/impossible-months.ts";
export { roomMonths } from "./rooms/room-months.ts";

// what comes out
export type { MoistureResult, NodeState, SectionMonth, SectionResult, YearSummary } from "./result/types.ts";

// heat
export type { HeatCalculation } from "./heat/types.ts";

// what surrounds the build-ups
export type { FarSide, Site } from "./surroundings/far-side-months.ts";
export {
  type AssessmentSites,
  type PlaceAndRooms,
  type Surroundings,
  surroundingsOf,
} from "./surroundings/surroundings.ts";

// heat → year: figures only
export type { RepeatingYear, SectionYear } from "./year/types.ts";
export {
  type BuildUpCalculation,
  type CalculationOptions,
  calculateBuildUp,
  type SectionCalculation,
} from "./calculate-build-up.ts";

// the figures in the shape of the result
export { moistureResult } from "./describe/moisture-result.ts";
