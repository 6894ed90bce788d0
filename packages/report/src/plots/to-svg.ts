import * as vega from "vega";
import { compile } from "vega-lite";
import { escapeText, showHiddenMarks } from "../escape.ts";
import { type Html, markup } from "../html.ts";
import { DRAWING_FONT } from "../palette.ts";
import type { Plot } from "./plot.ts";
import { textWidth } from "./text-width.ts";
import { tidySvg } from "./tidy-svg.ts";

/**
 * A plot as an SVG element that stands inside the page.
 *
 * @param plot - what `plots/` made
 * @param id - name of the element, unique in the page; letters, figures and hyphens
 * @returns the element with its title and description; coordinates to a tenth of a pixel; nothing it has to fetch
 * @throws Error when vega or vega-lite warns of anything
 */
export async function toSvg(plot: Plot, id: string): Promise<Html> {
  useTrueTextWidths();
  const { spec } = compile(plot.spec, { logger: STRICT_LOGGER });
  const view = new vega.View(vega.parse(spec), { renderer: "none", logger: STRICT_LOGGER });
  const drawn = await view.toSVG();
  view.finalize();
  return markup(labelled(tidySvg(showHiddenMarks(drawn), id), plot, id));
}

function labelled(svg: string, plot: Plot, id: string): string {
  const attributes = `id="${id}" class="plot" role="img" aria-labelledby="${id}-title ${id}-text" ${SHARED_LOOK}`;
  const title = `<title id="${id}-title">${escapeText(plot.title)}</title>`;
  const description = `<desc id="${id}-text">${escapeText(plot.description)}</desc>`;
  return svg.replace(/^<svg([^>]*)>/, (_, rest: string) => `<svg ${attributes}${rest}>${title}${description}`);
}

/** What most texts of a plot share, said once. */
const SHARED_LOOK = `font-family='${DRAWING_FONT}' font-size="13"`;

interface TextItem {
  fontSize?: number;
  fontWeight?: string | number;
}

/** Tells vega the true widths of texts: without a canvas it guesses far too wide. */
function useTrueTextWidths(): void {
  const metrics = (vega as unknown as { textMetrics: { width: (item: TextItem, text: unknown) => number } })
    .textMetrics;
  metrics.width = (item, text) =>
    textWidth(String(text ?? ""), item.fontSize ?? USUAL_FONT_SIZE, isBold(item.fontWeight));
}

const USUAL_FONT_SIZE = 11;
const BOLD_FROM = 600;

function isBold(weight: string | number | undefined): boolean {
  return weight === "bold" || Number(weight) >= BOLD_FROM;
}

/** A warning in a plot is a fault of the plot. */
const STRICT_LOGGER = {
  level(): never | typeof STRICT_LOGGER {
    return STRICT_LOGGER;
  },
  error(...words: readonly unknown[]): never {
    throw new Error(`a plot went wrong: ${words.join(" ")}`);
  },
  warn(...words: readonly unknown[]): never {
    throw new Error(`a plot gave a warning: ${words.join(" ")}`);
  },
  info(): typeof STRICT_LOGGER {
    return STRICT_LOGGER;
  },
  debug(): typeof STRICT_LOGGER {
    return STRICT_LOGGER;
  },
} as never;
