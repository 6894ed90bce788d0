import type { SectionResult } from "@warmside/core";
import { fixed } from "../../numbers.ts";
import type { Lens } from "../state/state.ts";
import { type Curves, curvesOf, monthAt, shareOf } from "./curves.ts";
import { Label, widthOf } from "./label.tsx";
import { edges } from "./layers.tsx";
import { alongAt, type Layout, pointAt } from "./layout.ts";
import type { Drawn } from "./section.tsx";

type Which = "limit" | "held";
type Point = readonly [number, number];

/** Air close to a surface in which the lines bend [px]. */
const FILM = 14;

const NAMES: Readonly<Record<Lens, Record<Which, string>>> = {
  temperature: { limit: "temperature", held: "dew point" },
  pressure: { limit: "saturation pressure", held: "vapour pressure" },
};

/** Temperature over dew point, or saturation over vapour pressure: what lies between them is the margin. */
export function Lines({
  section,
  month,
  lens,
  layout,
  isBefore,
}: Drawn & { section: SectionResult; isBefore: boolean }) {
  const curves = curvesOf(section, month, lens);
  const limit = pointsOf(curves, layout, "limit");
  const held = pointsOf(curves, layout, "held");
  if (isBefore) {
    return (
      <g class="lines is-before">
        <path d={pathOf(limit)} class="limit" />
        <path d={pathOf(held)} class="held" />
      </g>
    );
  }
  return (
    <g class="lines">
      <path d={`${pathOf(limit)}${pathOf([...held].reverse()).replace("M", "L")}Z`} class="between" />
      <path d={pathOf(limit)} class="ground" />
      <path d={pathOf(held)} class="ground" />
      <path d={pathOf(limit)} class="limit" />
      <path d={pathOf(held)} class="held" />
      <Name points={limit} which="limit" text={NAMES[lens].limit} layout={layout} />
      <Name points={held} which="held" text={NAMES[lens].held} layout={layout} />
      <Ends curves={curves} layout={layout} lens={lens} />
      {isWet(section, month) ? null : <Margin curves={curves} layout={layout} lens={lens} />}
    </g>
  );
}

function pointsOf(curves: Curves, layout: Layout, which: Which): Point[] {
  const at = (along: number, value: number): Point => pointAt(layout, along, shareOf(curves, value));
  const film = FILM * layout.direction;
  return [
    at(layout.airRoom, curves.room[which]),
    at(layout.face - film, curves.room[which]),
    ...curves.nodes.map((node) => at(alongAt(layout, node.depth), node[which])),
    at(alongAt(layout, curves.nodes.at(-1)!.depth) + film, curves.far[which]),
    at(layout.airFar, curves.far[which]),
  ];
}

function isWet(section: SectionResult, month: number): boolean {
  return monthAt(section, month).planes.some(({ held, change }) => held > 0 || change > 0);
}

/** The name of a line along its longest straight stretch; left out where none is long enough. */
function Name({
  points,
  which,
  text,
  layout,
}: {
  points: readonly Point[];
  which: Which;
  text: string;
  layout: Layout;
}) {
  const stretch = longestStretch(points.slice(1, -1));
  if (stretch === null || lengthOf(stretch) < text.length * 7.4 + 12) return null;
  const [from, to] = stretch[0][0] <= stretch[1][0] ? stretch : [stretch[1], stretch[0]];
  const id = `along-${which}`;
  const isAbove = (which === "limit") !== (layout.lies && layout.direction === 1);
  return (
    <>
      <path id={id} d={pathOf([from, to])} class="unseen-path" />
      <text dy={isAbove ? -8 : 17} class={`label of-${which}`}>
        <textPath href={`#${id}`} startOffset="42%" text-anchor="middle">
          {text}
        </textPath>
      </text>
    </>
  );
}

function longestStretch(points: readonly Point[]): [Point, Point] | null {
  let best: [Point, Point] | null = null;
  for (const [start, from] of points.entries()) {
    for (const to of points.slice(start + 1)) {
      const between = points.slice(start + 1, points.indexOf(to));
      if (!between.every((point) => distance(point, from, to) < STRAIGHT)) continue;
      if (best === null || lengthOf([from, to]) > lengthOf(best)) best = [from, to];
    }
  }
  return best;
}

/** Figures of the air on both sides, at the ends of the lines, kept apart. */
function Ends({ curves, layout, lens }: { curves: Curves; layout: Layout; lens: Lens }) {
  const ends = [
    { name: "room", along: layout.airRoom, pair: curves.room, isFirst: true },
    { name: "far", along: layout.airFar, pair: curves.far, isFirst: false },
  ];
  return (
    <>
      {ends.flatMap(({ name, along, pair, isFirst }) => {
        const texts = { limit: inUnit(pair.limit, lens), held: inUnit(pair.held, lens) };
        const limit = pointAt(layout, along, shareOf(curves, pair.limit));
        const held = pointAt(layout, along, shareOf(curves, pair.held));
        if (layout.lies) {
          const y =
            isFirst === (layout.direction === 1) ? Math.min(limit[1], held[1]) + 11 : Math.max(limit[1], held[1]) - 3;
          const [from, to] = apart(held[0], limit[0], widthOf(texts.held), widthOf(texts.limit), edges(layout));
          return [
            <Label key={`${name} held`} x={from} y={y} text={texts.held} kind="of-held end" anchor="end" />,
            <Label key={`${name} limit`} x={to} y={y} text={texts.limit} kind="of-limit end" />,
          ];
        }
        const middle = (limit[1] - 7 + held[1] + 16) / 2;
        const isTight = held[1] - limit[1] < -8;
        const x = isFirst ? 3 : layout.width - 3;
        const anchor = isFirst ? "start" : "end";
        return [
          <Label
            key={`${name} limit`}
            x={x}
            y={isTight ? middle - 8 : limit[1] - 7}
            text={texts.limit}
            kind="of-limit end"
            anchor={anchor}
          />,
          <Label
            key={`${name} held`}
            x={x}
            y={isTight ? middle + 8 : held[1] + 16}
            text={texts.held}
            kind="of-held end"
            anchor={anchor}
          />,
        ];
      })}
    </>
  );
}

/** Two figures beside each other: the end of the first and the start of the second, within the drawing. */
function apart(held: number, limit: number, heldWidth: number, limitWidth: number, [low, high]: Point): Point {
  const to = Math.max(low + heldWidth + 6, Math.min(limit + 4, high - limitWidth));
  return [Math.min(Math.max(held - 4, low + heldWidth), to - 6), to];
}

/** How much is to spare where the lines come closest. */
function Margin({ curves, layout, lens }: { curves: Curves; layout: Layout; lens: Lens }) {
  const tightest = curves.nodes.reduce((one, other) => (other.limit - other.held < one.limit - one.held ? other : one));
  const spare = tightest.limit - tightest.held;
  if (!(spare > 0)) return null;
  const along = alongAt(layout, tightest.depth);
  const [x1, y1] = pointAt(layout, along, shareOf(curves, tightest.limit));
  const [x2, y2] = pointAt(layout, along, shareOf(curves, tightest.held));
  const text = `${lens === "temperature" ? `${fixed(spare, 1)} K` : `${fixed(spare, 0)} Pa`} to spare`;
  const isOuter = !layout.lies && along > (layout.face + layout.outerFace) / 2;
  const tick = layout.lies ? `M${x1} ${y1 - 4}v8M${x2} ${y2 - 4}v8` : `M${x1 - 4} ${y1}h8M${x2 - 4} ${y2}h8`;
  const middle = (x1 + x2) / 2;
  return (
    <>
      <path d={`M${x1} ${y1}L${x2} ${y2}${tick}`} class="margin" />
      {layout.lies ? (
        <Label
          x={Math.min(Math.max(middle, layout.low + 48), layout.high - 48)}
          y={y1 - 8}
          anchor="middle"
          text={text}
          kind="margin-words"
        />
      ) : (
        <Label
          x={x1 + (isOuter ? -9 : 9)}
          y={(y1 + y2) / 2 + 4}
          anchor={isOuter ? "end" : "start"}
          text={text}
          kind="margin-words"
        />
      )}
    </>
  );
}

function inUnit(value: number, lens: Lens): string {
  return lens === "temperature" ? `${fixed(value, 1)} °C` : `${fixed(value, 0)} Pa`;
}

function pathOf(points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
}

function lengthOf([from, to]: readonly [Point, Point]): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function distance(point: Point, from: Point, to: Point): number {
  const long = lengthOf([from, to]);
  if (long === 0) return lengthOf([point, from]);
  return Math.abs((to[0] - from[0]) * (from[1] - point[1]) - (from[0] - point[0]) * (to[1] - from[1])) / long;
}

/** A stretch bends no more than this [px]. */
const STRAIGHT = 2.5;
