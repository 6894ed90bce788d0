import { cooledMonths } from "../climate/cooled-months.ts";
import { METAL_CONDUCTIVITY, metalBridging } from "../heat/bridging.ts";
import type { Layer } from "../project/types.ts";
import { beyond } from "./beyond.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { wetRooms } from "./wet-rooms.ts";

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
  if (buildUp.wettedByRain !== "yes") return [];
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
