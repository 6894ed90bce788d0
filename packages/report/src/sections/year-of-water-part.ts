import { type Html, html } from "../html.ts";
import { fixed, grams, gramsPerArea, percent, signed } from "../numbers.ts";
import { placeOf, shortPlaceOf } from "../places.ts";
import { toSvg } from "../plots/to-svg.ts";
import { yearOfWaterPlot } from "../plots/year-of-water-plot.ts";
import { type SectionView, viewOf } from "../section-view.ts";
import { tableMarkup } from "../table.ts";
import { shortMonth, VERDICT_MEANING } from "../words.ts";
import { verdictWords } from "./coverage.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The year's water: every section's outcome, and the governing one month by month and interface by interface. */
export async function yearOfWaterPart({ buildUp, view, id }: BuildUpPage): Promise<Part | null> {
  if (!view || !buildUp.moisture) return null;
  const wet = view.wetNodes.length > 0;
  const plot = wet
    ? await figure(
        toSvg(yearOfWaterPlot(view), `${id}-plot-water`),
        `Water held at the end of each month, from ${view.waterYear[0]!.month}, section ${view.section.name}. The table below has the figures.`,
        "plain",
      )
    : null;
  const body = html`${summary(view)}${sections(view)}${wet ? html`<div class="pair">${plot}${total(view)}</div>${byInterface(view)}` : html`<p>Condensed, evaporated and held: nothing at any interface in any month.</p>`}${beyondTheStandard(view)}`;
  return { key: "water", heading: "The year’s water", body };
}

function summary(view: SectionView): Html {
  const { section } = view;
  const wetMonths = view.section.months.filter(({ planes }) => planes.some(({ held }) => held > 0)).length;
  const figures =
    section.peak.amount > 0
      ? html` Peak ${gramsPerArea(section.peak.amount)} in ${section.peak.month}; months wet: ${wetMonths}; ${section.dryBy ? `dry by ${section.dryBy}` : "not dry within the year"}; carried over ${gramsPerArea(section.carriedOver)}.`
      : null;
  return html`<p>Section ${section.name} governs. Verdict: ${verdictWords(section.verdict)}: ${VERDICT_MEANING[section.verdict]}.${figures}</p>${amounts(view)}`;
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
      fixed(section.share * PER_CENT, 1),
      html`${verdictWords(section.verdict)}`,
      grams(section.peak.amount),
      section.peak.month ?? "–",
      grams(section.carriedOver),
      section.leastMargin
        ? `${fixed(section.leastMargin.margin, 0)} Pa, ${section.leastMargin.month}, ${placeOf(viewOf(view.buildUp, section), section.leastMargin.node)}`
        : "–",
    ]),
    marked: all.flatMap(({ name }, index) => (name === view.section.name ? [index] : [])),
  });
}

const PER_CENT = 100;

function total(view: SectionView): Html {
  const only = view.wetNodes.length === 1 ? placeOf(view, view.wetNodes[0]!) : "in all";
  return tableMarkup({
    caption: `Condensed, evaporated and held, ${only}, g/m²`,
    columns: [
      { head: "Month", kind: "words" },
      { head: "Condensed", kind: "figures" },
      { head: "Evaporated", kind: "figures" },
      { head: "Held at its end", kind: "figures" },
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

/** The same interface by interface, where there are several. */
function byInterface(view: SectionView): Html | null {
  if (view.wetNodes.length < 2) return null;
  return html`${groupsOf(view.wetNodes).map((nodes) => html`<div class="pair">${byPlace(view, nodes, "change")}${byPlace(view, nodes, "held")}</div>`)}<p class="aside">Places: ${view.wetNodes.map((node) => `${shortPlaceOf(view, node)} is ${placeOf(view, node)}`).join("; ")}.</p>`;
}

function byPlace(view: SectionView, nodes: readonly number[], what: "change" | "held"): Html {
  return tableMarkup({
    caption:
      what === "change"
        ? "By interface: condensed (+) or evaporated (−), g/m²"
        : "By interface: held at the month’s end, g/m²",
    columns: [
      { head: "Month", kind: "words" },
      ...nodes.map((node) => ({ head: shortPlaceOf(view, node), kind: "figures" as const })),
    ],
    rows: view.waterYear.map(({ month, planes }) => [
      shortMonth(month),
      ...nodes.map((node) => {
        const plane = planes.find((entry) => entry.node === node);
        if (!plane) return fixed(0, 1);
        return what === "change" ? signed(plane.change * GRAMS, 1) : inGrams(plane.held);
      }),
    ]),
  });
}

const GRAMS = 1000;
const MOST_COLUMNS = 4;

function inGrams(amount: number): string {
  return fixed(amount * GRAMS, 1);
}

function groupsOf(nodes: readonly number[]): number[][] {
  const groups: number[][] = [];
  for (let start = 0; start < nodes.length; start += MOST_COLUMNS)
    groups.push(nodes.slice(start, start + MOST_COLUMNS));
  return groups;
}

function beyondTheStandard(view: SectionView): Html | null {
  const { withinMonth, repeating, writtenOff, verdict } = view.section;
  if (verdict === "dry" && withinMonth.verdict === "dry") return null;
  const runOn = repeating.settles
    ? `The year repeated settles after ${repeating.years} ${repeating.years === 1 ? "year" : "years"} at ${gramsPerArea(repeating.level)}.`
    : `The year repeated does not settle: ${gramsPerArea(repeating.growthPerYear)} more each year.`;
  return html`<p class="aside">Beyond the standard: with drying counted inside the month the verdict is ${verdictWords(withinMonth.verdict)}, peak ${gramsPerArea(withinMonth.peak.amount)}; the judgement follows this one. Written off at month ends by the standard’s rule: ${gramsPerArea(writtenOff)}. ${runOn}</p>`;
}
