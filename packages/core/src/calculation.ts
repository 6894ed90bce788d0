/**
 * The calculating part of @warmside/core: no units, no files, small enough for a page.
 */
export { dewPoint } from "./air/dew-point.ts";
export { relativeHumidity, vapourPressure } from "./air/humidity.ts";
export { saturationPressure } from "./air/saturation-pressure.ts";
export { assessBuildUp } from "./assess-build-up.ts";
export { assessProject } from "./assess-project.ts";
export { calculateBuildUp } from "./calculate-build-up.ts";
// what surrounds the build-ups
export { type Surroundings, surroundingsOf } from "./surroundings/surroundings.ts";
