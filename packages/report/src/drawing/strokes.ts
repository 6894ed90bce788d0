import { escapeText } from "../escape.ts";
import { PALETTE } from "../palette.ts";
import { LETTERING } from "./patterns.ts";

/** A point of a picture [px]. */
export interface Point {
  x: number;
  y: number;
}

/** A coordinate as text, to a tenth of a pixel. */
export function tenth(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** A straight line. */
export function line(from: Point, to: Point, stroke: string): string {
  return `<path d="M${tenth(from.x)} ${tenth(from.y)}L${tenth(to.x)} ${tenth(to.y)}" fill="none" ${stroke}/>`;
}

/** A word in the lettering of drawings. */
export function word(x: number, y: number, anchor: "start" | "middle" | "end", text: string, isBold = false): string {
  return `<text x="${tenth(x)}" y="${tenth(y)}" text-anchor="${anchor}" font-size="${LETTERING}"${isBold ? ' font-weight="bold"' : ""} fill="${PALETTE.ink.light}">${escapeText(text)}</text>`;
}
