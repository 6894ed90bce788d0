import { type Html, html } from "../html.ts";
import { fixed, grams, gramsPerArea, percent } from "../numbers.ts";
import { placeOf } from "../places.ts";
import { toSvg } from "../plots/to-svg.ts";
import { yearOfWaterPlot } from "../plots/year-of-water-plot.ts";
import { type SectionView, viewOf } from "../section-view.ts";
import { tableMarkup } from "../table.ts";
import { sentence, VERDICT_MEANING, wayWords } from "../words.ts";
import { COVERED_BY_TABLE, verdictCell, verdictWords } from "./coverage.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";
import { waterByInterface, waterTable } from "./water-tables.ts";

/** The year's water: every section's outcome, and the governing one month by month and interface by interface. */
export async function yearOfWaterPart({ buildUp, view, id }: BuildUpPage): Promise<Part | null> {
  if (!view || !buildUp.moisture) return null;
  const wet = view.wetNodes.length > 0;
  const plot = wet
    ? await figure(
        toSvg(yearOfWaterPlot(view), `${id}-plot-water`),
        `Water held at the end of each month, from ${view.waterYear[0]!.month}, ${wayWords(view.section.name)}. Its table has the figures.`,
        "plain",
      )
    : null;
  const body = html`${summary(view)}${sections(view)}${wet ? html`<div class="pair">${plot}${waterTable(view)}</div>${waterByInterface(view)}` : html`<p>Condensed, evaporated and held: nothing at any interface in any month.</p>`}${beyondTheStandard(view)}`;
  return { key: "water", heading: "The year’s water", body };
}

function summary(view: SectionView): Html {
  const { section } = view;
  const wetMonths = view.section.months.filter(({ planes }) => planes.some(({ held }) => held > 0)).length;
  const figures =
    section.peak.amount > 0
      ? html` Peak ${gramsPerArea(section.peak.amount)} in ${section.peak.month}; months wet: ${wetMonths}; ${section.dryBy ? `dry by ${section.dryBy}` : "not dry within the year"}; carried over ${gramsPerArea(section.carriedOver)}.`
      : null;
  return html`<p>${section.name === "whole" ? null : `${sentence(wayWords(section.name))} governs. `}Verdict: ${verdictWords(section.verdict)}: ${VERDICT_MEANING[section.verdict]}.${figures}</p>${amounts(view)}`;
}

/** The amount against what it sits on: the two layers that meet there. */
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
  return html`<p>At its fullest, end of ${peak.month}, the water sits:</p><ul>${entries}</ul>`;
}

function sections(view: SectionView): Html | null {
  const all = view.buildUp.moisture!.sections;
  if (all.length < 2) return null;
  return tableMarkup({
    caption: "Every way through",
    columns: [
      { head: "Section", kind: "words" },
      { head: "Share", unit: "%", kind: "figures" },
      { head: "Verdict", kind: "words" },
      { head: "Peak", unit: "g/m²", kind: "figures" },
      { head: "Peak in", kind: "words" },
      { head: "Carried over", unit: "g/m²", kind: "figures" },
      { head: "Least margin", kind: "words" },
    ],
    rows: all.map((section) => [
      section.name,
      viewOf(view.buildUp, section).share,
      verdictCell(section.verdict),
      grams(section.peak.amount),
      section.peak.month ?? "–",
      grams(section.carriedOver),
      section.leastMargin
        ? `${fixed(section.leastMargin.margin, 0)} Pa, ${section.leastMargin.month}, ${placeOf(viewOf(view.buildUp, section), section.leastMargin.node)}`
        : "–",
    ]),
    marked: all.flatMap((section, index) => (section === view.section ? [index] : [])),
    note: COVERED_BY_TABLE,
  });
}

function beyondTheStandard(view: SectionView): Html | null {
  const { withinMonth, repeating, writtenOff, verdict } = view.section;
  if (verdict === "dry" && withinMonth.verdict === "dry") return null;
  const runOn = repeating.settles
    ? `The year repeated settles after ${repeating.years} ${repeating.years === 1 ? "year" : "years"} at ${gramsPerArea(repeating.level)}.`
    : `The year repeated does not settle: ${gramsPerArea(repeating.growthPerYear)} more each year.`;
  return html`<p class="aside">Beyond the standard: with drying counted inside the month the verdict is ${verdictWords(withinMonth.verdict)}, peak ${gramsPerArea(withinMonth.peak.amount)}; the judgement follows this one. Written off at month ends by the standard’s rule: ${gramsPerArea(writtenOff)}. ${runOn}</p>`;
}
