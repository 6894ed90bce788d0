import { type OutdoorClimate, SHIPPED_CLIMATES } from "@warmside/core";

/**
 * Every climate that warmside carries.
 *
 * @returns the climates in the order of their names
 */
export function shippedClimates(): OutdoorClimate[] {
  return Object.values(SHIPPED_CLIMATES).sort(({ name: one }, { name: other }) => (one < other ? -1 : 1));
}
