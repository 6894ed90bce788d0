import { type Html, html } from "../html.ts";
import { fixed, GRAMS_PER_KILOGRAM, signed } from "../numbers.ts";
import { placeOf, shortPlaceOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { columnOf, headingOf } from "../terms/terms.ts";
import { shortMonth } from "../words.ts";

/**
 * Condensation, evaporation and accumulated moisture, month by month from the start of the water year.
 *
 * @param view - a section in which some month is wet
 * @returns the table
 */
export function waterTable(view: SectionView): Html {
  const only = view.wetNodes.length === 1 ? placeOf(view, view.wetNodes[0]!) : "in all";
  return tableMarkup({
    caption: `Condensation, evaporation and accumulated moisture, ${only}`,
    columns: [
      wordsUnder("Month"),
      columnOf("condensation", "g/m²"),
      columnOf("evaporation", "g/m²"),
      columnOf("accumulated moisture"),
    ],
    rows: view.waterYear.map(({ month, planes }) => {
      const condensed = planes.reduce((sum, { change }) => sum + Math.max(0, change), 0);
      const evaporated = planes.reduce((sum, { change }) => sum + Math.max(0, -change), 0);
      const held = planes.reduce((sum, plane) => sum + plane.held, 0);
      return [shortMonth(month), inGrams(condensed), inGrams(evaporated), inGrams(held)];
    }),
    marked: view.waterYear.flatMap(({ month }, index) => (month === view.section.peak.month ? [index] : [])),
  });
}

/**
 * The same interface by interface, where there are several.
 *
 * @param view - a section in which some month is wet
 * @returns tables of condensation rate and of accumulated moisture; null with one interface
 */
export function waterByInterface(view: SectionView): Html | null {
  if (view.wetNodes.length < 2) return null;
  return html`${groupsOf(view.wetNodes).map((nodes) => html`<div class="pair">${byPlace(view, nodes, "change")}${byPlace(view, nodes, "held")}</div>`)}<p class="aside">Places: ${view.wetNodes.map((node) => `${shortPlaceOf(view, node)} is ${placeOf(view, node)}`).join("; ")}.</p>`;
}

function byPlace(view: SectionView, nodes: readonly number[], what: "change" | "held"): Html {
  return tableMarkup({
    caption:
      what === "change"
        ? `${headingOf("condensation rate")} by interface, negative where water evaporates, g/m²`
        : `${headingOf("accumulated moisture")} by interface, g/m²`,
    columns: [wordsUnder("Month"), ...nodes.map((node) => figuresUnder(shortPlaceOf(view, node)))],
    rows: view.waterYear.map(({ month, planes }) => [
      shortMonth(month),
      ...nodes.map((node) => {
        const plane = planes.find((entry) => entry.node === node);
        if (!plane) return fixed(0, 1);
        return what === "change" ? signed(plane.change * GRAMS_PER_KILOGRAM, 1) : inGrams(plane.held);
      }),
    ]),
  });
}

const MOST_COLUMNS = 4;

function inGrams(amount: number): string {
  return fixed(amount * GRAMS_PER_KILOGRAM, 1);
}

function groupsOf(nodes: readonly number[]): number[][] {
  const groups: number[][] = [];
  for (let start = 0; start < nodes.length; start += MOST_COLUMNS)
    groups.push(nodes.slice(start, start + MOST_COLUMNS));
  return groups;
}
