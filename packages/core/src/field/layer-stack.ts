import type { CountedLayer } from "../heat/types.ts";
import type { Framing } from "../project/types.ts";
import { shareLeftByGaps } from "../vapour/layer-sd.ts";
import { layerStuff, layerWithCrossing, SHEET_THICKNESS, sheetStuff } from "./cell-stuffs.ts";
import type { Stuff } from "./scene.ts";

/** A part of a layer across the whole cell, from y0 to y1 outwards from the room surface [m]. */
export interface StackRow {
  /** Index of the layer in the build-up. */
  layer: number;
  part: "whole" | "inner facing" | "outer facing" | "under tape";
  y0: number;
  y1: number;
  stuff: Stuff;
  /** Whether the drawn framing runs through it. */
  isFramed: boolean;
}

/** A row without its place. */
type Slice = Pick<StackRow, "part" | "stuff"> & { thickness: number };

/**
 * The layers of a build-up as rows across a cell.
 *
 * @param counted - counted layers, from the room outwards
 * @param framing - the framing drawn; layers with other framing, which crosses the plane, are averaged by share
 * @param sheets - with sheets and facings (for vapour), or without (for heat alone)
 * @param isTaped - by index, whether a framed layer has a thin row for tape on its room side
 * @returns rows with their places [m]
 */
export function layerStack(
  counted: readonly CountedLayer[],
  framing: Framing,
  sheets: boolean,
  isTaped: (layer: number) => boolean = () => false,
): StackRow[] {
  const rows: StackRow[] = [];
  let y = 0;
  for (const one of counted) {
    const isFramed = one.framing?.name === framing.name;
    const slices = slicesOf(one, isFramed, sheets);
    if (isFramed && one.layer.type === "material" && isTaped(one.index))
      slices.unshift({ part: "under tape", thickness: SHEET_THICKNESS, stuff: layerStuff(one) });
    for (const { part, thickness, stuff } of slices) {
      rows.push({ layer: one.index, part, y0: y, y1: y + thickness, stuff, isFramed });
      y += thickness;
    }
  }
  return rows;
}

function slicesOf(counted: CountedLayer, isFramed: boolean, sheets: boolean): Slice[] {
  const { layer, framing } = counted;
  const stuff = (): Stuff =>
    framing !== null && !isFramed ? layerWithCrossing(counted, framing) : layerStuff(counted);
  if (layer.type === "air") return [{ part: "whole", thickness: layer.thickness, stuff: stuff() }];
  const left = shareLeftByGaps(layer, "dry");
  const sheet = (part: Slice["part"], sd: number): Slice[] =>
    sheets && sd > 0 ? [{ part, thickness: SHEET_THICKNESS, stuff: sheetStuff(layer.name, sd * left) }] : [];
  const core: Slice[] =
    layer.type === "sheet"
      ? sheet("whole", layer.material.equivalentAirLayerThickness ?? 0)
      : [{ part: "whole", thickness: layer.thickness, stuff: stuff() }];
  return [...sheet("inner facing", layer.facingInner), ...core, ...sheet("outer facing", layer.facingOuter)];
}
