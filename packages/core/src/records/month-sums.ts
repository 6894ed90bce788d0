import { MONTHS_PER_YEAR } from "../constants.ts";
import { type Moment, YEAR_FOR_NONE } from "./moment.ts";
import type { WeatherReading } from "./read-reading.ts";

/** The readings of one month of one year. */
export interface MonthSum {
  year: number | null;
  /** 1 to 12 */
  month: number;
  used: number;
  /** Σθ [°C] and Σp [Pa] of the readings used. */
  temperature: number;
  vapourPressure: number;
}

/** Running sums of weather readings, with counts of what was found in them. */
export interface MonthSums {
  /** By year and month, in the order found. */
  months: Map<number, MonthSum>;
  first: Moment | null;
  last: Moment | null;
  /** How often each time between neighbouring rows [s] occurred. */
  steps: Map<number, number>;
  rows: number;
  /** Readings refused in each calendar month, January first. */
  refused: number[];
  repeated: number;
  contradicting: number;
  countedAsSaturated: number;
  /** Greatest relative humidity as written. */
  greatestWrittenHumidity: number;
}

/** Adds up readings; each moment counts once. */
export interface MonthSummer {
  /** Takes the time of a row, with or without a reading. */
  see(moment: Moment): void;
  /** Adds a reading; a second one at the same time is counted and left out. */
  add(moment: Moment, reading: WeatherReading): void;
  /** Takes a reading that was refused; it does not count as missing. */
  refuse(moment: Moment): void;
  sums: MonthSums;
}

/**
 * Makes empty sums.
 *
 * @returns the summer; of each reading it keeps one number only
 */
export function createMonthSummer(): MonthSummer {
  const seen = new Map<number, Map<number, number>>();
  let previousSecond: number | null = null;
  const sums: MonthSums = {
    months: new Map(),
    first: null,
    last: null,
    steps: new Map(),
    rows: 0,
    refused: Array<number>(MONTHS_PER_YEAR).fill(0),
    repeated: 0,
    contradicting: 0,
    countedAsSaturated: 0,
    greatestWrittenHumidity: 0,
  };
  return {
    sums,
    see(moment): void {
      sums.rows += 1;
      const second = secondsFromEpoch(moment);
      if (sums.first === null || second < secondsFromEpoch(sums.first)) sums.first = moment;
      if (sums.last === null || second > secondsFromEpoch(sums.last)) sums.last = moment;
      const step = previousSecond === null ? 0 : Math.abs(second - previousSecond);
      if (step > 0) sums.steps.set(step, (sums.steps.get(step) ?? 0) + 1);
      previousSecond = second;
    },
    refuse(moment): void {
      sums.refused[moment.month - 1] = sums.refused[moment.month - 1]! + 1;
    },
    add(moment, reading): void {
      const key = monthKey(moment);
      const times = seen.get(key) ?? new Map<number, number>();
      seen.set(key, times);
      const time = moment.day * SECONDS_OF_LONGEST_DAY + moment.second;
      const earlier = times.get(time);
      if (earlier !== undefined) {
        if (earlier === fingerprint(reading)) sums.repeated += 1;
        else sums.contradicting += 1;
        return;
      }
      times.set(time, fingerprint(reading));
      const sum = sums.months.get(key) ?? {
        year: moment.year,
        month: moment.month,
        used: 0,
        temperature: 0,
        vapourPressure: 0,
      };
      sums.months.set(key, sum);
      sum.used += 1;
      sum.temperature += reading.temperature;
      sum.vapourPressure += reading.vapourPressure;
      if (reading.countedAsSaturated) sums.countedAsSaturated += 1;
      sums.greatestWrittenHumidity = Math.max(sums.greatestWrittenHumidity, reading.writtenHumidity ?? 0);
    },
  };
}

/**
 * Seconds from the start of 1970 to a moment, by the records' own clock.
 *
 * @param moment - any moment; without a year, February has 28 days
 * @returns the time [s]
 */
export function secondsFromEpoch(moment: Moment): number {
  const milliseconds = Date.UTC(moment.year ?? YEAR_FOR_NONE, moment.month - 1, moment.day);
  return milliseconds / MILLISECONDS_PER_SECOND + moment.second;
}

const MILLISECONDS_PER_SECOND = 1000;
/** More than the seconds of a day, so that 24:00 and the next day's 0:00 differ. */
const SECONDS_OF_LONGEST_DAY = 100_000;

function monthKey(moment: Moment): number {
  return (moment.year ?? YEAR_FOR_NONE) * MONTHS_PER_YEAR + moment.month - 1;
}

/** A number that tells two readings of the same time apart, to 0.01 K and 0.1 Pa. */
function fingerprint(reading: WeatherReading): number {
  return Math.round(reading.temperature * 100) * 1e6 + Math.round(reading.vapourPressure * 10);
}
