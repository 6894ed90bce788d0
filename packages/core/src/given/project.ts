import { checkBuildUp } from "./build-up.ts";
import { keys, listOf, mapOf, quantity, text } from "./checks.ts";
import type { Check } from "./faults.ts";
import { checkClimate, checkRoom, checkSeverity } from "./surroundings.ts";

/** A place, its rooms, and the build-ups to assess. */
export const checkProject: Check = keys({
  name: text,
  climate: checkClimate,
  severity: checkSeverity,
  humidityMargin: quantity("humidity margin"),
  rooms: mapOf(checkRoom),
  buildUps: listOf(checkBuildUp),
  accept: listOf(text),
});
