/**
 * The public names of @warmside/core, in stage order.
 */

// problems
export type { Problem, ProblemPath, Reading, TextPosition, WordedProblem } from "./problems/types.ts";
// constants
export { DAYS_IN_MONTH, MONTH_NAMES, SECONDS_PER_DAY, VAPOUR_PERMEABILITY_OF_AIR } from "./constants.ts";
// quantities
export { formatNumber } from "./quantities/format-quantity.ts";
// air
export { dewPoint } from "./air/dew-point.ts";
export { humidityByVolume, relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";
// project
export type * from "./project/types.ts";
// result
export type * from "./result/types.ts";
// heat → year: figures only
export { type BuildUpCalculation, calculateBuildUp, type SectionCalculation } from "./calculate-build-up.ts";
// vapour layer, findings, judgement
export { assessBuildUp, type Surroundings } from "./assess-build-up.ts";
// a whole project
export { assessProject, surroundingsOf } from "./assess-project.ts";
