import { dewPoint } from "@warmside/core";
import { scale } from "vega";
import { fixed, MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { AIR, type Geometry, placed } from "./geometry.ts";
import { line, type Point, tenth, word } from "./strokes.ts";

/**
 * Temperature and dew point of the critical month over a drawing, with the temperatures at its edge.
 *
 * @param view - the governing path
 * @param geometry - the drawing's measures
 * @returns SVG lines and figures
 */
export function curvesOver(view: SectionView, geometry: Geometry): string {
  const { indoor, outdoor, nodes } = view.deciding;
  const across = (depth: number): number => depth * MILLIMETRES_PER_METRE * geometry.pixelsPerMillimetre;
  const curve = (inside: number, ofNode: (node: (typeof nodes)[number]) => number, outside: number) => [
    { across: -AIR, value: inside },
    ...nodes.map((node) => ({ across: across(node.depth), value: ofNode(node) })),
    { across: geometry.across + AIR, value: outside },
  ];
  const temperature = curve(indoor.temperature, (node) => node.temperature, outdoor.temperature);
  const dew = curve(
    dewPoint(indoor.vapourPressure),
    (node) => dewPoint(node.vapourPressure),
    dewPoint(outdoor.vapourPressure),
  );
  const values = [...temperature, ...dew].map(({ value }) => value);
  const degrees = scale("linear")()
    .domain([Math.min(...values), Math.max(...values)])
    .nice(TICKS);
  const { lie, along } = geometry;
  // Warm is up beside an upright build-up, and to the right over one that lies.
  degrees.range(lie === "upright" ? [along, 0] : [0, along]);
  const path = (points: readonly { across: number; value: number }[]): string =>
    points
      .map(({ across: at, value }, index) => {
        const { x, y } = placed(geometry, at, degrees(value));
        return `${index === 0 ? "M" : "L"}${tenth(x)} ${tenth(y)}`;
      })
      .join("");
  const drawn = (d: string, colour: string, dash: string): string =>
    `<path d="${d}" fill="none" stroke="${PALETTE.paper.light}" stroke-width="5"/><path d="${d}" fill="none" stroke="${colour}" stroke-width="2.5"${dash}/>`;
  return (
    axis(geometry, degrees.ticks(TICKS) as number[], (value) => degrees(value)) +
    drawn(path(dew), PALETTE.vapour.light, ' stroke-dasharray="6 4"') +
    drawn(path(temperature), PALETTE.temperature.light, "")
  );
}

const TICKS = 5;

/** Temperatures at the room's edge: to the left of an upright build-up, along the outermost edge of one that lies. */
function axis(geometry: Geometry, ticks: readonly number[], at: (value: number) => number): string {
  const { lie, across } = geometry;
  const isUpright = lie === "upright";
  const edge = isUpright ? -AIR : lie === "room below" ? -AIR : across + AIR;
  const ink = `stroke="${PALETTE.faintInk.light}"`;
  const tick = (from: Point, size: number): Point =>
    isUpright ? { x: from.x - size, y: from.y } : { x: from.x, y: from.y + size };
  const marks = ticks.map((value) => {
    const from = placed(geometry, edge, at(value));
    const words = fixed(value, 0);
    const text = isUpright ? word(from.x - 7, from.y + 4, "end", words) : word(from.x, from.y + 17, "middle", words);
    return line(from, tick(from, 4), ink) + text;
  });
  const line0 = line(placed(geometry, edge, 0), placed(geometry, edge, geometry.along), ink);
  const end = placed(geometry, edge, isUpright ? 0 : geometry.along);
  const unit = isUpright ? word(end.x - 7, end.y - 10, "end", "°C") : word(end.x + 10, end.y + 17, "start", "°C");
  return line0 + marks.join("") + unit;
}
