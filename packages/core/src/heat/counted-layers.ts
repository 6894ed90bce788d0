import { USUAL_EMISSIVITY } from "../constants.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, BuildUp, Framing, Layer } from "../project/types.ts";
import type { HeatFlowDirection } from "../result/types.ts";
import { airLayerResistance } from "./air-layer-resistance.ts";
import type { CountedLayer } from "./types.ts";

/** Least emissivity of a face that looks up, where dust settles on bright foil [–]. Source: common practice. */
export const EMISSIVITY_OF_FOIL_FACING_UP = 0.2;

/**
 * The layers that count: from the room outwards to the first well-ventilated one, which is left out with all beyond it.
 *
 * @param buildUp - the build-up
 * @param direction - of the heat flow
 * @returns the counted layers with resistances [m²·K/W], and the index of the well-ventilated layer or null
 * Source: ISO 6946:2017 clauses 6.7 and 6.9.4 (from memory).
 */
export function countedLayers(
  buildUp: BuildUp,
  direction: HeatFlowDirection,
): { counted: CountedLayer[]; endsAt: number | null } {
  const end = buildUp.layers.findIndex((layer) => layer.type === "air" && layer.ventilation === "well");
  const endsAt = end === -1 ? null : end;
  const layers = endsAt === null ? buildUp.layers : buildUp.layers.slice(0, endsAt);
  return { endsAt, counted: layers.map((layer, index) => countLayer(buildUp, layer, index, direction)) };
}

function countLayer(buildUp: BuildUp, layer: Layer, index: number, direction: HeatFlowDirection): CountedLayer {
  const { resistance, airRule } = ownResistance(buildUp, layer, index, direction);
  const framing = layer.framing;
  const framingResistance = framing === null ? resistance : framingConductionResistance(layer, framing);
  return { index, layer, resistance, framing, framingResistance, airRule };
}

function ownResistance(
  buildUp: BuildUp,
  layer: Layer,
  index: number,
  direction: HeatFlowDirection,
): { resistance: number; airRule: string | null } {
  if (layer.type !== "air") {
    const conductivity = layer.type === "sheet" ? null : layer.material.conductivity;
    return { resistance: conductivity === null ? 0 : layer.thickness / conductivity, airRule: null };
  }
  if (layer.resistance !== null) return { resistance: layer.resistance, airRule: "resistance as stated" };
  const [inner, outer] = facingEmissivities(buildUp, layer, index);
  const width = clearWidth(layer.framing);
  const resistance = airLayerResistance(layer.thickness, direction, inner, outer, width);
  const divided = width < Number.POSITIVE_INFINITY ? `, ${Math.round(width * 1000)} mm clear between framing` : "";
  return {
    resistance,
    airRule: `ISO 6946:2017 Annex D, heat flow ${direction}, emissivity ${inner} and ${outer}${divided}`,
  };
}

function framingConductionResistance(layer: Layer, framing: Framing): number {
  return layer.thickness / framing.material.conductivity!;
}

/** Clear width between framing members [m]; infinite where the file does not give a spacing. */
function clearWidth(framing: Framing | null): number {
  if (framing === null || framing.origin.kind === "fraction") return Number.POSITIVE_INFINITY;
  const { origin } = framing;
  return origin.spacing - (origin.kind === "channel" ? origin.channel.sheet : origin.width);
}

/** Emissivities of the two faces that bound an air layer, inner then outer [–]. */
function facingEmissivities(buildUp: BuildUp, air: AirLayer, index: number): [number, number] {
  const before = buildUp.layers[index - 1];
  const after = buildUp.layers[index + 1];
  const inner = before === undefined || before.type === "air" ? USUAL_EMISSIVITY : before.emissivityOuter;
  const outer = after === undefined || after.type === "air" ? USUAL_EMISSIVITY : after.emissivityInner;
  const dusty = dustOnUpwardFace(buildUp, inner, outer);
  if (air.emissivity === null) return dusty;
  return [Math.min(air.emissivity, dusty[0]), dusty[1]];
}

/** Dust lies on the lower face of a level air layer: the inner face in a roof, the outer face in a floor. */
function dustOnUpwardFace(buildUp: BuildUp, inner: number, outer: number): [number, number] {
  if (isUpright(buildUp)) return [inner, outer];
  return buildUp.element === "floor"
    ? [inner, Math.max(outer, EMISSIVITY_OF_FOIL_FACING_UP)]
    : [Math.max(inner, EMISSIVITY_OF_FOIL_FACING_UP), outer];
}
