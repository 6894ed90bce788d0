import type { BuildUpResult } from "@warmside/core";
import { millimetres } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { LETTERING } from "./patterns.ts";
import type { DrawnFraming, Scale } from "./scale.ts";

/**
 * The thickness of the build-up below its drawing and the spacing of the first framing beside it.
 *
 * @param buildUp - a build-up of the result
 * @param scale - measures of its drawing
 * @returns SVG lines and figures
 */
export function drawnDimensions(buildUp: BuildUpResult, scale: Scale): string {
  const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0);
  const y = scale.bottom + 18;
  const ends = [scale.left, scale.right].map((x) => tick(x, y)).join("");
  const line = path(`M${scale.left.toFixed(1)} ${y.toFixed(1)}H${scale.right.toFixed(1)}`);
  const edges = scale.layers
    .filter(({ width }) => width > 0)
    .map(({ left }) => tick(left, y))
    .join("");
  const figure = text((scale.left + scale.right) / 2, y + 19, `${millimetres(total)} mm`);
  const first = scale.framings.find(({ spaced }) => spaced);
  return line + ends + edges + figure + (first ? spacing(first, scale) : "");
}

function spacing(drawn: DrawnFraming, scale: Scale): string {
  const from = scale.top + drawn.start + drawn.width / 2;
  const to = from + drawn.spacing;
  if (to > scale.bottom) return "";
  const x = Math.max(16, scale.left - 36);
  const words = `${millimetres(drawn.framing.spacing ?? 0)} mm`;
  return (
    path(
      `M${x.toFixed(1)} ${from.toFixed(1)}V${to.toFixed(1)}M${(x - 4).toFixed(1)} ${from.toFixed(1)}h8M${(x - 4).toFixed(1)} ${to.toFixed(1)}h8`,
    ) +
    `<text x="0" y="0" transform="translate(${(x - 6).toFixed(1)} ${((from + to) / 2).toFixed(1)}) rotate(-90)" text-anchor="middle" font-size="${LETTERING}" fill="${PALETTE.ink.light}">${words}</text>`
  );
}

function tick(x: number, y: number): string {
  return path(`M${x.toFixed(1)} ${(y - 5).toFixed(1)}v10`);
}

function path(d: string): string {
  return `<path d="${d}" fill="none" stroke="${PALETTE.ink.light}" stroke-width="1"/>`;
}

function text(x: number, y: number, words: string): string {
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="middle" font-size="${LETTERING}" fill="${PALETTE.ink.light}">${words}</text>`;
}
