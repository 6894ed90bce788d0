import { MONTHS_PER_YEAR } from "../constants.ts";
import { checkRoom } from "../given/surroundings.ts";
import type { HumidityRule, Room, TemperatureRule } from "../project/types.ts";
import { requireObject } from "../require.ts";
import { checked } from "./given-or-thrown.ts";

/** How a room is heated and used; all temperatures [°C], relative humidities as fractions. */
export interface RoomValues {
  /** (default "indoor") */
  name?: string;
  /** Set point [°C]. Instead give `temperature` (one value or twelve) or `unheated`. */
  heating?: number;
  /** [d a week] */
  heatedDays?: number;
  /** [°C] */
  temperature?: number | readonly number[];
  unheated?: boolean;
  /** Set point of cooling [°C]. */
  cooling?: number;
  /** Humidity class of ISO 13788 (default 3); `relativeHumidity` (one value or twelve) takes its place. */
  humidityClass?: 1 | 2 | 3 | 4 | 5;
  /** [–] */
  relativeHumidity?: number | readonly number[];
  /** Relative humidity in the months in which the room is cooled [–]. */
  humidityWhenCooled?: number;
  burstsOfSteam?: boolean;
  pool?: boolean;
}

/**
 * A room by its heating and humidity.
 *
 * @param values - temperature and humidity; without them, a room of class 3 heated to 20 °C
 * @returns the room
 * @throws ProblemsError with every problem, in the words of the project file's reader
 * @example room({ heating: 19 }).temperature // { kind: "heated", setPoint: 19, daysPerWeek: 7, otherwise: null }
 */
export function room(values: RoomValues = {}): Room {
  requireObject(values, "values");
  const made: Room = {
    name: values.name ?? "indoor",
    temperature: temperatureOf(values),
    cooling: values.cooling ?? null,
    humidity: humidityOf(values),
    humidityWhenCooled: values.humidityWhenCooled ?? null,
    burstsOfSteam: values.burstsOfSteam ?? false,
    pool: values.pool ?? false,
  };
  return checked(made, checkRoom, made.name);
}

const USUAL_SET_POINT = 20;

function temperatureOf({
  heating = USUAL_SET_POINT,
  heatedDays = 7,
  temperature,
  unheated,
}: RoomValues): TemperatureRule {
  if (unheated === true) return { kind: "unheated" };
  if (temperature !== undefined) return { kind: "held", months: twelve(temperature) };
  return { kind: "heated", setPoint: heating, daysPerWeek: heatedDays, otherwise: null };
}

function humidityOf({ relativeHumidity, humidityClass = 3, unheated }: RoomValues): HumidityRule {
  if (relativeHumidity !== undefined) return { kind: "months", relativeHumidity: twelve(relativeHumidity) };
  return unheated === true ? { kind: "as outdoors" } : { kind: "class", class: humidityClass };
}

function twelve(values: number | readonly number[]): readonly number[] {
  return typeof values === "number" ? Array<number>(MONTHS_PER_YEAR).fill(values) : values;
}
