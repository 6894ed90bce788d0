import { cooledMonths } from "../climate/cooled-months.ts";
import type { AirMonths, Room } from "../project/types.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { vapourExcessOfClass } from "../rooms/humidity-class.ts";
import { ownRoomInWords, roomInWords } from "../rooms/room-in-words.ts";
import { beyond } from "./beyond.ts";
import { capital } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** A room counts as wetter than class 5 when its vapour excess is over the class's by this factor in the coldest month. */
const WETTER_THAN_CLASS_5 = 1.1;

const TRANSIENT_FOR_WET_ROOMS = "a transient assessment to EN 15026 by someone used to such rooms";

/** A room that the build-up touches, its name in a sentence and its air. */
interface TouchedRoom {
  room: Room;
  name: string;
  air: AirMonths;
}

/**
 * Rooms too wet for the monthly method. Both rooms count: what steam or a pool does to a partition does not hang on the
 * side from which it is written.
 * Source: ISO 13788:2012 clause 1 and Annex A (from memory).
 */
export function wetRooms(evidence: Evidence): RuledFinding[] {
  const { room, farRoom, calculation } = evidence;
  const own = { room, name: ownRoomInWords(room.name), air: calculation.inside };
  const far = { room: farRoom ?? room, name: roomInWords(calculation.farSide.name), air: calculation.farSide.months };
  const touched = farRoom === null || farRoom.name === room.name ? [own] : [own, far];
  return touched.flatMap((each) => (each.room.burstsOfSteam ? burstsOfSteam(each) : tooWet(each, evidence)));
}

function burstsOfSteam({ name }: TouchedRoom): RuledFinding[] {
  return [
    beyond(
      "bursts-of-steam",
      `${capital(name)} has short hot bursts of steam: a month's mean says nothing of them.`,
      TRANSIENT_FOR_WET_ROOMS,
      "ISO 13788:2012 clause 1 (from memory)",
    ),
  ];
}

/** Held against class 5 as this project reckons its classes: with the humidity margin. */
function tooWet({ room, name, air }: TouchedRoom, { site, humidityMargin }: Evidence): RuledFinding[] {
  const { temperature, vapourPressure } = site.outdoor;
  const coldest = temperature.indexOf(Math.min(...temperature));
  const excess = air.vapourPressure[coldest]! - vapourPressure[coldest]!;
  const classFive = humidityMargin * vapourExcessOfClass(5, temperature[coldest]!);
  const heated = room.temperature.kind !== "unheated" && !cooledMonths(room, temperature).includes(coldest);
  const wetter = heated && classFive > 0 && excess > WETTER_THAN_CLASS_5 * classFive;
  if (!room.pool && !wetter) return [];
  return [
    beyond(
      "wetter-than-class-5",
      room.pool
        ? `${capital(name)} holds a pool: it is wetter than the humidity classes reach.`
        : `In the coldest month ${name} holds ${formatQuantity(excess, "vapour pressure")} more vapour than outdoors; class 5, the wettest, has ${formatQuantity(classFive, "vapour pressure")}${humidityMargin === 1 ? "" : ` with the project's margin of ${humidityMargin}`}.`,
      TRANSIENT_FOR_WET_ROOMS,
      "ISO 13788:2012 Annex A (from memory)",
      { excess, classFive },
    ),
  ];
}
