import type { TopLevelSpec } from "vega-lite";
import { DRAWING_FONT, PALETTE } from "../palette.ts";

/** A plot as data: what it shows in words, and how it is drawn. */
export interface Plot {
  /** What it shows, short; read out as the plot's name. */
  title: string;
  /** What there is to see in it, in plain sentences. */
  description: string;
  /** vega-lite specification, plain data. */
  spec: TopLevelSpec;
}

/** The schema that every specification names. */
export const PLOT_SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json";

/** Width and height of a plot that stands alone, axes and key counted [px]. */
export const PLOT_WIDTH = 500;
export const PLOT_HEIGHT = 340;

/** A plot that keeps to its outer size whatever its labels need. */
export const FIT: Readonly<Record<string, string>> = { type: "fit", contains: "padding" };

/** One look for all plots: quiet axes, horizontal guide lines, text large enough for a telephone. */
export const PLOT_CONFIG: Readonly<Record<string, unknown>> = {
  font: DRAWING_FONT,
  background: "transparent",
  aria: false,
  view: { stroke: PALETTE.rule.light },
  axis: {
    labelFontSize: 13,
    titleFontSize: 13,
    titleFontWeight: "normal",
    labelColor: PALETTE.ink.light,
    titleColor: PALETTE.ink.light,
    domainColor: PALETTE.faintInk.light,
    tickColor: PALETTE.faintInk.light,
    gridColor: PALETTE.rule.light,
    labelFlush: false,
  },
  axisQuantitative: { format: "~f" },
  axisX: { grid: false },
  axisY: { titleAngle: 0, titleAlign: "left", titleAnchor: "end", titleBaseline: "bottom", titleY: -24, tickCount: 5 },
  header: { labelFontSize: 13, labelFontWeight: "bold", labelColor: PALETTE.ink.light, title: null, labelPadding: 4 },
  legend: {
    orient: "bottom",
    title: null,
    labelFontSize: 13,
    labelColor: PALETTE.ink.light,
    symbolSize: 420,
    symbolStrokeWidth: 2.5,
    labelLimit: 0,
    columnPadding: 18,
  },
  text: { fontSize: 13, color: PALETTE.ink.light },
};
