import type { OutdoorClimate } from "../project/types.ts";
import type { MonthName } from "./places.ts";

/** The outdoor climate used, month by month. */
export interface ClimateResult extends Pick<OutdoorClimate, "name" | "origin" | "latitude" | "longitude" | "altitude"> {
  severity: string;
  /** Correction for the altitude of the site, if requested: [m], [K/m]; its effect is stated in the origin lines. */
  altitudeCorrection: { siteAltitude: number; lapseRate: number } | null;
  months: MonthOfAir[];
}

/** The air of one month: [°C], a fraction, [Pa]. */
export interface MonthOfAir {
  month: MonthName;
  /** [°C] */
  temperature: number;
  /** [–] */
  relativeHumidity: number;
  /** [Pa] */
  vapourPressure: number;
}

/** A room with its twelve months. */
export interface RoomResult {
  name: string;
  /** The rules for temperature and humidity, in words. */
  temperatureRule: string;
  humidityRule: string;
  source: string;
  months: MonthOfAir[];
}
