/** A room: the rules for its temperature and its humidity. */
export interface Room {
  name: string;
  temperature: TemperatureRule;
  /** Upper limit on θi [°C]; null without cooling. */
  cooling: number | null;
  humidity: HumidityRule;
  /** Relative humidity in the months in which it is cooled below outdoors [–]; null if `humidity` applies there too. */
  humidityWhenCooled: number | null;
  burstsOfSteam: boolean;
  pool: boolean;
}

/** The rule for a room's temperature [°C]. */
export type TemperatureRule =
  | { kind: "heated"; setPoint: number; daysPerWeek: number; otherwise: number | null }
  | { kind: "held"; months: readonly number[] }
  | { kind: "by outdoor temperature" }
  | { kind: "unheated" };

/** The rule for a room's humidity. */
export type HumidityRule =
  | { kind: "class"; class: 1 | 2 | 3 | 4 | 5 }
  | { kind: "months"; relativeHumidity: readonly number[] }
  | { kind: "by outdoor temperature"; level: "normal" | "high" }
  /** production [kg/s], volume [m³], air changes [1/s] */
  | { kind: "balance"; production: number; volume: number; airChanges: number }
  | { kind: "as outdoors" };
