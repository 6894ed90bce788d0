/**
 * Equilibrium moisture content of wood in air of constant temperature and humidity.
 *
 * @param temperature - T [°C], −100 to 100; below the coldest line of the table, −1.1 °C, that line applies
 * @param relativeHumidity - H as a fraction [–], 0 to 1
 * @returns moisture content as a fraction of dry mass [–]
 * @throws RangeError when an input is out of range or not a number
 * Source: Hailwood and Horrobin two-hydrate form, FPL Wood Handbook chapter 4 (from memory). Also used for
 * wood-based board, which takes up a little less: a cautious assumption.
 * @example equilibriumMoisture(10, 0.85) // 0.1836
 */
export function equilibriumMoisture(temperature: number, relativeHumidity: number): number {
  if (!(temperature >= COLDEST && temperature <= HOTTEST)) {
    throw new RangeError(`wood temperature must lie between ${COLDEST} and ${HOTTEST} °C, was ${temperature}`);
  }
  if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
    throw new RangeError(`relative humidity must lie between 0 and 1, was ${relativeHumidity}`);
  }
  const counted = Math.max(temperature, COLDEST_OF_TABLE);
  const molarMass = quadratic(MOLAR_MASS_OF_SITE, counted);
  const activity = quadratic(DISSOLVED_ACTIVITY, counted) * relativeHumidity;
  const firstHydrate = quadratic(FIRST_HYDRATE, counted);
  const secondHydrate = quadratic(SECOND_HYDRATE, counted);
  const dissolved = activity / (1 - activity);
  const boundOnce = firstHydrate * activity;
  const boundTwice = firstHydrate * secondHydrate * activity ** 2;
  const hydrated = (boundOnce + 2 * boundTwice) / (1 + boundOnce + boundTwice);
  return (MOLAR_MASS_OF_WATER / molarMass) * (dissolved + hydrated);
}

type Coefficients = readonly [constant: number, linear: number, square: number];

/** W, K, K1 and K2 as quadratics of T in °C. Source: FPL Wood Handbook chapter 4 (from memory). */
const MOLAR_MASS_OF_SITE: Coefficients = [349, 1.29, 0.0135];
const DISSOLVED_ACTIVITY: Coefficients = [0.805, 0.000736, -0.00000273];
const FIRST_HYDRATE: Coefficients = [6.27, -0.00938, -0.000303];
const SECOND_HYDRATE: Coefficients = [1.91, 0.0407, -0.000293];

/** Molar mass of water in the formula [g/mol]. Source: FPL Wood Handbook chapter 4 (from memory): 1800/W is for %. */
const MOLAR_MASS_OF_WATER = 18;

/** Coldest line of the table, 30 °F [°C]; the quadratics fail below it. Source: FPL Wood Handbook (from memory). */
const COLDEST_OF_TABLE = -1.1;

/** Accepted temperatures [°C] (this project's rule): more than any building needs. */
const COLDEST = -100;
const HOTTEST = 100;

function quadratic([constant, linear, square]: Coefficients, temperature: number): number {
  return constant + linear * temperature + square * temperature ** 2;
}
