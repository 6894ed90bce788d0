import { checkAir } from "./build-up.ts";
import { byKind, keys, listOf, mapOf, months, oneOf, optional, orNull, quantity, text, truth } from "./checks.ts";
import type { Check } from "./faults.ts";

/** A place's twelve monthly means. */
export const checkClimate: Check = keys({
  name: text,
  origin: listOf(text),
  temperature: months(quantity("temperature", { low: -100, high: 100 })),
  relativeHumidity: months(quantity("relative humidity", { low: 1e-6 })),
});

const temperatureRule: Check = byKind("kind", {
  heated: keys({
    setPoint: quantity("temperature"),
    daysPerWeek: quantity("heated days", { low: 0 }),
    otherwise: orNull(quantity("temperature")),
  }),
  held: keys({ months: months(quantity("temperature")) }),
  "by outdoor temperature": keys({}),
  unheated: keys({}),
});

const humidityRule: Check = byKind("kind", {
  class: keys({ class: oneOf(1, 2, 3, 4, 5) }),
  months: keys({ relativeHumidity: months(quantity("relative humidity")) }),
  "by outdoor temperature": keys({ level: oneOf("normal", "high") }),
  balance: keys({
    production: quantity("moisture production"),
    volume: quantity("volume"),
    airChanges: quantity("air changes"),
  }),
  "as outdoors": keys({}),
});

/** The rules for a room's air. */
export const checkRoom: Check = keys({
  name: text,
  temperature: temperatureRule,
  cooling: orNull(quantity("temperature")),
  humidity: humidityRule,
  humidityWhenCooled: orNull(quantity("relative humidity")),
  burstsOfSteam: truth,
  pool: truth,
});

/** A warmer or colder year: the difference from the mean year. */
export const checkSeverity: Check = keys({ name: text, offset: quantity("temperature difference") });

/** The parts of a project that decide the air around its build-ups. */
export const checkPlaceAndRooms: Check = keys({
  climate: checkClimate,
  rooms: mapOf(checkRoom),
  humidityMargin: quantity("humidity margin", { low: 0.01, high: 10 }),
  severity: optional(checkSeverity),
});

/** Outdoor air and the air of every room. */
export const checkSite: Check = keys({ outdoor: checkAir, rooms: mapOf(checkAir) });

/** All that surrounds a build-up when it is assessed. */
export const checkSurroundings: Check = keys({
  sites: keys({
    reported: checkSite,
    mean: checkSite,
    colder: checkSite,
    warmer: checkSite,
    wetter: checkSite,
    heatedDaily: checkSite,
  }),
  rooms: mapOf(checkRoom),
  humidityMargin: quantity("humidity margin", { low: 0.01, high: 10 }),
});
