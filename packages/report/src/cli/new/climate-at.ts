import { nearestClimates } from "@warmside/core";
import { FARTHEST_STATION } from "../climate/climate-near.ts";
import { findTowns } from "../climate/find-town.ts";
import { shippedClimates } from "../climate/shipped-climates.ts";
import { TOWNS } from "../climate/shipped-towns.ts";
import type { CommandContext } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";
import { placeFor } from "./place-for.ts";

/**
 * The climate of a place that somebody named: by its own name, as a climate table, or the nearest to a town.
 *
 * @param written - as answered
 * @param folder - where the project file will stand
 * @param context - where relative paths start
 * @returns the climate as the project file writes it, and what is told of it
 * @throws CommandProblem when there is none
 */
export async function climateAt(
  written: string,
  folder: string,
  context: CommandContext,
): Promise<{ climate: string; told: string }> {
  const [town] = findTowns(written, TOWNS);
  if (town === undefined) {
    const climate = await placeFor(written, folder, context);
    return { climate, told: `Climate: ${climate}.` };
  }
  const site = { latitude: town.latitude, longitude: town.longitude, altitude: null };
  const nearest = nearestClimates(shippedClimates(), site)[0]!;
  const distance = `${Math.round(nearest.distance / METRES_PER_KILOMETRE)} km`;
  if (nearest.distance <= FARTHEST_STATION) {
    return { climate: nearest.climate.name, told: `Climate: ${nearest.climate.name}, ${distance} from ${town.name}.` };
  }
  throw new CommandProblem(
    "no-climate-near",
    `No climate at hand is near ${town.name}: the nearest, ${nearest.climate.name}, is ${distance} away. Make one from ` +
      "weather records (warmside climate make --help) and write the path of its table here, or take a town with a " +
      "like climate for now.",
  );
}

const METRES_PER_KILOMETRE = 1000;
