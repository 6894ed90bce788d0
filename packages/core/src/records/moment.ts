import { MONTH_NAMES, SECONDS_PER_DAY } from "../constants.ts";
import { LONGEST_DATE } from "./record-limits.ts";
import type { DateOrder } from "./types.ts";

/** The time of a reading, by the clock of the records; time zones are not converted. */
export interface Moment {
  /** Null if the records do not give the year. */
  year: number | null;
  /** 1 to 12 */
  month: number;
  /** 1 to 31 */
  day: number;
  /** 0 to 86 400: midnight written as 24:00 belongs to the day that ends then. */
  second: number;
}

/** A day of the calendar. */
export type CalendarDay = Omit<Moment, "second">;

/** Why a date or time could not be understood. */
export type MomentFault = "date" | "two-digit year" | "order of day and month" | "day of month" | "time";

/** The year used where none is given; its February has 28 days. */
export const YEAR_FOR_NONE = 2001;

/**
 * Reads a date, with or without a time of day.
 *
 * @param text - `2000-01-31`, `20000131`, `31.01.2000`, `31/01/2000`, `31 Jan 2000`, `Jan 31, 2000`, each with an
 *   optional time after a space or T; also `2000013113` and `200001311330`
 * @param order - which number comes first in `03/04/2005`; null when not known (with dots, always the day)
 * @returns the moment (second 0 without a time), or what is wrong
 */
export function readMoment(text: string, order: DateOrder | null): Moment | MomentFault {
  if (text.length > LONGEST_DATE) return "date";
  const split = WITH_CLOCK.exec(text) ?? WITH_HOUR.exec(text) ?? COMPACT_WITH_HOUR.exec(text);
  const [date, time] = split === null ? [text, null] : [split[1]!, split[2]!];
  const day = readDay(date, order);
  if (typeof day === "string") return day;
  const second = time === null ? 0 : secondOfDay(time);
  return second === null ? "time" : { ...day, second };
}

/**
 * Reads a time of day.
 *
 * @param text - `13`, `13:00`, `1:00 pm`, `13:00:00`, `1300`, with an optional zone, which is ignored
 * @returns seconds since midnight, up to 86 400 for 24:00; null when it is not a time
 * @example secondOfDay("1:30 pm") // 48600
 */
export function secondOfDay(text: string): number | null {
  if (text.length > LONGEST_DATE) return null;
  const match = CLOCK.exec(text.trim())?.groups ?? COMPACT_CLOCK.exec(text.trim())?.groups;
  if (match === undefined) return null;
  const hour = hourOfDay(Number(match.hour), match.half?.toLowerCase());
  const minute = Number(match.minute ?? 0);
  const second = Number(match.second ?? 0);
  if (hour === null || minute >= MINUTES_PER_HOUR || second >= SECONDS_PER_MINUTE) return null;
  const total = (hour * MINUTES_PER_HOUR + minute) * SECONDS_PER_MINUTE + second;
  return total <= SECONDS_PER_DAY ? total : null;
}

/**
 * Checks that a day exists in the calendar.
 *
 * @param year - null counts as a year with 28 days in February
 * @param month - 1 to 12
 * @param day - 1 to 31
 * @returns the day, or null when it does not exist
 */
export function calendarDay(year: number | null, month: number, day: number): CalendarDay | null {
  if (!(month >= 1 && month <= MONTH_NAMES.length && day >= 1)) return null;
  return day <= daysInMonth(year, month) ? { year, month, day } : null;
}

/**
 * Days in a month of a given year.
 *
 * @param year - null counts as a year with 28 days in February
 * @param month - 1 to 12
 * @returns 28 to 31
 * @example daysInMonth(2000, 2) // 29
 */
export function daysInMonth(year: number | null, month: number): number {
  return new Date(Date.UTC(year ?? YEAR_FOR_NONE, month, 0)).getUTCDate();
}

const SECONDS_PER_MINUTE = 60;
const MINUTES_PER_HOUR = 60;
const NOON = 12;
const LAST_HOUR = 24;

/** A date and a time of day in one text: a time with a colon, or an ISO or compact date followed by hours. */
const WITH_CLOCK = /^(.+?)(?:T|\s+)(\d{1,2}:\d{2}.*)$/;
const WITH_HOUR = /^(\d{4}-\d{2}-\d{2})(?:T|\s+)(\d{2}(?:\d{2})?Z?)$/;
const COMPACT_WITH_HOUR = /^(\d{8})[T:\s]?(\d{2}(?:\d{2})?Z?)$/;

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const COMPACT = /^(\d{4})(\d{2})(\d{2})$/;
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/;
const DAY_AND_MONTH_NAME = /^(\d{1,2})[-\s.]+([A-Za-z]{3,9})[-\s.,]+(\d{4})$/;
const MONTH_NAME_AND_DAY = /^([A-Za-z]{3,9})[-\s.]+(\d{1,2}),?[-\s]+(\d{4})$/;
const TWO_DIGIT_YEAR = /^\d{1,2}[-/.]\d{1,2}[-/.]\d{2}$/;

const CLOCK =
  /^(?<hour>\d{1,2})(?::(?<minute>\d{2})(?::(?<second>\d{2})(?:[.,]\d+)?)?)?\s*(?<half>am|pm)?\s*(?:Z|UTC|GMT|[+-]\d{2}:?\d{2})?$/i;
const COMPACT_CLOCK = /^(?<hour>\d{1,2})(?<minute>\d{2})Z?$/i;

function readDay(text: string, order: DateOrder | null): CalendarDay | MomentFault {
  const yearFirst = YEAR_FIRST.exec(text) ?? COMPACT.exec(text);
  if (yearFirst !== null) return known(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  const yearLast = YEAR_LAST.exec(text);
  if (yearLast !== null) return readYearLast(yearLast, order);
  const dayName = DAY_AND_MONTH_NAME.exec(text);
  if (dayName !== null) return known(Number(dayName[3]), monthNumber(dayName[2]!), Number(dayName[1]));
  const nameDay = MONTH_NAME_AND_DAY.exec(text);
  if (nameDay !== null) return known(Number(nameDay[3]), monthNumber(nameDay[1]!), Number(nameDay[2]));
  return TWO_DIGIT_YEAR.test(text) ? "two-digit year" : "date";
}

function readYearLast(match: RegExpExecArray, order: DateOrder | null): CalendarDay | MomentFault {
  const [, first, separator, second, year] = match;
  const decided = order ?? (separator === "." ? "day first" : null);
  if (decided === null) return "order of day and month";
  const [day, month] = decided === "day first" ? [first, second] : [second, first];
  return known(Number(year), Number(month), Number(day));
}

function known(year: number, month: number, day: number): CalendarDay | MomentFault {
  return calendarDay(year, month, day) ?? "day of month";
}

function monthNumber(name: string): number {
  const word = name.toLowerCase();
  return MONTH_NAMES.findIndex((month) => month.toLowerCase() === word || month.slice(0, 3).toLowerCase() === word) + 1;
}

function hourOfDay(hour: number, half: string | undefined): number | null {
  if (half === undefined) return hour <= LAST_HOUR ? hour : null;
  if (hour < 1 || hour > NOON) return null;
  return (hour % NOON) + (half === "pm" ? NOON : 0);
}
