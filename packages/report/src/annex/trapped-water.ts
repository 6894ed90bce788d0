import { MONTH_NAMES, type TrappedWaterResult } from "@warmside/core";
import { figure } from "../figure.ts";
import { type Html, html } from "../html.ts";
import { fixed, grams } from "../numbers.ts";
import { toSvg } from "../plots/to-svg.ts";
import { trappedWaterPlot } from "../plots/trapped-water-plot.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** How long trapped water takes to leave. */
export async function trappedWaterPart({ buildUp, id }: AnnexOf): Promise<Part | null> {
  if (buildUp.trappedWater.length === 0) return null;
  const days = (count: number | null): string => (count === null ? "over 3650" : fixed(Math.ceil(count), 0));
  const table = tableMarkup({
    caption: "Water put into a layer, and how it leaves",
    columns: [
      wordsUnder("Layer"),
      figuresUnder("Water", "g/m²"),
      wordsUnder("From"),
      figuresUnder("Days to dry"),
      figuresUnder("Left to the room (− entered)", "g/m²"),
      figuresUnder("Outwards", "g/m²"),
      figuresUnder("Most elsewhere", "g/m²"),
    ],
    rows: buildUp.trappedWater.map((water) => [
      `${water.layer + 1} ${water.name}`,
      grams(water.amount),
      water.startMonth,
      days(water.daysToDry),
      grams(water.toRoom),
      grams(water.toFarSide),
      `${grams(water.mostHeldElsewhere)}${water.elsewhere ? `, ${water.elsewhere}` : ""}`,
    ]),
  });
  const variants = buildUp.trappedWater.flatMap((water) =>
    water.variants.map(({ change, daysToDry }) => html`<li>${water.name}, ${change}: ${days(daysToDry)} days</li>`),
  );
  const courses = await Promise.all(
    buildUp.trappedWater.map((water, index) => course(water, `${id}-trapped-${index + 1}`)),
  );
  const outside = buildUp.trappedWater.some(({ withinScope }) => !withinScope);
  return {
    heading: "Trapped water",
    body: html`<p>ISO 13788:2012 clause 7, with drying within the month.${outside ? " Where the layer does not lie between two tight ones this use is ours, beyond the clause." : null}</p>${table}${courses}${variants.length > 0 ? html`<ul>${variants}</ul>` : null}`,
  };
}

/** One layer's water over the years: the plot, and its figures with a year in each column. */
async function course(water: TrappedWaterResult, id: string): Promise<Html> {
  const year = MONTH_NAMES.length;
  const years = Math.ceil(water.held.length / year);
  const start = Math.max(0, MONTH_NAMES.indexOf(water.startMonth as (typeof MONTH_NAMES)[number]));
  const plot = figure(
    `Water leaves layer ${water.layer + 1}, ${water.name}, in ${water.daysToDry === null ? "over ten years" : `${fixed(Math.ceil(water.daysToDry), 0)} days`}`,
    toSvg(trappedWaterPlot(water), id),
    `Solid: in the layer${water.mostHeldElsewhere > 0 ? "; dashed: elsewhere" : ""}. Months from the beginning of ${water.startMonth}.`,
  );
  const cell = (index: number): string => {
    const held = water.held[index];
    const beside = water.heldElsewhere[index] ?? 0;
    if (held === undefined) return "–";
    return beside > 0 ? `${grams(held)} + ${grams(beside)}` : grams(held);
  };
  const table = tableMarkup({
    caption: `At the end of each month, g/m²${water.mostHeldElsewhere > 0 ? ": in the layer + elsewhere" : ""}`,
    columns: [wordsUnder("Month"), ...Array.from({ length: years }, (_, index) => figuresUnder(`year ${index + 1}`))],
    rows: MONTH_NAMES.map((_, month) => [
      shortMonth(MONTH_NAMES[(start + month) % year]!),
      ...Array.from({ length: years }, (_, index) => cell(index * year + month)),
    ]),
  });
  return html`${await plot}${table}`;
}
