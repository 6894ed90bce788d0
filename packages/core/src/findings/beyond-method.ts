import { METAL_CONDUCTIVITY, metalBridging } from "../heat/bridging.ts";
import { distinctFramings } from "../heat/paths.ts";
import { oddEndsOf } from "../project/odd-ends.ts";
import type { Layer } from "../project/types.ts";
import { BEYOND, found } from "./found.ts";
import { rainFindings } from "./rain-on-wall.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { wetRooms } from "./wet-rooms.ts";

/** Least sd of a membrane against the ground [m] (this project's rule). */
const GROUND_MEMBRANE_SD = 10;

/**
 * Cases that the monthly method does not cover.
 * Source: ISO 13788:2012 clause 1 (from memory); the cases are common practice.
 */
export function beyondFindings(evidence: Evidence): RuledFinding[] {
  const rules = [writtenFromOutside, metal, rainFindings, unheatedSkin, wetRooms, ground];
  return rules.flatMap((rule) => rule(evidence));
}

/** Codes after which the heat figures are not shown. */
export const BEYOND_HEAT: ReadonlySet<string> = new Set(["metal-bridging"]);

function metal({ buildUp, calculation, plane }: Evidence): RuledFinding[] {
  const channel = distinctFramings(calculation.heat.counted).find(({ origin }) => origin.kind === "channel") ?? null;
  const framing = metalBridging(buildUp) ?? (plane === null ? channel : null);
  if (framing === null) return [];
  const { name: material, conductivity } = framing.material;
  const figures = {
    framing: framing.name,
    material,
    conductivity: conductivity!,
    limit: METAL_CONDUCTIVITY,
    isChannel: framing.origin.kind === "channel",
  };
  return [found("metal-bridging", BEYOND, figures)];
}

/** Until the direction of the list is known, no result is valid. */
function writtenFromOutside({ buildUp }: Evidence): RuledFinding[] {
  const ends = buildUp.oddEnds === null ? null : oddEndsOf(buildUp);
  return ends === null ? [] : [found("layers-from-outside", BEYOND, ends)];
}

/** Only a face towards outdoors loses heat to the clear sky. */
function unheatedSkin({ buildUp, room, calculation }: Evidence): RuledFinding[] {
  if (buildUp.faces !== "outdoors") return [];
  const counted = calculation.heat.counted;
  const outermost = counted[counted.length - 1]?.layer;
  const bareMetal = room.temperature.kind === "unheated" && outermost !== undefined && isMetal(outermost);
  return buildUp.unheatedSkin || bareMetal ? [found("unheated-metal-skin", BEYOND, {})] : [];
}

function isMetal(layer: Layer): boolean {
  return layer.type !== "air" && layer.material.kind === "metal";
}

function ground({ buildUp }: Evidence): RuledFinding[] {
  if (buildUp.faces !== "ground") return [];
  const hasMembrane = buildUp.ground?.membrane === true || buildUp.layers.some(isGroundMembrane);
  return hasMembrane ? [] : [found("ground-feeds-water", BEYOND, {})];
}

function isGroundMembrane(layer: Layer): boolean {
  if (layer.type === "air") return false;
  if (layer.purpose !== null && layer.purpose !== "vapour layer") return true;
  return layer.type === "sheet" && (layer.material.equivalentAirLayerThickness ?? 0) >= GROUND_MEMBRANE_SD;
}
