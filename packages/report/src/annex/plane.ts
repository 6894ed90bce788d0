import type { BuildUpResult, PlaneResult, PlaneRunResult } from "@warmside/core";
import { planeDrawing } from "../drawing/plane-drawing.ts";
import { figure } from "../figure.ts";
import { type Html, html } from "../html.ts";
import { fixed, grams, millimetres } from "../numbers.ts";
import { planeInWords } from "../plane-words.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** What straight sections cannot show: vapour that passes round tight layers at the framing, and metal channels. */
export async function planePart({ buildUp, id }: AnnexOf): Promise<Part | null> {
  const { plane } = buildUp;
  if (plane === null) return null;
  const body = html`${await planeFigure(buildUp, plane, `${id}-plane`)}${channelLine(plane)}${casesTable(plane)}${monthsTable(plane)}`;
  return { heading: "In the plane", body };
}

/**
 * The picture of the plane, with its message above it.
 *
 * @param buildUp - a build-up of the result
 * @param plane - what the plane tells of it
 * @param id - prefix of the names inside it, unique in the page
 * @returns the figure
 */
export async function planeFigure(buildUp: BuildUpResult, plane: PlaneResult, id: string): Promise<Html> {
  const { message, caption, drawn } = planeInWords(buildUp, plane);
  return await figure(message, planeDrawing(plane.picture, drawn, id), caption);
}

function channelLine({ channel }: PlaneResult): Html | null {
  if (channel === null) return null;
  const { lower, upper, temperatureFactor, wholeTemperatureFactor } = channel;
  return html`<p>U lies between ${fixed(lower, 4)} and ${fixed(upper, 4)} W/(m²·K), before corrections. Temperature factor ${fixed(temperatureFactor, 3)} over a channel, ${fixed(wholeTemperatureFactor, 3)} on the whole.</p>`;
}

/** As built, taped, and with a gap. */
function casesTable({ framing, asBuilt, withTape, withGap }: PlaneResult): Html | null {
  const others = [
    ...(withGap === null ? [] : [{ name: `with a gap of ${millimetres(withGap.gap)} mm`, run: withGap }]),
    ...(withTape === null ? [] : [{ name: `taped over the ${framing}`, run: withTape }]),
  ];
  if (others.length === 0) return null;
  const row = (name: string, { verdict, peak, strip, carriedOver }: PlaneRunResult): string[] => [
    name,
    verdict,
    grams(peak.amount),
    grams(strip?.amount ?? 0),
    grams(carriedOver),
  ];
  return tableMarkup({
    caption: "Joints beside the framing",
    columns: [
      wordsUnder("Case"),
      wordsUnder("Verdict"),
      figuresUnder("At most, over the whole", "g/m²"),
      figuresUnder("At most, worst 50 mm", "g/m²"),
      figuresUnder("Left after 12 months", "g/m²"),
    ],
    rows: [row("as worked out", asBuilt), ...others.map(({ name, run }) => row(name, run))],
    marked: [0],
  });
}

function monthsTable({ asBuilt }: PlaneResult): Html | null {
  if (asBuilt.strip === null) return null;
  return tableMarkup({
    caption: "Accumulated moisture at each month’s end, in the plane",
    columns: [wordsUnder("Month"), figuresUnder("Over the whole", "g/m²"), figuresUnder("Worst 50 mm", "g/m²")],
    rows: asBuilt.months.map(({ month, mean, strip }) => [shortMonth(month), grams(mean), grams(strip)]),
    marked: asBuilt.months.flatMap(({ month }, index) => (month === asBuilt.strip!.month ? [index] : [])),
  });
}
