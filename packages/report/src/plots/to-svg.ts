import { parse, type Runtime, View } from "vega";
import { expressionInterpreter } from "vega-interpreter";
import { compile } from "vega-lite";
import { escapeText, showHiddenMarks } from "../escape.ts";
import { type Html, markup } from "../html.ts";
import { DRAWING_FONT } from "../palette.ts";
import { PLOT_TEXT, type Plot, type PlotKind } from "./plot.ts";
import { tidySvg } from "./tidy-svg.ts";

/**
 * A plot as an SVG element that stands inside the page. No code is made from text: expressions are interpreted.
 *
 * @param plot - what `plots/` made
 * @param id - name of the element, unique in the page; letters, figures and hyphens
 * @returns the element with its title and description; coordinates to a tenth of a pixel; nothing it has to fetch
 * @throws Error when vega or vega-lite warns of anything
 */
export async function toSvg(plot: Plot, id: string): Promise<Html> {
  const view = new View(runtimeOf(plot.kind), { renderer: "none", logger: STRICT_LOGGER, expr: expressionInterpreter });
  for (const [name, rows] of Object.entries(plot.data))
    view.data(
      name,
      rows.map((row) => ({ ...row })),
    );
  const { size } = plot.kind;
  if (size !== undefined) view.width(size.width).height(size.height);
  const drawn = await view.toSVG();
  view.finalize();
  return markup(labelled(tidySvg(showHiddenMarks(drawn), id), plot, id));
}

const runtimes = new WeakMap<PlotKind, Runtime>();

/** The kind, compiled and parsed: once in the life of the program. */
function runtimeOf(kind: PlotKind): Runtime {
  const known = runtimes.get(kind);
  if (known !== undefined) return known;
  const { spec } = compile(structuredClone(kind.spec), { logger: STRICT_LOGGER });
  const runtime = parse(spec, undefined, { ast: true });
  runtimes.set(kind, runtime);
  return runtime;
}

function labelled(svg: string, plot: Plot, id: string): string {
  const attributes = `id="${id}" class="plot" role="img" aria-labelledby="${id}-title ${id}-text" ${SHARED_LOOK}`;
  const title = `<title id="${id}-title">${escapeText(plot.title)}</title>`;
  const description = `<desc id="${id}-text">${escapeText(plot.description)}</desc>`;
  return svg.replace(/^<svg([^>]*)>/, (_, rest: string) => `<svg ${attributes}${rest}>${title}${description}`);
}

/** Attributes shared by most texts of a plot. */
const SHARED_LOOK = `font-family='${DRAWING_FONT}' font-size="${PLOT_TEXT}"`;

/** A warning in a plot is a fault of the plot; only rows that a kind may do without, such as drops, may be missing. */
const STRICT_LOGGER = {
  level(): number {
    return 0;
  },
  error(...words: readonly unknown[]): never {
    throw new Error(`a plot went wrong: ${words.join(" ")}`);
  },
  warn(...words: readonly unknown[]) {
    if (String(words[0]).startsWith("Infinite extent")) return this;
    throw new Error(`a plot gave a warning: ${words.join(" ")}`);
  },
  info() {
    return this;
  },
  debug() {
    return this;
  },
};
