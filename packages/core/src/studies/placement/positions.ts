import type { BuildUp, SolidLayer } from "../../project/types.ts";
import { removeLayer, spliceLayers } from "../../remedies/edit-layers.ts";
import { sheetLayer } from "../../remedies/new-layers.ts";
import { bestInsulation, insulationExtent } from "../../remedies/places.ts";
import type { PlacementPosition } from "../../result/types.ts";
import { ORDINARY_SHEET, ownSheet } from "../own-sheet.ts";

/** A build-up with the layer in one position. */
export interface PlacedBuildUp {
  position: PlacementPosition;
  buildUp: BuildUp;
  /** Indices of the vapour layer, from the room outwards; empty if it is left out. */
  at: readonly number[];
  /** Whether this is the build-up as drawn. */
  isDrawn: boolean;
}

/** A build-up with its vapour layer in every sensible position. */
export interface Placements {
  layer: SolidLayer;
  /** True if the layer was added, because the build-up has no sheet of its own to move. */
  added: boolean;
  placed: PlacedBuildUp[];
}

/**
 * A build-up with its vapour layer towards the room, within the insulation, towards the outer side, left out, and on
 * both faces. The build-up's own sheet is moved; if it has none, a polyethylene sheet of 0.15 mm is added. All other
 * layers stay, including boards and facings.
 *
 * @param buildUp - the build-up
 * @returns the positions, or null if there is no insulation
 */
export function placements(buildUp: BuildUp): Placements | null {
  if (bestInsulation(buildUp) === null) return null;
  const plain = { ...buildUp, trappedWater: [], variants: [] };
  const own = ownSheet(plain);
  const bare = own === null ? plain : removeLayer(plain, own);
  const layer = own === null ? sheetLayer(ORDINARY_SHEET) : (plain.layers[own] as SolidLayer);
  const first = insulationExtent(bare)!.first;
  const last = insulationExtent(bare)!.last;
  const main = bestInsulation(bare)!;
  const [inner, outer] = halves(bare.layers[main] as SolidLayer);
  const towardsRoom = spliceLayers(bare, first, 0, [layer]);
  const placed: Omit<PlacedBuildUp, "isDrawn">[] = [
    { position: "towards the room", buildUp: towardsRoom, at: [first] },
    { position: "within the insulation", buildUp: spliceLayers(bare, main, 1, [inner, layer, outer]), at: [main + 1] },
    { position: "towards the outer side", buildUp: spliceLayers(bare, last + 1, 0, [layer]), at: [last + 1] },
    { position: "none", buildUp: bare, at: [] },
    { position: "both faces", buildUp: spliceLayers(towardsRoom, last + 2, 0, [layer]), at: [first, last + 2] },
  ];
  return {
    layer,
    added: own === null,
    placed: placed.map((one) => ({ ...one, isDrawn: sameLayers(one.buildUp, plain) })),
  };
}

/** A layer split in two, each half with the facing of its own side. */
function halves(layer: SolidLayer): [SolidLayer, SolidLayer] {
  const half = { ...layer, thickness: layer.thickness / 2 };
  return [
    { ...half, facingOuter: 0 },
    { ...half, facingInner: 0 },
  ];
}

function sameLayers(one: BuildUp, other: BuildUp): boolean {
  return one.layers.length === other.layers.length && one.layers.every((layer, index) => layer === other.layers[index]);
}
