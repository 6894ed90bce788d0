import { html } from "../html.ts";
import { fixed, grams } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** How long water that got in takes to leave. */
export function trappedWaterPart({ buildUp }: BuildUpPage): Part | null {
  if (buildUp.trappedWater.length === 0) return null;
  const days = (count: number | null): string => (count === null ? "over 3650" : fixed(count, 0));
  const table = tableMarkup({
    caption: "Water put into a layer, and how it leaves",
    columns: [
      { head: "Layer", kind: "words" },
      { head: "Water", unit: "g/m²", kind: "figures" },
      { head: "From", kind: "words" },
      { head: "Days to dry", kind: "figures" },
      { head: "To the room (− from it)", unit: "g/m²", kind: "figures" },
      { head: "Outwards", unit: "g/m²", kind: "figures" },
      { head: "Most held elsewhere", unit: "g/m²", kind: "figures" },
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
  const outside = buildUp.trappedWater.some(({ withinScope }) => !withinScope);
  return {
    key: "trapped-water",
    heading: "Trapped water",
    body: html`<p>ISO 13788:2012 clause 7, with drying inside the month.${outside ? " Where the layer does not lie between two tight ones this use is ours, beyond the clause." : null}</p>${table}${variants.length > 0 ? html`<ul>${variants}</ul>` : null}`,
  };
}
