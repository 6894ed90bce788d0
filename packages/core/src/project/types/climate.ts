/** Twelve months of air: temperature [°C], vapour pressure [Pa]; January first. */
export interface AirMonths {
  /** [°C] */
  temperature: readonly number[];
  /** [Pa] */
  vapourPressure: readonly number[];
}

/** A warmer or colder year: its name, and the temperature added to the mean year [K]. */
export interface Severity {
  name: string;
  /** [K] */
  offset: number;
}

/** A place's twelve monthly means, with the lines that name their source. */
export interface OutdoorClimate {
  name: string;
  /** Header lines of the table, without `#`. */
  origin: readonly string[];
  /** [°] */
  latitude: number | null;
  /** [°] */
  longitude: number | null;
  /** [m] */
  altitude: number | null;
  /** [°C] */
  temperature: readonly number[];
  /** Fractions 0 to 1 [–]. */
  relativeHumidity: readonly number[];
}

/** Correction of the climate for the site's height. */
export interface AltitudeCorrection {
  /** Height of the site [m]. */
  altitude: number;
  /** [K/m] */
  lapseRate: number;
}
