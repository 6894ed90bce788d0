import type { CountedLayer, HeatCalculation } from "../../heat/types.ts";
import { requireObject } from "../../require.ts";
import { framingStuff, layerStuff } from "../cell-stuffs.ts";
import type { Stuff } from "../scene.ts";

/** A layer in the drawing of a junction. */
export interface Ply {
  thickness: number;
  stuff: Stuff;
  /** The stuff of the framing through it; null without framing. */
  timber: Stuff | null;
}

/** Resistances straight through a side [m²·K/W]. */
export interface SideResistances {
  /** ΣR between the framing. */
  resistance: number;
  /** Rsi for U; below, Rse for U and Rse for surface humidity. */
  inside: number;
  outside: number;
  outsideForMoisture: number;
}

/** A build-up at a junction, from its outer face inwards. */
export interface Side extends SideResistances {
  plies: readonly Ply[];
  /** Index of the ply with the main framing: the thickest one. */
  frame: number;
  /** Width of a framing member [m]. */
  member: number;
  /** [m] */
  thickness: number;
}

/** Width of a framing member where the file states only a share [m] (common practice in timber frames). */
const USUAL_MEMBER = 0.045;

/**
 * A build-up as a side of a junction, without sheets, whose resistance to heat is negligible.
 *
 * @param heat - heat figures of the build-up
 * @returns its plies from outside inwards [m]
 * Source: layers and resistances as in ISO 6946.
 */
export function sideOf(heat: HeatCalculation): Side {
  requireObject(heat, "heat", ["counted", "surfaceResistances", "addedOutside"]);
  const { counted, surfaceResistances, addedOutside } = heat;
  const layers = counted.filter(({ layer }) => layer.thickness > 0).toReversed();
  const plies = layers.map(plyOf);
  const isFramed = plies.some(({ timber }) => timber !== null);
  const frame = plies.reduce(
    (best, { thickness, timber }, index) =>
      (timber !== null || !isFramed) && !(thickness <= (plies[best]?.thickness ?? 0)) ? index : best,
    -1,
  );
  const origin = layers[frame]?.framing?.origin;
  return {
    plies,
    frame,
    member: origin?.kind === "width and spacing" ? origin.width : USUAL_MEMBER,
    thickness: plies.reduce((sum, { thickness }) => sum + thickness, 0),
    resistance: layers.reduce((sum, { resistance }) => sum + resistance, 0),
    inside: surfaceResistances.inside,
    outside: surfaceResistances.outside + addedOutside,
    outsideForMoisture: surfaceResistances.outsideForMoisture + addedOutside,
  };
}

function plyOf(counted: CountedLayer): Ply {
  const { layer, framing } = counted;
  return {
    thickness: layer.thickness,
    stuff: layerStuff(counted),
    timber: framing === null ? null : framingStuff(framing),
  };
}

/** U between the framing, to which ψ refers [W/(m²·K)]. */
export function clearTransmittanceOf({ inside, resistance, outside }: SideResistances): number {
  return 1 / (inside + resistance + outside);
}
