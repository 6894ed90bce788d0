/** Result in, one HTML text out; and the plots and the drawing for pages of one's own. */
export { sectionDrawing } from "./drawing/section-drawing.ts";
export { Html, html, type Insertion, markup } from "./html.ts";
export { type ColourName, PALETTE, type Shade } from "./palette.ts";
export { comparisonPlot } from "./plots/comparison-plot.ts";
export type { Plot, PlotKind } from "./plots/plot.ts";
export { spreadPlot } from "./plots/spread-plot.ts";
export { toSvg } from "./plots/to-svg.ts";
export { twelveMonthsPlot } from "./plots/twelve-months-plot.ts";
export { vapourPlot } from "./plots/vapour-plot.ts";
export { variationPlot } from "./plots/variation-plot.ts";
export { type DocumentStrip, type ReportOptions, renderReport } from "./render-report.ts";
export { governingView, type SectionView, viewOf } from "./section-view.ts";
