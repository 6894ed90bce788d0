import { saturationPressureOverWater } from "../air/saturation-pressure.ts";
import type { HumidityColumn, RecordColumns } from "./choose-columns.ts";
import type { NumberReader } from "./number-cell.ts";
import { COLDEST_READING, SENSOR_OVERSHOOT, WARMEST_READING } from "./record-limits.ts";
import type { RecordProblems } from "./record-problems.ts";
import { inCelsius, PASCALS, SATURATION_AS } from "./units.ts";
import { vapourPressureFromWetBulb } from "./wet-bulb.ts";

/** One weather reading. */
export interface WeatherReading {
  /** [°C] */
  temperature: number;
  /** [Pa], at most saturation over water */
  vapourPressure: number;
  /** True when the record was slightly above saturation. */
  countedAsSaturated: boolean;
  /** The humidity as written, if it is a relative humidity; otherwise null. */
  writtenHumidity: number | null;
}

/** Reads one row: gives a reading, "missing" if a value is missing, or null after noting what is wrong. */
export type ReadingReader = (cells: readonly string[], line: number) => WeatherReading | "missing" | null;

/**
 * Makes a reader of the values of rows.
 *
 * @param columns - the columns of temperature and humidity
 * @param headings - their headings, for problems
 * @param readNumber - reads number cells
 * @param airPressure - mean air pressure of the station [Pa], for wet-bulb temperatures
 * @param problems - takes what is wrong
 * @returns the reader; it takes relative humidity and dew point over liquid water, even in frost, as stations record
 */
export function createReadingReader(
  columns: RecordColumns,
  headings: readonly string[],
  readNumber: NumberReader,
  airPressure: number,
  problems: RecordProblems,
): ReadingReader {
  const read = (cell: string, index: number, line: number): number | "missing" | null => {
    const value = readNumber(cell);
    if (value === "missing" || typeof value === "number") return value;
    const code = value === "not a number" ? "records-number" : "records-decimal-separator";
    problems.note(code, line, cell, { column: headings[index]! });
    return null;
  };
  return (cells, line) => {
    const { temperature: temperatureColumn, humidity } = columns;
    const temperatureCell = cells[temperatureColumn.index]!;
    const humidityCell = cells[humidity.index]!;
    const written = read(temperatureCell, temperatureColumn.index, line);
    const humidityWritten = read(humidityCell, humidity.index, line);
    if (written === null || humidityWritten === null) return null;
    if (written === "missing" || humidityWritten === "missing") return "missing";
    const temperature = inCelsius(written, temperatureColumn.unit);
    if (!isAirTemperature(temperature)) {
      const details = { column: headings[temperatureColumn.index]!, unit: temperatureColumn.unit };
      problems.note("records-temperature-range", line, temperatureCell, details);
      return null;
    }
    if (humidity.unit === "Pa" && humidityCell.includes(",")) {
      problems.note("records-number", line, humidityCell, { column: headings[humidity.index]! });
      return null;
    }
    const vapourPressure = vapourPressureOf(humidity, humidityWritten, temperature, airPressure);
    const saturation = saturationPressureOverWater(temperature);
    if (!(vapourPressure > 0 && vapourPressure <= saturation * (1 + SENSOR_OVERSHOOT))) {
      const details = { column: headings[humidity.index]!, role: humidity.role, unit: humidity.unit, temperature };
      problems.note("records-humidity-range", line, humidityCell, details);
      return null;
    }
    return {
      temperature,
      vapourPressure: Math.min(vapourPressure, saturation),
      countedAsSaturated: vapourPressure > saturation,
      writtenHumidity: humidity.role === "relative humidity" ? humidityWritten : null,
    };
  };
}

/** Vapour pressure [Pa] from the humidity column; NaN for a dew point or wet bulb that air cannot have. */
function vapourPressureOf(column: HumidityColumn, written: number, temperature: number, airPressure: number): number {
  switch (column.role) {
    case "relative humidity":
      return (written / SATURATION_AS[column.unit]) * saturationPressureOverWater(temperature);
    case "vapour pressure":
      return written * PASCALS[column.unit];
    case "dew point": {
      const dewPoint = inCelsius(written, column.unit);
      return isAirTemperature(dewPoint) ? saturationPressureOverWater(dewPoint) : Number.NaN;
    }
    case "wet bulb": {
      const wetBulb = inCelsius(written, column.unit);
      return isAirTemperature(wetBulb) ? vapourPressureFromWetBulb(temperature, wetBulb, airPressure) : Number.NaN;
    }
  }
}

function isAirTemperature(temperature: number): boolean {
  return temperature > COLDEST_READING && temperature < WARMEST_READING;
}
