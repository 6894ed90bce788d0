import type { ProjectResult, ValueBasis } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { climatePlace } from "../words.ts";

/**
 * Where the values come from: each source once, with the materials taken from it; then assumed values by name.
 *
 * @param result - the project's result
 * @returns the section
 */
export function sources(result: ProjectResult): Html {
  const uses = new Map<string, Set<string>>();
  const assumed = new Set<string>();
  for (const layer of result.buildUps.flatMap(({ layers }) => layers)) {
    const key = `${layer.source} (${BASIS_WORDS[layer.basis]})`;
    uses.set(key, (uses.get(key) ?? new Set()).add(layer.name));
    if (layer.basis === "assumed") assumed.add(layer.name);
  }
  const entries = [...uses].map(([source, names]) => html`<li>${source}: ${[...names].join(", ")}</li>`);
  const rooms = result.rooms.map(({ name, source }) => html`<li>Room ${name}: ${source}</li>`);
  return html`<section id="sources"><h2>Sources of the values</h2><h3>Materials</h3><ul>${entries}</ul>
<p>${assumed.size > 0 ? `To be confirmed, since their values are assumed: ${[...assumed].join(", ")}.` : "No value of a material is assumed."}</p>
<h3>Climate and rooms</h3><ul><li>Climate ${climatePlace(result.climate)}: ${climateSource(result)}</li>${rooms}</ul>
<p>The figures of this report stand inside the file as data (JSON, element <code>result</code>), rounded to six significant digits, so that they can be checked by machine: node by node for each governing section (where a node lies is told in January alone), month by month for the other sections.</p></section>`;
}

/** The lines of the climate table stand once, with the place. */
function climateSource({ climate }: ProjectResult): Html {
  return climate.origin.some((line) => line.trim() !== "")
    ? html`as the <a href="#climate-origin">origin of the climate table</a> says`
    : html`its table says nothing about its origin`;
}

const BASIS_WORDS: Readonly<Record<ValueBasis, string>> = {
  declared: "declared by the maker",
  tabulated: "tabulated",
  assumed: "assumed",
};
