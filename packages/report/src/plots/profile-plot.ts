import type { TopLevelSpec } from "vega-lite";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { sideWords } from "../words.ts";
import { type Axis, bandMarks, type Stretch } from "./layer-bands.ts";
import { FIT, PLOT_CONFIG, PLOT_HEIGHT, PLOT_SCHEMA, PLOT_WIDTH } from "./plot.ts";

/** A point of one of the two lines. */
export interface ProfilePoint {
  at: number;
  value: number;
  line: string;
}

/** A place with water, with the words beside it. */
export interface WetMark {
  at: number;
  value: number;
  words: string;
}

export interface Profile {
  view: SectionView;
  axis: Axis;
  stretch: Stretch;
  /** The two lines: the limit is drawn whole, the other dashed. */
  lines: { name: string; colour: string; dash: number[] }[];
  points: ProfilePoint[];
  wet: WetMark[];
  xTitle: string;
  yTitle: string;
  zero: boolean;
}

/**
 * Two lines from the room through the section to the far side, over its layers: the frame of the section plots.
 *
 * @param profile - points of both lines, places with water, titles of the axes
 * @returns vega-lite specification
 */
export function profilePlot(profile: Profile): TopLevelSpec {
  const { stretch, points } = profile;
  const x = { type: "quantitative", scale: { domain: [stretch.from, stretch.to], nice: false, zero: false } };
  const values = points.map(({ value }) => value);
  const lowest = profile.zero ? 0 : Math.min(...values);
  const highest = Math.max(...values);
  const domain = [lowest, highest + (profile.wet.length > 0 ? ROOM_FOR_WORDS : 0) * (highest - lowest)];
  const lines = {
    data: { values: points },
    mark: { type: "line", strokeWidth: 2.5, strokeCap: "butt" },
    encoding: {
      x: {
        ...x,
        field: "at",
        axis: { title: profile.xTitle, values: ticks(stretch.end), labelFlush: false },
      },
      y: {
        field: "value",
        type: "quantitative",
        scale: { domain, nice: true, zero: profile.zero },
        axis: { title: profile.yTitle },
      },
      color: {
        field: "line",
        type: "nominal",
        scale: { domain: profile.lines.map(({ name }) => name), range: profile.lines.map(({ colour }) => colour) },
      },
      strokeDash: {
        field: "line",
        type: "nominal",
        scale: { domain: profile.lines.map(({ name }) => name), range: profile.lines.map(({ dash }) => dash) },
      },
    },
  };
  return {
    $schema: PLOT_SCHEMA,
    width: PLOT_WIDTH,
    height: PLOT_HEIGHT,
    autosize: FIT,
    padding: 4,
    config: PLOT_CONFIG,
    layer: [...bandMarks(stretch, true), ...sides(profile), lines, ...wetMarks(profile.wet, stretch)],
  } as unknown as TopLevelSpec;
}

/** The words for the two sides, below the axis, so that nobody has to guess which way is out. */
function sides({ view, stretch }: Profile): object[] {
  const { room, far } = sideWords(view.buildUp);
  const word = (text: string, at: number, align: string): object => ({
    data: { values: [{ at, text }] },
    mark: { type: "text", align, dy: 36, baseline: "middle", fontWeight: "bold" },
    encoding: {
      x: { field: "at", type: "quantitative" },
      y: { value: "height" },
      text: { field: "text" },
    },
  });
  return [word(room, stretch.from, "left"), word(far, stretch.to, "right")];
}

/** Drops at the wet places; the words stand at the top of the field, joined to the place by a thin line. */
function wetMarks(wet: readonly WetMark[], stretch: Stretch): object[] {
  if (wet.length === 0) return [];
  const middle = (stretch.from + stretch.to) / 2;
  const drops = {
    data: { values: wet },
    mark: {
      type: "point",
      shape: DROP,
      size: 1100,
      filled: true,
      color: PALETTE.water.light,
      opacity: 1,
      stroke: PALETTE.paper.light,
      strokeWidth: 1,
    },
    encoding: { x: { field: "at", type: "quantitative" }, y: { field: "value", type: "quantitative" } },
  };
  const main = wet.filter(({ words: text }) => text !== "");
  const leader = {
    data: { values: main },
    mark: { type: "rule", color: PALETTE.faintInk.light, strokeWidth: 1 },
    encoding: {
      x: { field: "at", type: "quantitative" },
      y: { field: "value", type: "quantitative" },
      y2: { value: WORDS_AT },
    },
  };
  const words = (side: "left" | "right"): object => ({
    data: { values: main.filter(({ at }) => (at > middle ? "right" : "left") === side) },
    mark: { type: "text", align: side, dx: side === "right" ? -5 : 5, baseline: "middle", fontWeight: "bold" },
    encoding: { x: { field: "at", type: "quantitative" }, y: { value: WORDS_AT }, text: { field: "words" } },
  });
  return [leader, drops, words("left"), words("right")];
}

/** Part of the height kept free above the lines for the words about water. */
const ROOM_FOR_WORDS = 0.14;

/** Height at which the words about water stand, from the top of the field [px]. */
const WORDS_AT = 12;

/** A drop of water as a path for vega, one unit high. */
const DROP = "M0,-0.6C0.1,-0.35,0.36,-0.1,0.36,0.18A0.36,0.36,0,1,1,-0.36,0.18C-0.36,-0.1,-0.1,-0.35,0,-0.6Z";

/** Round ticks from zero to the end of the section, none in the margins of air. */
function ticks(end: number): number[] {
  const rough = end / TICKS_WANTED;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((size) => size >= rough) ?? rough;
  const count = Math.floor(end / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(6)));
}

const TICKS_WANTED = 6;
