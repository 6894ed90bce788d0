/** Limits of monthly weather. A table with values outside them is refused, never trimmed. */

/** Coldest monthly mean accepted [°C]: the Antarctic plateau comes near −70 (from memory). */
export const COLDEST_MONTH = -80;

/** Warmest monthly mean accepted [°C]: the hottest deserts stay near 42 (from memory). */
export const WARMEST_MONTH = 55;

/** Least monthly relative humidity accepted [%]: no place on Earth has a month under 1 %. Catches fractions. */
export const LEAST_HUMIDITY_PERCENT = 1;

/** Greatest monthly relative humidity accepted [%]. Source: definition of saturation. */
export const GREATEST_HUMIDITY_PERCENT = 100;

/** Lowest and highest places with weather records [m]: the Dead Sea shore and the highest summits (from memory). */
export const LOWEST_ALTITUDE = -500;
export const HIGHEST_ALTITUDE = 9000;

/** Longest text accepted as a climate table [characters]; a real one has about a thousand. */
export const LONGEST_CLIMATE_TABLE = 200_000;

/** Most rows of a climate table that are read: a file with more is of another kind, and need not be checked further. */
export const MOST_CLIMATE_ROWS = 24;
