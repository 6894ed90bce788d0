import { type Heading, HUMIDITY_ROLES, roleOf, takeApart } from "./headings.ts";
import type { ColumnRole, HumidityRole, HumidityUnit, PressureUnit, RecordOptions, TemperatureUnit } from "./types.ts";
import { humidityUnitOf, pressureUnitOf, temperatureUnitOf } from "./units.ts";

/** The columns of a reading's time: one with a date (and often a time), or one for each part. Indices from 0. */
export type TimeColumns =
  | { kind: "date"; date: number; time: number | null }
  | { kind: "parts"; year: number | null; month: number; day: number; hour: number | null; minute: number | null };

/** The column of a reading's humidity, and its unit. */
export type HumidityColumn =
  | { role: "relative humidity"; index: number; unit: HumidityUnit }
  | { role: "dew point" | "wet bulb"; index: number; unit: TemperatureUnit }
  | { role: "vapour pressure"; index: number; unit: PressureUnit };

/** The columns that are read. */
export interface RecordColumns {
  time: TimeColumns;
  temperature: { index: number; unit: TemperatureUnit };
  humidity: HumidityColumn;
}

/** Why no columns could be chosen. */
export interface ColumnFault {
  code: "records-column-named-missing" | "records-column-missing" | "records-column-ambiguous" | "records-unit-missing";
  details: Record<string, string | readonly string[]>;
}

/**
 * Chooses the columns of weather records: those named in the options, and the others by the usual headings.
 *
 * @param texts - the headings as written
 * @param options - columns by name, and units that the headings leave out
 * @returns the columns, or all reasons why they cannot be chosen
 */
export function chooseColumns(texts: readonly string[], options: RecordOptions): RecordColumns | ColumnFault[] {
  const headings = texts.map(takeApart);
  const faults: ColumnFault[] = [];
  const find = (role: ColumnRole): number | null => findColumn(headings, role, options, faults);
  const time = chooseTime(find);
  const temperature = find("temperature");
  const humidityRole = chooseHumidityRole(headings, options);
  const humidity = humidityRole === null ? null : find(humidityRole);
  const ambiguous = (role: ColumnRole): boolean => faults.some((fault) => fault.details.role === role);
  const missing = (role: string): void => {
    faults.push({ code: "records-column-missing", details: { role, headings: texts } });
  };
  if (time === null && !ambiguous("date")) missing("date");
  if (temperature === null && !ambiguous("temperature")) missing("temperature");
  if (humidity === null && (humidityRole === null || !ambiguous(humidityRole))) missing("humidity");
  if (faults.length > 0 || time === null || temperature === null || humidity === null) return faults;
  const temperatureUnit = options.temperatureUnit ?? temperatureUnitOf(headings[temperature]!.unit) ?? "°C";
  const humidityColumn = withUnit(humidityRole!, humidity, headings[humidity]!, temperatureUnit, options);
  if (humidityColumn === null) {
    return [{ code: "records-unit-missing", details: { role: "vapour pressure", heading: texts[humidity]! } }];
  }
  return { time, temperature: { index: temperature, unit: temperatureUnit }, humidity: humidityColumn };
}

/**
 * Names the chosen columns in words, for the head of the table made from them.
 *
 * @param columns - the columns
 * @param headings - the headings as written
 * @returns for example `temperature from “temp” [°C], relative humidity from “rh” [%]`
 */
export function columnsInWords(columns: RecordColumns, headings: readonly string[]): string {
  const { temperature, humidity } = columns;
  return (
    `temperature from “${headings[temperature.index]!}” [${temperature.unit}], ` +
    `${humidity.role} from “${headings[humidity.index]!}” [${humidity.unit}]`
  );
}

function findColumn(
  headings: readonly Heading[],
  role: ColumnRole,
  options: RecordOptions,
  faults: ColumnFault[],
): number | null {
  const named = options.columns?.[role];
  const fits = (heading: Heading, index: number): boolean =>
    named === undefined ? roleOf(heading) === role : sameText(heading.text, named) || sameText(byNumber(index), named);
  const indices = headings.flatMap((heading, index) => (fits(heading, index) ? [index] : []));
  const texts = headings.map((heading) => heading.text);
  if (named !== undefined && indices.length === 0) {
    faults.push({ code: "records-column-named-missing", details: { role, named, headings: texts } });
  }
  if (indices.length > 1) {
    const isAlone = (index: number): boolean =>
      indices.every((other) => other === index || !sameText(texts[other]!, texts[index]!));
    const choices = indices.map((index) => (isAlone(index) ? texts[index]! : byNumber(index)));
    faults.push({ code: "records-column-ambiguous", details: { role, choices } });
  }
  return indices.length === 1 ? indices[0]! : null;
}

/** Chooses a date column, or month and day. A time column without them must hold dates with times. */
function chooseTime(find: (role: ColumnRole) => number | null): TimeColumns | null {
  const date = find("date");
  const time = find("time");
  if (date !== null) return { kind: "date", date, time: time ?? find("hour") };
  const month = find("month");
  const day = find("day");
  if (month !== null && day !== null) {
    return { kind: "parts", year: find("year"), month, day, hour: find("hour") ?? time, minute: find("minute") };
  }
  return time === null ? null : { kind: "date", date: time, time: null };
}

function chooseHumidityRole(headings: readonly Heading[], options: RecordOptions): HumidityRole | null {
  const named = HUMIDITY_ROLES.find((role) => options.columns?.[role] !== undefined);
  const usual = HUMIDITY_ROLES.find((role) => headings.some((heading) => roleOf(heading) === role));
  return named ?? usual ?? null;
}

function withUnit(
  role: HumidityRole,
  index: number,
  heading: Heading,
  temperatureUnit: TemperatureUnit,
  options: RecordOptions,
): HumidityColumn | null {
  switch (role) {
    case "relative humidity":
      return { role, index, unit: options.humidityUnit ?? humidityUnitOf(heading.unit) ?? "%" };
    case "dew point":
    case "wet bulb":
      return { role, index, unit: options.temperatureUnit ?? temperatureUnitOf(heading.unit) ?? temperatureUnit };
    case "vapour pressure": {
      const unit = options.pressureUnit ?? pressureUnitOf(heading.unit);
      return unit === null ? null : { role, index, unit };
    }
  }
}

/** Names a column by its number, where several have the same heading. */
function byNumber(index: number): string {
  return `column ${index + 1}`;
}

function sameText(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
