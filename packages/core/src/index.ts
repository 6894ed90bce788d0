/**
 * The public names of @warmside/core, in stage order.
 */

// air
export { dewPoint } from "./air/dew-point.ts";
export { humidityByVolume, relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";
// vapour layer, findings, judgement
export { assessBuildUp, type Surroundings } from "./assess-build-up.ts";
// a whole project
export { assessProject, surroundingsOf } from "./assess-project.ts";
// heat → year: figures only
export { type BuildUpCalculation, calculateBuildUp, type SectionCalculation } from "./calculate-build-up.ts";
// outdoor climate
export { correctForAltitude, STANDARD_LAPSE_RATE } from "./climate/altitude.ts";
export { checkFit, type FitNote } from "./climate/check-fit.ts";
export { climateMonths } from "./climate/climate-months.ts";
export { readAltitude, readDegrees } from "./climate/degrees.ts";
export { distanceBetween, type NearClimate, nearestClimates, type Site } from "./climate/nearest-climates.ts";
export { readClimate } from "./climate/read-climate.ts";
export { applySeverity, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "./climate/severity.ts";
// constants
export { DAYS_IN_MONTH, MONTH_NAMES, SECONDS_PER_DAY, VAPOUR_PERMEABILITY_OF_AIR } from "./constants.ts";
// problems
export type { Problem, ProblemPath, Reading, TextPosition, WordedProblem } from "./problems/types.ts";
// project
export type * from "./project/types.ts";
// quantities
export { formatNumber } from "./quantities/format-quantity.ts";
// weather records
export { climateTable, type RecordsPlace } from "./records/climate-table.ts";
export { createRecordReader, type RecordReader, readRecords } from "./records/record-reader.ts";
export type * from "./records/types.ts";
// result
export type * from "./result/types.ts";
// rooms
export { describeRoom, type RoomDescription } from "./rooms/describe-room.ts";
export { type ImpossibleMonth, impossibleMonths } from "./rooms/impossible-months.ts";
export { roomMonths } from "./rooms/room-months.ts";
export { CLIMATE_CSVS } from "./shipped-tables.ts";
