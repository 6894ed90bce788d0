/**
 * The result: plain data, unrounded SI, the same from `assessProject` and from `--json`.
 * Months always run January to December, of the one year that begins at `startMonth`.
 */

export type * from "./air-result.ts";
export type * from "./build-up-result.ts";
export type * from "./comparison-study.ts";
export type * from "./finding-figures/beyond-method.ts";
export type * from "./finding-figures/checks.ts";
export type * from "./finding-figures/finding-figures.ts";
export type * from "./finding-figures/heat-and-roofs.ts";
export type * from "./finding-figures/plane.ts";
export type * from "./finding-figures/rain.ts";
export type * from "./finding-figures/surface.ts";
export type * from "./finding-figures/vapour-layer.ts";
export type * from "./finding-figures/water.ts";
export type * from "./further-check-results.ts";
export type * from "./heat-result.ts";
export type * from "./judgement-result.ts";
export type * from "./layer-result.ts";
export type * from "./moisture-result.ts";
export type * from "./placement-study.ts";
export type * from "./places.ts";
export type * from "./plane-picture.ts";
export type * from "./plane-result.ts";
export type * from "./project-result.ts";
export type * from "./remedy-changes.ts";
export type * from "./remedy-steps.ts";
export type * from "./sheet-places.ts";
export type * from "./spread-study.ts";
export type * from "./vapour-layer-result.ts";
export type * from "./variation-study.ts";
export type * from "./words.ts";
