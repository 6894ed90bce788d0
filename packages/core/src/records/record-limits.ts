/** Limits of single weather readings and of a file of them. A file outside them is refused, with reasons. */

/**
 * Air temperatures between which readings are accepted [°C], both limits excluded: the records near the ground are
 * −89.2 and 56.7 (from memory).
 */
export const COLDEST_READING = -90;
export const WARMEST_READING = 60;

/**
 * Share by which a reading may exceed saturation and still count as saturated [–]: in fog, sensors read up to a few per
 * cent too much (common practice). Above this, the reading is impossible.
 */
export const SENSOR_OVERSHOOT = 0.05;

/** Least share of a calendar month's readings that must be present [–]. Rule of this project. */
export const LEAST_COMPLETE = 0.8;

/** Greatest share of rows that may contradict an earlier one of the same time [–]; a clock change makes 1 in 10 000. */
export const MOST_CONTRADICTING = 0.01;

/** Share by which readings may outnumber those expected; with more, their interval counts as changing [–]. */
export const MOST_SURPLUS = 0.02;

/** Longest time between readings [s]: one day. Means over a longer time do not show humid and dry hours. */
export const LONGEST_INTERVAL = 86_400;

/** Number of lines at the head of a file in which its headings are sought. */
export const LINES_BEFORE_HEADINGS = 60;

/** Longest line accepted [characters]. */
export const LONGEST_RECORD_LINE = 20_000;

/**
 * How many rows may wait for a date that shows whether day or month comes first. Readings every minute reach the 13th
 * of a month after 17 280 rows. If none of these dates shows it, the user is asked for the order.
 */
export const MOST_ROWS_BEFORE_ORDER = 20_000;

/** Longest cell that can be a date, a time of day or a heading [characters]. */
export const LONGEST_DATE = 60;
export const LONGEST_HEADING = 200;

/** Most line numbers that are named for one kind of problem. */
export const LINES_NAMED = 5;
