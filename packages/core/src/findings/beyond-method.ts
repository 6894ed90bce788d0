import { cooledMonths } from "../climate/cooled-months.ts";
import { METAL_CONDUCTIVITY, metalBridging } from "../heat/bridging.ts";
import type { AirMonths, Layer, Room } from "../project/types.ts";
import { vapourExcessOfClass } from "../rooms/humidity-class.ts";
import { roomInWords } from "../rooms/room-in-words.ts";
import { capital } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** A room counts as wetter than class 5 when its vapour excess is over the class's by this factor in the coldest month. */
export const WETTER_THAN_CLASS_5 = 1.1;

/** A membrane against the ground has at least this sd [m] (this project's rule). */
const GROUND_MEMBRANE_SD = 10;

/**
 * What the monthly method does not cover, with what to ask for instead.
 * Source: ISO 13788:2012 clause 1 (from memory); the cases are common practice.
 */
export function beyondFindings(evidence: Evidence): RuledFinding[] {
  return [...metal(evidence), ...rain(evidence), ...unheatedSkin(evidence), ...wetRooms(evidence), ...ground(evidence)];
}

/** Codes after which the heat figures are not shown. */
export const BEYOND_HEAT: ReadonlySet<string> = new Set(["metal-bridging"]);

function beyond(code: string, message: string, askFor: string, source: string, figures = {}): RuledFinding {
  return { code, severity: "fault", effect: "beyond", message, advice: `Ask for ${askFor}.`, source, figures };
}

function metal({ buildUp }: Evidence): RuledFinding[] {
  const framing = metalBridging(buildUp);
  if (framing === null) return [];
  return [
    beyond(
      "metal-bridging",
      `${framing.name} of ${framing.material.name} (λ ${framing.material.conductivity} W/(m·K), limit ${METAL_CONDUCTIVITY}) bridges the insulation: the combined method does not cover metal.`,
      "a detailed calculation to ISO 10211",
      "ISO 6946:2017 clause 6.7.2.1 (from memory)",
      { conductivity: framing.material.conductivity },
    ),
  ];
}

function rain({ buildUp, room, site, vapourLayer }: Evidence): RuledFinding[] {
  if (!buildUp.wettedByRain) return [];
  const cooled = cooledMonths(room, site.outdoor.temperature).length > 0 || vapourLayer.warmSide === "outdoors";
  const transient = "a transient assessment to EN 15026";
  const findings = [
    beyond(
      "rain-wetted-masonry",
      "Driving rain wets the outer leaf and insulation lies behind it: the monthly method knows no rain, and less heat reaches the leaf to dry it.",
      transient,
      "ISO 13788:2012 clause 1 (from memory)",
    ),
  ];
  if (!cooled) return findings;
  return [
    ...findings,
    beyond(
      "sun-driven-moisture",
      "Sun on a rain-wet outer leaf pushes its moisture inwards, into a cooled building: the monthly method knows neither sun nor rain.",
      transient,
      "common practice",
    ),
  ];
}

/** Only a face towards outdoors sees the clear sky. */
function unheatedSkin({ buildUp, room, calculation }: Evidence): RuledFinding[] {
  if (buildUp.faces !== "outdoors") return [];
  const counted = calculation.heat.counted;
  const outermost = counted[counted.length - 1]?.layer;
  const bareMetal = room.temperature.kind === "unheated" && outermost !== undefined && isMetal(outermost);
  if (!buildUp.unheatedSkin && !bareMetal) return [];
  return [
    beyond(
      "unheated-metal-skin",
      "A thin metal skin over an unheated room falls below the air's own temperature on clear nights and drips, whatever the monthly means say.",
      "advice on an absorbent lining or ventilation; no monthly sum answers it",
      "common practice",
    ),
  ];
}

function isMetal(layer: Layer): boolean {
  return layer.type !== "air" && layer.material.kind === "metal";
}

const TRANSIENT_FOR_WET_ROOMS = "a transient assessment to EN 15026 by someone used to such rooms";

/** A room that the build-up touches, its name in a sentence and its air. */
interface TouchedRoom {
  room: Room;
  name: string;
  air: AirMonths;
}

/** Both rooms count: what steam or a pool does to a partition does not hang on the side from which it is written. */
function wetRooms(evidence: Evidence): RuledFinding[] {
  const { room, farRoom, calculation } = evidence;
  const own = { room, name: room.name === "indoor" ? "the room" : roomInWords(room.name), air: calculation.inside };
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
        : `In the coldest month ${name} holds ${excess.toFixed(0)} Pa more vapour than outdoors; class 5, the wettest, has ${classFive.toFixed(0)} Pa${humidityMargin === 1 ? "" : ` with the project's margin of ${humidityMargin}`}.`,
      TRANSIENT_FOR_WET_ROOMS,
      "ISO 13788:2012 Annex A (from memory)",
      { excess, classFive },
    ),
  ];
}

function ground({ buildUp }: Evidence): RuledFinding[] {
  if (buildUp.faces !== "ground") return [];
  const hasMembrane = buildUp.ground?.membrane === true || buildUp.layers.some(isGroundMembrane);
  if (hasMembrane) return [];
  return [
    beyond(
      "ground-feeds-water",
      "The floor lies on the ground without a membrane: the ground feeds it water, liquid as well as vapour.",
      "a damp-proof membrane first; then the floor can be worked out",
      "common practice",
    ),
  ];
}

function isGroundMembrane(layer: Layer): boolean {
  if (layer.type === "air") return false;
  if (layer.purpose !== null && layer.purpose !== "vapour layer") return true;
  return layer.type === "sheet" && (layer.material.equivalentAirLayerThickness ?? 0) >= GROUND_MEMBRANE_SD;
}
