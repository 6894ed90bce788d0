/** Limits of what a month of weather can be; outside them a table is refused, never trimmed. */

/** Coldest monthly mean taken [°C]: the Antarctic plateau comes near −70 (from memory). */
export const COLDEST_MONTH = -80;

/** Warmest monthly mean taken [°C]: the hottest deserts stay near 42 (from memory). */
export const WARMEST_MONTH = 55;

/** Least monthly relative humidity taken [%]: no place on Earth has a month under 1 %; a fraction written for per cent has. */
export const LEAST_HUMIDITY_PERCENT = 1;

/** Greatest monthly relative humidity taken [%]. Source: definition of saturation. */
export const GREATEST_HUMIDITY_PERCENT = 100;

/** Lowest and highest places with weather records [m]: the Dead Sea shore and the highest summits (from memory). */
export const LOWEST_ALTITUDE = -500;
export const HIGHEST_ALTITUDE = 9000;

/** Longest text taken as a climate table [characters]: a real one has about a thousand. */
export const LONGEST_CLIMATE_TABLE = 200_000;

/** A problem list stops growing after this many rows: whoever has more has given another kind of file. */
export const MOST_CLIMATE_ROWS = 24;
