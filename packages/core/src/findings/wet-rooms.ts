import { cooledMonths } from "../climate/cooled-months.ts";
import type { AirMonths, Room } from "../project/types.ts";
import type { Side } from "../result/types.ts";
import { vapourExcessOfClass } from "../rooms/humidity-class.ts";
import { BEYOND, found } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** A room is wetter than class 5 if its vapour excess in the coldest month is over this many times the class's [–]. */
const WETTER_THAN_CLASS_5 = 1.1;

/** A room next to the build-up, its side and its air. */
interface TouchedRoom {
  room: Room;
  side: Side;
  air: AirMonths;
}

/**
 * Rooms too wet for the monthly method. Both rooms count: the effect of steam or a pool on a partition does not depend
 * on the side from which its layers are listed.
 * Source: ISO 13788:2012 clause 1 and Annex A (from memory).
 */
export function wetRooms(evidence: Evidence): RuledFinding[] {
  const { room, farRoom, calculation } = evidence;
  const touched: TouchedRoom[] = [{ room, side: "inside", air: calculation.inside }];
  if (farRoom !== null && farRoom.name !== room.name)
    touched.push({ room: farRoom, side: "outside", air: calculation.farSide.months });
  return touched.flatMap((each) =>
    each.room.burstsOfSteam
      ? [found("bursts-of-steam", BEYOND, { room: each.room.name, side: each.side })]
      : tooWet(each, evidence),
  );
}

/** Compares the room with class 5 including the project's humidity margin. */
function tooWet({ room, side, air }: TouchedRoom, { site, humidityMargin }: Evidence): RuledFinding[] {
  const { temperature, vapourPressure } = site.outdoor;
  const coldest = temperature.indexOf(Math.min(...temperature));
  const excess = air.vapourPressure[coldest]! - vapourPressure[coldest]!;
  const classFive = humidityMargin * vapourExcessOfClass(5, temperature[coldest]!);
  const heated = room.temperature.kind !== "unheated" && !cooledMonths(room, temperature).includes(coldest);
  const wetter = heated && classFive > 0 && excess > WETTER_THAN_CLASS_5 * classFive;
  if (!room.pool && !wetter) return [];
  const figures = { room: room.name, side, hasPool: room.pool, excess, classFive, humidityMargin };
  return [found("wetter-than-class-5", BEYOND, figures)];
}
