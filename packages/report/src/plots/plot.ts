import type { TopLevelSpec } from "vega-lite";
import { DRAWING_FONT, PALETTE } from "../palette.ts";

/**
 * A kind of plot: its specification without data. It is compiled and parsed once, and every drawing gives it its own
 * rows. Nothing in it hangs on the width of a text, so that it is drawn alike with and without a canvas: sizes,
 * paddings and the room for axis labels are fixed, and keys stand in the caption.
 */
export interface PlotKind {
  readonly spec: TopLevelSpec;
  /** Size of the whole field where it is made of several [px]. */
  readonly size?: { readonly width: number; readonly height: number };
}

type Encoding = NonNullable<Extract<TopLevelSpec, { mark: unknown }>["encoding"]>;
/** Channels of a specification that several layers share. */
export type X = NonNullable<Encoding["x"]>;
export type Y = NonNullable<Encoding["y"]>;
export type Part = Extract<TopLevelSpec, { vconcat: unknown }>["vconcat"][number];

/** A channel that tells names apart; the key stands in the caption. */
export interface Nominal<Value> {
  field: string;
  type: "nominal";
  scale: { domain: string[]; range: Value[] };
  legend: null;
}

/**
 * A channel that tells names apart.
 *
 * @param field - of the data, holds the name
 * @param domain - the names
 * @param range - what each is drawn with: a colour, a shape, a dash
 * @returns vega-lite's definition of the channel
 */
export function nominal<Value>(field: string, domain: readonly string[], range: readonly Value[]): Nominal<Value> {
  return { field, type: "nominal", scale: { domain: [...domain], range: [...range] }, legend: null };
}

/** Dashes of the first of two lines and of the second [px]. */
export const SOLID_AND_DASHED: number[][] = [
  [1, 0],
  [6, 4],
];

/** A row of a plot's data. */
export type Row = Readonly<Record<string, string | number | boolean | null>>;

/** One drawing: what it shows in words, its kind, and its rows by the names that the kind gives its data. */
export interface Plot {
  /** What it shows, short; read out as the plot's name. */
  title: string;
  /** What there is to see in it, in plain sentences. */
  description: string;
  kind: PlotKind;
  data: Readonly<Record<string, readonly Row[]>>;
}

/** Size of every text [px]: at 11.8 cm no less than 8 pt. */
export const PLOT_TEXT = 12.5;

/** The schema that every specification names. */
const PLOT_SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json";

/**
 * What all kinds share: quiet axes, horizontal guide lines and a fixed layout.
 *
 * @param padding - room around the field for labels and titles [px]
 * @returns members of a specification
 */
export function layout(
  padding: { left: number; right: number; top: number; bottom: number } = { left: 52, right: 14, top: 26, bottom: 42 },
): Pick<TopLevelSpec, "$schema" | "padding" | "autosize" | "config"> {
  return {
    $schema: PLOT_SCHEMA,
    padding,
    autosize: { type: "none" },
    config: {
      font: DRAWING_FONT,
      background: "transparent",
      aria: false,
      view: { stroke: PALETTE.rule.light },
      axis: {
        labelFontSize: PLOT_TEXT,
        titleFontSize: PLOT_TEXT,
        titleFontWeight: "normal",
        labelColor: PALETTE.ink.light,
        titleColor: PALETTE.ink.light,
        domainColor: PALETTE.faintInk.light,
        tickColor: PALETTE.faintInk.light,
        gridColor: PALETTE.rule.light,
        labelFlush: false,
        labelOverlap: false,
        labelLimit: 0,
      },
      axisQuantitative: { format: "~f" },
      axisX: { grid: false, minExtent: 18, maxExtent: 18, titlePadding: 6 },
      axisY: {
        minExtent: 34,
        maxExtent: 34,
        titleAngle: 0,
        titleAlign: "left",
        titleAnchor: "end",
        titleBaseline: "bottom",
        titleX: -40,
        titleY: -9,
        tickCount: 5,
      },
      text: { fontSize: PLOT_TEXT, color: PALETTE.ink.light },
    },
  };
}
