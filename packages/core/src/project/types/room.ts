/** How a room's air is told: temperature rule and humidity rule. */
export interface Room {
  name: string;
  temperature: TemperatureRule;
  /** Cap on θi [°C]; null without cooling. */
  cooling: number | null;
  humidity: HumidityRule;
  /** Relative humidity in the months in which it is kept cooler than outdoors [–]; null: `humidity` holds there too. */
  humidityWhenCooled: number | null;
  burstsOfSteam: boolean;
  pool: boolean;
}

/** How the temperature of a room comes about [°C]. */
export type TemperatureRule =
  | { kind: "heated"; setPoint: number; daysPerWeek: number; otherwise: number | null }
  | { kind: "held"; months: readonly number[] }
  | { kind: "by outdoor temperature" }
  | { kind: "unheated" };

/** How the humidity of a room comes about. */
export type HumidityRule =
  | { kind: "class"; class: 1 | 2 | 3 | 4 | 5 }
  | { kind: "months"; relativeHumidity: readonly number[] }
  | { kind: "by outdoor temperature"; level: "normal" | "high" }
  /** production [kg/s], volume [m³], air changes [1/s] */
  | { kind: "balance"; production: number; volume: number; airChanges: number }
  | { kind: "as outdoors" };
