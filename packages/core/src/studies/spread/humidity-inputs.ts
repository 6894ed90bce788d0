import { saturationPressure } from "../../air/saturation-pressure.ts";
import type { AirMonths } from "../../project/types.ts";
import { ownRoomInWords } from "../../rooms/room-in-words.ts";
import type { Site } from "../../surroundings/far-side-months.ts";
import type { SpreadInput } from "./types.ts";
import { factorAt, HUMIDITY_WIDTH } from "./widths.ts";

/** A room counts as outdoor air if its vapour pressure never differs by this much [Pa] (this project's rule). */
const SMALLEST_EXCESS = 10;

/**
 * The humidity of the rooms next to a build-up. The vapour excess over outdoors is changed by the same factor in every
 * month and every run, up to saturation.
 *
 * @param names - the rooms
 * @param sites - sites of the working copy: the reported year and those of the other runs
 * @returns one input for each room
 */
export function humidityInputs(names: readonly string[], sites: readonly Site[]): SpreadInput[] {
  return names.flatMap((name) => {
    const airs = sites.flatMap((site) => {
      const months = site.rooms.get(name);
      return months === undefined ? [] : [airAbove(months, site.outdoor)];
    });
    const moves = airs.some(({ excess }) => excess.some((value) => Math.abs(value) >= SMALLEST_EXCESS));
    if (!moves) return [];
    const set = (quantile: number): void => {
      const factor = factorAt(HUMIDITY_WIDTH, quantile);
      for (const air of airs) setExcess(air, factor);
    };
    const { low, high, origin } = HUMIDITY_WIDTH;
    const description = {
      name: `vapour excess of ${ownRoomInWords(name)}`,
      kind: "indoor humidity",
      unit: "–",
    } as const;
    return [{ description: { ...description, stated: 1, low, high, origin }, set }];
  });
}

/** A room's months in the working copy, with their original values. */
interface AirAbove {
  vapourPressure: number[];
  outdoors: readonly number[];
  excess: readonly number[];
  saturation: readonly number[];
}

function airAbove(months: AirMonths, outdoor: AirMonths): AirAbove {
  return {
    vapourPressure: months.vapourPressure as number[],
    outdoors: outdoor.vapourPressure,
    excess: months.vapourPressure.map((pressure, month) => pressure - outdoor.vapourPressure[month]!),
    saturation: months.temperature.map(saturationPressure),
  };
}

function setExcess({ vapourPressure, outdoors, excess, saturation }: AirAbove, factor: number): void {
  for (let month = 0; month < excess.length; month += 1) {
    const pressure = outdoors[month]! + factor * excess[month]!;
    vapourPressure[month] = Math.min(saturation[month]!, Math.max(0, pressure));
  }
}
