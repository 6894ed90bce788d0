/** Rows of weather records made up for tests: a mild year whose values are known in advance. */

/** A date and hour with the made-up reading of that hour. */
export interface MadeUpReading {
  year: number;
  month: number;
  day: number;
  hour: number;
  temperature: number;
  humidity: number;
}

const FIRST_TEMPERATURE = 5;

/** Temperature of a calendar month in the made-up year [°C]: 5, 6, … 16 °C. */
export const temperatureOf = (month: number): number => FIRST_TEMPERATURE + month - 1;

/** Relative humidity of every made-up reading [%]. */
export const MADE_UP_HUMIDITY = 80;

/** Readings of whole years, each month at its own temperature and 80 %. */
export function madeUpReadings(years: readonly number[], hours: readonly number[] = [0]): MadeUpReading[] {
  return years.flatMap((year) =>
    Array.from({ length: 12 }, (_, index) => index + 1).flatMap((month) => {
      const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
      return Array.from({ length: days }, (_, day) => day + 1).flatMap((day) =>
        hours.map((hour) => ({
          year,
          month,
          day,
          hour,
          temperature: temperatureOf(month),
          humidity: MADE_UP_HUMIDITY,
        })),
      );
    }),
  );
}

/** Records with ISO dates, one reading a row. */
export function isoRecords(readings: readonly MadeUpReading[], head = "date,temperature,rh"): string {
  const rows = readings.map((reading) => `${isoTime(reading)},${reading.temperature},${reading.humidity}`);
  return [head, ...rows, ""].join("\n");
}

/** `2001-01-31`, with the hour behind it where it is not 0. */
export function isoTime({ year, month, day, hour }: MadeUpReading): string {
  const date = [year, two(month), two(day)].join("-");
  return hour === 0 ? date : `${date} ${two(hour)}:00`;
}

export const two = (number: number): string => String(number).padStart(2, "0");

export const EVERY_HOUR: readonly number[] = Array.from({ length: 24 }, (_, hour) => hour);
