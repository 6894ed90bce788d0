import { MOULD_HUMIDITY } from "../../constants.ts";
/**
 * Relative humidity above which mould can grow on material that feeds it.
 *
 * @param temperature - θ [°C]
 * @returns φcr as a fraction [–]; 1 at and below 0 °C, where nothing grows
 * @throws RangeError when the temperature is not a number
 * Source: Hukka and Viitanen 1999 (from memory), φcr = 100 − 3.13θ + 0.160θ² − 0.00267θ³ % from 5 to 20 °C, 80 % above;
 * below 5 °C the formula's own value, which rises to 100 % at 0 °C (this project's rule).
 * @example growthLimit(10) // 0.8203
 */
export function growthLimit(temperature: number): number {
  if (!Number.isFinite(temperature)) throw new RangeError(`temperature must be a number, was ${temperature}`);
  if (temperature <= COLDEST_GROWTH) return 1;
  if (temperature > CONSTANT_ABOVE) return MOULD_HUMIDITY;
  const [constant, linear, square, cube] = PERCENT_BY_TEMPERATURE;
  const percent = constant + temperature * (linear + temperature * (square + temperature * cube));
  return percent / 100;
}

/** Coefficients of θ in °C [%]. Source: Hukka and Viitanen 1999 (from memory). */
const PERCENT_BY_TEMPERATURE = [100, -3.13, 0.16, -0.00267] as const;

/** No growth at or below the first temperature; a constant limit above the second [°C]. Same source. */
const COLDEST_GROWTH = 0;
const CONSTANT_ABOVE = 20;
