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

/** The roles that tell how humid the air is; one is needed. */
export type HumidityRole = "relative humidity" | "dew point" | "wet bulb" | "vapour pressure";

/** Which number of a date such as 03/04/2005 comes first. */
export type DateOrder = "day first" | "month first";

/** Units of temperature that records may be in. */
export type TemperatureUnit = "°C" | "°F" | "K";
/** Forms of relative humidity that records may be in. */
export type HumidityUnit = "%" | "fraction";
/** Units of vapour pressure that records may be in. */
export type PressureUnit = "Pa" | "hPa" | "kPa";

/** What the reader of records is told; all of it is guessed from headings and values when left out. */
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
  /** The fraction of saturation at the mean temperature that is the mean vapour pressure, at most 1 [–]. */
  relativeHumidity: number;
  /** True when that fraction passed 1 and was held there. */
  heldAtSaturation: boolean;
  /** Count of the readings used. */
  used: number;
  /** Count of the readings that the period should have. */
  expected: number;
}

/** Weather records as twelve months, with everything that was done to them. */
export interface RecordMonths {
  months: readonly MonthOfRecords[];
  /** First and last day, `2000-01-31`, or `01-31` where records name no year. */
  firstDay: string;
  lastDay: string;
  /** True when each calendar month comes from one year only, and not all from one run of twelve months. */
  typicalYear: boolean;
  /** Time between readings [s]. */
  interval: number;
  /** Count of the rows read. */
  rows: number;
  /** Count of the readings used. */
  used: number;
  /** Count of the readings missing of those expected. */
  missing: number;
  /** Count of the rows at a time already read, with the same values. */
  repeated: number;
  /** Count of those with other values: the first counts. */
  contradicting: number;
  /** Count of the readings a little over saturation that were counted as saturated. */
  countedAsSaturated: number;
  /** The columns that were read, in words. */
  columnsRead: string;
}
