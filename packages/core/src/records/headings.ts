import { LONGEST_HEADING } from "./record-limits.ts";
import type { ColumnRole, HumidityRole } from "./types.ts";

/** A heading split into its words and its unit. */
export interface Heading {
  /** As written in the file. */
  text: string;
  words: string;
  unit: string | null;
}

/**
 * Usual headings of weather records in English, German and French, in lower case without accents, by what the column
 * holds. Common practice.
 */
export const USUAL_HEADINGS: Readonly<Record<ColumnRole, readonly string[]>> = {
  date: ["date", "datetime", "date time", "date and time", "timestamp", "time stamp", "observation time", "day date", "valid", "datum", "datum uhrzeit", "datum zeit", "messdatum", "zeitstempel", "date heure", "date et heure", "horodatage"],
  time: ["time", "time of day", "hhmm", "hh mm", "clock", "clock time", "zeit", "uhrzeit", "heure"],
  year: ["year", "yyyy", "yr", "jahr", "annee", "an"],
  month: ["month", "mo", "mm", "monat", "mois"],
  day: ["day", "dd", "day of month", "tag", "jour"],
  hour: ["hour", "hr", "hh", "hour of day", "stunde"],
  minute: ["minute", "mi"],
  temperature: [
    "temperature", "temp", "t", "ta", "tas", "tg", "tmean", "tavg", "tmp", "t2m", "t mean", "t avg", "air temperature",
    "air temp", "airtemp", "temperature air", "mean temperature", "temperature mean", "mean temp", "temp mean",
    "average temperature", "avg temp", "temp avg", "dry bulb", "drybulb", "dry bulb temperature", "drybulb temperature",
    "outdoor temperature", "outdoor temp", "outside temperature", "outside temp", "temp out", "temperature 2m",
    "temperatur", "lufttemperatur", "mitteltemperatur", "tagesmitteltemperatur", "aussentemperatur", "temperatur der luft",
    "temperature de l air", "temperature moyenne", "temperature exterieure", "temp moyenne",
  ],
  "relative humidity": [
    "relative humidity", "rh", "humidity", "rel humidity", "rel hum", "relhum", "hum", "hu", "hurs", "rh mean", "rhmean",
    "mean relative humidity", "relative humidity mean", "humidity mean", "outdoor humidity", "outside humidity",
    "hum out", "relative humidity 2m",
    "relative feuchte", "relative luftfeuchte", "relative luftfeuchtigkeit", "luftfeuchte", "luftfeuchtigkeit", "feuchte",
    "rel feuchte", "rel luftfeuchte", "rf", "humidite relative", "humidite", "humidite moyenne", "hr",
  ],
  "dew point": ["dew point", "dewpoint", "dew", "td", "tdew", "dewpt", "dwpt", "dewp", "dew point temperature", "dewpoint temperature", "dew point 2m", "taupunkt", "taupunkttemperatur", "point de rosee", "temperature du point de rosee"],
  "wet bulb": ["wet bulb", "wetbulb", "tw", "twb", "wetb", "wet bulb temperature", "wetbulb temperature", "feuchttemperatur", "feuchtkugeltemperatur", "thermometre mouille"],
  "vapour pressure": ["vapour pressure", "vapor pressure", "water vapour pressure", "water vapor pressure", "vappr", "vp", "dampfdruck", "wasserdampfdruck", "pression de vapeur", "tension de vapeur"],
}; // biome-ignore format: one table

/** If a file has several humidity columns, the first of these is read. Rule of this project. */
export const HUMIDITY_ROLES: readonly HumidityRole[] = [
  "relative humidity",
  "dew point",
  "vapour pressure",
  "wet bulb",
];

/**
 * Splits a heading into its words and its unit.
 *
 * @param text - for example `Temperature (°C)`, `dew_point_F`, `RH [%]`
 * @returns its words in lower case, with single spaces, and its unit; null if it has none
 */
export function takeApart(text: string): Heading {
  const lower = withoutAccents(text.trim().slice(0, LONGEST_HEADING).toLowerCase());
  const bracketed = BRACKETED.exec(lower);
  const words = lower
    .replace(BRACKETED, " ")
    .split(NOT_A_WORD)
    .filter((word) => word !== "");
  if (bracketed !== null) return { text, words: words.join(" "), unit: bracketed[1]!.trim() };
  const last = words[words.length - 1];
  const unit = words.length > 1 && last !== undefined && UNIT_WORDS.has(last) ? last : null;
  return { text, words: (unit === null ? words : words.slice(0, -1)).join(" "), unit };
}

/**
 * What a column with this heading holds, by the usual headings.
 *
 * @param heading - a heading split into words and unit
 * @returns its role; null when the heading is not a usual one
 */
export function roleOf(heading: Heading): ColumnRole | null {
  return ROLE_BY_WORDS.get(heading.words) ?? null;
}

function withoutAccents(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").replaceAll("ß", "ss");
}

const BRACKETED = /[([]([^)\]]*)[)\]]/;
const NOT_A_WORD = /[^\p{L}\p{N}°%]+/u;
const UNIT_WORDS = new Set([
  "c", "f", "k", "°c", "°f", "degc", "degf", "celsius", "fahrenheit", "kelvin", "%", "pct", "percent", "fraction", "pa",
  "hpa", "kpa", "mb", "mbar", "utc", "gmt", "local", "lst",
]); // biome-ignore format: one table

const ROLE_BY_WORDS: ReadonlyMap<string, ColumnRole> = new Map(
  (Object.entries(USUAL_HEADINGS) as [ColumnRole, readonly string[]][]).flatMap(([role, headings]) =>
    headings.map((words) => [words, role] as const),
  ),
);
