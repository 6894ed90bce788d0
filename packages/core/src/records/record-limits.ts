/** Limits of single weather readings and of a file of them; outside them the file is refused with reasons. */

/** Coldest and warmest air temperatures taken [°C], themselves excluded: the records near the ground are −89.2 and 56.7 (from memory). */
export const COLDEST_READING = -90;
export const WARMEST_READING = 60;

/**
 * Part by which a reading may pass saturation and still be counted as saturated [–]: sensors in fog read up to a few
 * per cent too much (common practice). Beyond it the reading is impossible.
 */
export const SENSOR_OVERSHOOT = 0.05;

/** Least part of a calendar month's readings that must be there [–]. Rule of this project. */
export const LEAST_COMPLETE = 0.8;

/** Greatest part of rows that may contradict an earlier row of the same time [–]: a change of clocks makes one in ten thousand. */
export const MOST_CONTRADICTING = 0.01;

/** Part by which readings may outnumber those expected before their interval counts as changing [–]. */
export const MOST_SURPLUS = 0.02;

/** Longest time between readings [s]: one day. Means of longer spells have lost the humid and the dry hours. */
export const LONGEST_INTERVAL = 86_400;

/** Lines at the head of a file in which its headings are looked for. */
export const LINES_BEFORE_HEADINGS = 60;

/** Longest line taken [characters]. */
export const LONGEST_RECORD_LINE = 20_000;

/**
 * Rows that may wait for a date which tells day from month: readings every minute reach the 13th of a month after
 * 17 280 of them. Where none of these tells, the order is asked for.
 */
export const MOST_ROWS_BEFORE_ORDER = 20_000;

/** Longest cell that can be a date, a time of day or a heading [characters]. */
export const LONGEST_DATE = 60;
export const LONGEST_HEADING = 200;

/** Line numbers that are named for one kind of problem. */
export const LINES_NAMED = 5;
