import type { ColumnRole, DateOrder, HumidityUnit, PressureUnit, RecordOptions, TemperatureUnit } from "@warmside/core";
import { CommandProblem } from "../command-result.ts";

/** Options of `warmside climate make` about the records, as written. */
export interface WrittenRecordOptions {
  column?: readonly string[];
  dateOrder?: string;
  temperatureUnit?: string;
  humidityUnit?: string;
  pressureUnit?: string;
}

/** What `--column` takes before the equals sign. */
export const COLUMN_ROLES: readonly ColumnRole[] = [
  "date",
  "time",
  "year",
  "month",
  "day",
  "hour",
  "minute",
  "temperature",
  "relative humidity",
  "dew point",
  "wet bulb",
  "vapour pressure",
];

/**
 * Understands the options about records.
 *
 * @param written - as on the command line
 * @param altitude - height of the station [m]; null when not told
 * @returns options for reading the records
 * @throws CommandProblem when one is none of its choices
 */
export function recordOptionsOf(written: WrittenRecordOptions, altitude: number | null): RecordOptions {
  return {
    columns: columnsOf(written.column ?? []),
    dateOrder: choice("--date-order", written.dateOrder, DATE_ORDERS),
    temperatureUnit: choice("--temperature-unit", written.temperatureUnit, TEMPERATURE_UNITS),
    humidityUnit: choice("--humidity-unit", written.humidityUnit, HUMIDITY_UNITS),
    pressureUnit: choice("--pressure-unit", written.pressureUnit, PRESSURE_UNITS),
    altitude,
  };
}

const DATE_ORDERS: Readonly<Record<string, DateOrder>> = { "day first": "day first", "month first": "month first" };
const TEMPERATURE_UNITS: Readonly<Record<string, TemperatureUnit>> = { C: "°C", F: "°F", K: "K" };
const HUMIDITY_UNITS: Readonly<Record<string, HumidityUnit>> = { "%": "%", fraction: "fraction" };
const PRESSURE_UNITS: Readonly<Record<string, PressureUnit>> = { Pa: "Pa", hPa: "hPa", kPa: "kPa" };

function choice<Value>(
  option: string,
  written: string | undefined,
  choices: Readonly<Record<string, Value>>,
): Value | undefined {
  if (written === undefined) return undefined;
  const wanted = written.trim().replace("°", "").toLowerCase();
  const name = Object.keys(choices).find((known) => known.toLowerCase() === wanted);
  if (name !== undefined) return choices[name];
  const known = Object.keys(choices).join(", ");
  throw new CommandProblem("option-unreadable", `${option} is "${written}", but takes one of: ${known}.`);
}

function columnsOf(written: readonly string[]): Partial<Record<ColumnRole, string>> {
  const columns: Partial<Record<ColumnRole, string>> = {};
  for (const pair of written) {
    const [, name = "", heading = ""] = ROLE_AND_HEADING.exec(pair) ?? [];
    const role = COLUMN_ROLES.find((known) => known === name.trim().toLowerCase());
    if (role === undefined || heading.trim() === "") {
      throw new CommandProblem(
        "option-unreadable",
        `--column is "${pair}". Write what the column holds and its heading, for example --column "temperature=T air". ` +
          `It can hold: ${COLUMN_ROLES.join(", ")}.`,
      );
    }
    columns[role] = heading.trim();
  }
  return columns;
}

const ROLE_AND_HEADING = /^([^=]*)=(.*)$/s;
