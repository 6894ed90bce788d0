import { METAL_CONDUCTIVITY } from "@warmside/core";
import { PALETTE } from "../palette.ts";
import { patternId } from "./patterns.ts";
import type { DrawnFraming, Scale } from "./scale.ts";

/**
 * The framing of a drawing at its own spacing; framing that crosses the first is dashed.
 *
 * @param scale - measures of the drawing
 * @param id - prefix of the drawing's names
 * @returns SVG rectangles
 */
export function drawnFramings(scale: Scale, id: string): string {
  return scale.framings.map((framing, order) => members(framing, scale, id, order > 0)).join("");
}

function members(drawn: DrawnFraming, scale: Scale, id: string, crossing: boolean): string {
  const hatch = drawn.framing.conductivity >= METAL_CONDUCTIVITY ? "metal" : "timber";
  const stroke = `stroke="${PALETTE.ink.light}" stroke-width="${crossing ? 1.2 : 1.6}"${crossing ? ' stroke-dasharray="4 3"' : ""}`;
  return starts(drawn, scale.bottom - scale.top)
    .map((start) => {
      const top = scale.top + Math.max(0, start);
      const bottom = Math.min(scale.bottom, scale.top + start + drawn.width);
      const box = `x="${drawn.left.toFixed(1)}" y="${top.toFixed(1)}" width="${(drawn.right - drawn.left).toFixed(1)}" height="${(bottom - top).toFixed(1)}"`;
      return `<rect ${box} fill="url(#${patternId(id, hatch)})" ${stroke}/>`;
    })
    .join("");
}

/** Where members begin along the wall, from the top edge. */
function starts(drawn: DrawnFraming, height: number): number[] {
  if (!drawn.spaced) return [drawn.start];
  const count = Math.max(1, Math.ceil((height - drawn.start) / drawn.spacing));
  return Array.from({ length: count }, (_, index) => drawn.start + index * drawn.spacing).filter(
    (start) => start < height - 1,
  );
}
