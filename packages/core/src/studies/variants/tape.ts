import type { BuildUp, PriceEntry } from "../../project/types.ts";
import { formatNumber } from "../../quantities/format-quantity.ts";
import { priceFor } from "./price-for.ts";

/** Lap of a sheet's edges, unless the price states one [m]. Common practice. */
export const USUAL_LAP = 0.1;

/** The name of tape in a price list. */
export const TAPE = "tape";

/** Tape for the sheets of a build-up. */
export interface Tape {
  /** [m] */
  length: number;
  /** How the length was counted, in a sentence. */
  note: string;
}

/**
 * Tape for the sheets of a build-up: along the laps, from the width of the roll, and around the edge, from the area and
 * length of the build-up. A part that cannot be counted is left out, and the note says so.
 *
 * @param buildUp - the build-up, with its area
 * @param entries - prices, some with the width of rolls
 * @returns tape for all sheets; null without sheets, without an area, or if neither laps nor edges can be counted
 * Source: common practice: edges lap by 100 mm unless stated; each sheet is taped once at every lap and once around.
 */
export function tapeFor(buildUp: BuildUp, entries: readonly PriceEntry[]): Tape | null {
  const sheets = buildUp.layers.flatMap((layer) =>
    layer.type === "sheet" && layer.material.group !== "coating" ? [layer.material.name] : [],
  );
  const { area, openings, length } = buildUp;
  if (sheets.length === 0 || area === null) return null;
  const netArea = area - (openings ?? 0);
  const laps = sheets.map((material) => {
    const entry = priceFor({ use: "layer", material, thickness: null }, entries);
    return entry === null || entry.width === null ? null : netArea / (entry.width - (entry.lap ?? USUAL_LAP));
  });
  const known = laps.filter((metres) => metres !== null);
  const edges = length === null ? null : sheets.length * perimeter(area, length);
  if (known.length === 0 && edges === null) return null;
  const lapsInAll = known.reduce((sum, metres) => sum + metres, 0);
  return { length: lapsInAll + (edges ?? 0), note: inWords(lapsInAll, laps, edges) };
}

/** Perimeter of a rectangle with the given area and length [m]. */
function perimeter(area: number, length: number): number {
  return 2 * (length + area / length);
}

function inWords(lapsInAll: number, laps: readonly (number | null)[], edges: number | null): string {
  const missing = laps.filter((metres) => metres === null).length;
  const alongLaps =
    missing === laps.length
      ? "laps not counted: no roll states its width"
      : `${formatNumber(lapsInAll, 0)} m along laps${missing > 0 ? `, without ${missing} of the sheets, whose width is not stated` : ""}`;
  const around =
    edges === null
      ? "edges not counted: the build-up states no length"
      : `${formatNumber(edges, 0)} m around the edges`;
  return `${alongLaps}; ${around}; openings and pipes come on top.`;
}
