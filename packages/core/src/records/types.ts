/** What a column of weather records can hold. */
export type ColumnRole =
  | "date"
  | "time"
  | "year"
  | "month"
  | "day"
  | "hour"
  | "minute"
  | "temperature"
  | "relative humidity"
  | "dew point"
  | "wet bulb"
  | "vapour pressure";

/** The roles that give the humidity of the air; one is needed. */
export type HumidityRole = "relative humidity" | "dew point" | "wet bulb" | "vapour pressure";

/** Which number comes first in a date such as 03/04/2005. */
export type DateOrder = "day first" | "month first";

/** Units of temperature that records may be in. */
export type TemperatureUnit = "°C" | "°F" | "K";
/** Forms of relative humidity that records may be in. */
export type HumidityUnit = "%" | "fraction";
/** Units of vapour pressure that records may be in. */
export type PressureUnit = "Pa" | "hPa" | "kPa";

/** Options for reading records; those left out are taken from headings and values where possible. */
export interface RecordOptions {
  /** Headings of columns, by what they hold. */
  columns?: Partial<Record<ColumnRole, string>>;
  dateOrder?: DateOrder;
  temperatureUnit?: TemperatureUnit;
  humidityUnit?: HumidityUnit;
  pressureUnit?: PressureUnit;
  /** Height of the station [m]; needed with wet-bulb temperatures. */
  altitude?: number | null;
}

/** One calendar month of weather records, over all years. */
export interface MonthOfRecords {
  /** Mean of the readings [°C], to 0.01 K. */
  temperature: number;
  /** Mean of the readings' own vapour pressures [Pa]. */
  vapourPressure: number;
  /** The mean vapour pressure as a fraction of saturation at the mean temperature, at most 1 [–]. */
  relativeHumidity: number;
  /** True when that fraction exceeded 1 and was limited to 1. */
  heldAtSaturation: boolean;
  /** Count of the readings used. */
  used: number;
  /** Count of the readings that the period should have. */
  expected: number;
}

/** Weather records as twelve months, with all that was done to them. */
export interface RecordMonths {
  months: readonly MonthOfRecords[];
  /** First and last day: `2000-01-31`, or `01-31` if the records do not give the year. */
  firstDay: string;
  lastDay: string;
  /** True if each month comes from one year only, but not all from the same twelve months; or no year is named. */
  typicalYear: boolean;
  /** Time between readings [s]. */
  interval: number;
  /** Count of the rows read. */
  rows: number;
  /** Count of the readings used. */
  used: number;
  /** Count of the expected readings that are missing. */
  missing: number;
  /** Count of rows that repeat an earlier time with the same values. */
  repeated: number;
  /** Count of rows that repeat an earlier time with other values; the earlier row counts. */
  contradicting: number;
  /** Count of readings slightly above saturation, taken as saturated. */
  countedAsSaturated: number;
  /** The columns that were read, in words. */
  columnsRead: string;
}
