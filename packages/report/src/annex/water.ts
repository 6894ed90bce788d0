import { type Html, html } from "../html.ts";
import { fixed, grams, gramsPerArea, percent } from "../numbers.ts";
import { placeOf } from "../places.ts";
import { type SectionView, viewOf } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { pathWords } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";
import { waterByInterface, waterTable } from "./water-tables.ts";

/** Accumulated moisture: every heat-flow path, and the governing one month by month and interface by interface. */
export function waterPart({ view }: AnnexOf): Part | null {
  if (!view) return null;
  const wet = view.wetNodes.length > 0;
  const paths = pathTable(view);
  if (!wet && paths === null) return null;
  return {
    heading: "Accumulated moisture",
    body: html`${paths}${wet ? html`${amounts(view)}${waterTable(view)}${waterByInterface(view)}` : null}`,
  };
}

/** The amount compared with the limits of the two layers that meet there. */
function amounts(view: SectionView): Html | null {
  const { peak } = view.section;
  const fullest = view.section.months.find(({ month }) => month === peak.month);
  const planes = fullest?.planes.filter(({ held }) => held > 0) ?? [];
  if (planes.length === 0) return null;
  const entries = planes.map(({ node, held }) => {
    const layer = view.buildUp.layers[fullest!.nodes[node]?.layer ?? -1];
    const next = view.buildUp.layers[fullest!.nodes[node + 1]?.layer ?? -1];
    const shares = [...new Set([layer, next])].flatMap((entry) => {
      const mass =
        entry?.density && (entry.kind === "wood" || entry.kind === "board") ? entry.density * entry.thickness : 0;
      return mass > 0 && entry
        ? [`${percent(held / mass, 1)} of the dry mass of layer ${entry.number}, ${fixed(mass, 1)} kg/m²`]
        : [];
    });
    return html`<li>${placeOf(view, node)}: ${gramsPerArea(held)}${shares.length > 0 ? `; ${shares.join("; ")}` : null}</li>`;
  });
  return html`<p>At the end of ${peak.month}, the maximum, the water is:</p><ul>${entries}</ul>`;
}

function pathTable(view: SectionView): Html | null {
  const all = view.buildUp.moisture!.sections;
  if (all.length < 2) return null;
  return tableMarkup({
    caption: "Heat-flow paths",
    columns: [
      wordsUnder("Path"),
      figuresUnder("Share", "%"),
      wordsUnder("Verdict"),
      figuresUnder("Ma at most", "g/m²"),
      wordsUnder("In"),
      figuresUnder("Left after 12 months", "g/m²"),
      wordsUnder("Smallest margin"),
    ],
    rows: all.map((section) => [
      pathWords(section.id),
      viewOf(view.buildUp, section).share,
      section.verdict,
      grams(section.peak.amount),
      section.peak.month ?? "–",
      grams(section.carriedOver),
      section.leastMargin
        ? `${fixed(section.leastMargin.margin, 0)} Pa, ${section.leastMargin.month}, ${placeOf(viewOf(view.buildUp, section), section.leastMargin.node)}`
        : "–",
    ]),
    marked: [view.section.index],
  });
}
