import type { ProjectResult, ValueBasis } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { climatePlace } from "../words.ts";

/**
 * Method, limits, cautions and sources, on a page.
 *
 * @param result - the project's result
 * @returns the section
 */
export function methodAndSources(result: ProjectResult): Html {
  return html`<section id="method" class="page"><h2>Method and sources</h2>
<h3>Method</h3><ul>
<li>Interstitial condensation: ${result.method}, month by month, ${result.climate.severity}. Temperature falls with resistance, vapour pressure in a straight line over sd between places with water, where it is the saturation pressure. Vapour permeability of still air 2·10⁻¹⁰ kg/(m·s·Pa); an air layer has sd 0.01 m.</li>
<li>Every layer but air is cut into equal parts of at most 0.25 m²·K/W, so that water inside a thick layer is found. Every heat-flow path is calculated; the worst governs. The year starts in a wet month that follows a dry one.</li>
<li>The judgement is this project’s own, beside the standard: it counts drying within each month, and looks at amounts, sensitivity, wood and mould.</li>
<li>U-value: ISO 6946:2017, combined method, corrections of its Annex F. Floors on the ground or over a void: ISO 13370:2017.</li>
<li>Inside surface: ISO 13788:2012 clause 5, Rsi 0.25 m²·K/W, 80 % at the surface against mould, 100 % against drops. Corners, reveals and junctions are colder and not covered unless stated.</li>
<li>Humidity classes: ISO 13788:2012 Annex A. By outdoor temperature: EN 15026 Annex C.</li>
</ul>${starts(result)}
<h3 id="left-out">What is left out</h3><p>Dry, dries out and sound cover vapour diffusion through unbroken layers, in one dimension, steady within each month (scope of ISO 13788:2012). They do not cover:</p><ul>
<li>rain, splash, leaks, rising damp, and water carried by capillaries;</li>
<li>construction moisture: wet timber, wet plaster, rain during the works;</li>
<li>air that moves through gaps or inside air layers and insulation, which can carry far more water than diffusion;</li>
<li>moisture stored in materials, and properties that change with it;</li>
<li>sun, clear nights (unless asked for), latent heat, and swings shorter than a month;</li>
<li>heat and vapour that move sideways, but for the framing and junctions that an annex shows in the plane: other corners, reveals and fixings.</li></ul>
<h3>Cautions</h3><ul>
<li>A figure is as good as the values that went in. Use the maker’s declared values of the product bought, and recalculate when a product changes.</li>
<li>Wet rooms (drying clay, showers, drying laundry) belong to humidity class 4 or 5. A wetter room than stated voids the answer.</li>
<li>A vapour layer works only when it is unbroken: every socket, pipe and screw counts.</li>
<li>This report is not an approval; building control decides. Structure, fire, sound, radon and electrical safety are not assessed.</li></ul>
<h3>Sources of the values</h3>${sources(result)}
<p class="aside">Clauses and formulas are cited from memory of the standards where the project’s method text says so. The figures stand inside this file as data (JSON, element <code>result</code>), rounded to six significant digits.</p></section>`;
}

function starts(result: ProjectResult): Html {
  return tableMarkup({
    caption: "Surface resistances and start month",
    columns: [
      wordsUnder("Build-up"),
      figuresUnder("Rsi", "m²·K/W"),
      figuresUnder("Rse for U", "m²·K/W"),
      figuresUnder("Rse for vapour", "m²·K/W"),
      figuresUnder("Nodes"),
      wordsUnder("Start month"),
    ],
    rows: result.buildUps.map(({ name, heat, moisture }, index) => {
      const section = moisture?.governing ?? null;
      return [
        `${index + 1} ${shorten(name, 44)}`,
        heat ? fixed(heat.surfaceResistanceInside, 2) : "–",
        heat ? fixed(heat.surfaceResistanceOutside, 2) : "–",
        heat ? fixed(heat.surfaceResistanceOutsideMoisture, 2) : "–",
        section ? String(section.months[0]?.nodes.length ?? 0) : "–",
        section ? (section.startMonth ?? "no wet month") : "–",
      ];
    }),
  });
}

/** Each source once, with the materials taken from it. */
function sources({ buildUps, rooms, climate }: ProjectResult): Html {
  const uses = new Map<string, Set<string>>();
  const use = (source: string, basis: ValueBasis, name: string): void => {
    const key = `${source} (${basis})`;
    uses.set(key, (uses.get(key) ?? new Set()).add(name));
  };
  for (const { layers, framings } of buildUps) {
    for (const { source, basis, name } of layers) use(source, basis, name);
    for (const { source, basis, material } of framings) use(source, basis, material);
  }
  const entries = [...uses].map(([source, names]) => html`<li>${source}: ${[...names].join(", ")}</li>`);
  const own = [...new Set(rooms.map(({ source }) => source))].map((source) => html`<li>Rooms: ${source}</li>`);
  return html`<ul class="columns">${entries}<li>Climate ${climatePlace(climate)}: see <a href="#climate-origin">its origin</a></li>${own}</ul>`;
}
