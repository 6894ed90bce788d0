import { inSpeech, MONTH_NAMES } from "@warmside/core";
import { fixed, gramsPerArea, mostGramsPerArea, percent } from "../numbers.ts";
import { governingLayerName, placeOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { CASES } from "../standard-words.ts";
import { pathWords, sentence } from "../words.ts";

/**
 * The title of the vapour plot: where and when water gathers, or how near the critical month comes to it.
 *
 * @param view - the governing path
 * @returns such as "Water gathers on strand board from November to March"
 */
export function plotMessage(view: SectionView): string {
  const gaining = view.section.months.filter(({ planes }) => planes.some(({ change }) => change > 0));
  const node = view.deciding.planes[0]?.node ?? view.wetNodes[0];
  if (gaining.length > 0 && node !== undefined)
    return `Water gathers ${onOrIn(view, node)} ${monthsWords(gaining.map(({ month }) => month))}`;
  const margin = view.section.leastMargin;
  if (margin === null) return "No condensation in any month";
  return `No condensation in any month; ${margin.month} has the smallest margin, ${fixed(margin.margin, 0)} Pa`;
}

function onOrIn(view: SectionView, node: number): string {
  const { layer, isInside } = governingLayerName(view, node);
  return `${isInside ? "inside" : "on"} ${layer}`;
}

/**
 * Months as a period where they follow one another.
 *
 * @param months - names, in any order
 * @returns such as "from November to March", "in January", "in every month"
 * @example monthsWords(["January", "December"]) // "in December and January"
 */
export function monthsWords(months: readonly string[]): string {
  const all: readonly string[] = MONTH_NAMES;
  if (months.length === all.length) return "in every month";
  const starts = months.filter((month) => !months.includes(all[(all.indexOf(month) + 11) % 12]!));
  if (starts.length !== 1 || months.length < 3) {
    const first = starts[0] ?? months[0]!;
    const order = [...months].sort((one, other) => turn(all, one, first) - turn(all, other, first));
    return `in ${inSpeech(order, "and")}`;
  }
  const start = starts[0]!;
  return `from ${start} to ${all[(all.indexOf(start) + months.length - 1) % 12]}`;
}

function turn(all: readonly string[], month: string, first: string): number {
  return (all.indexOf(month) - all.indexOf(first) + 12) % 12;
}

/**
 * The year's water in the terms of the standard, then with drying within the month, which the judgement follows.
 *
 * @param view - the governing path
 * @returns sentences
 */
export function evaporationStatement(view: SectionView): string[] {
  const { section } = view;
  const { verdict, peak, carriedOver, dryBy, withinMonth, repeating, writtenOff } = section;
  const where = section.name === "whole" ? "" : `${sentence(pathWords(section.id))} (${view.share} % of the area): `;
  const amount =
    verdict === "dry"
      ? ""
      : `, ${mostGramsPerArea(peak.amount)} at the end of ${peak.month}, ${verdict === "dries out" ? `gone by ${dryBy}` : `${gramsPerArea(carriedOver)} left after 12 months`}`;
  const nearest = section.leastMargin;
  const margin =
    verdict === "dry" && nearest !== null
      ? ` The smallest margin is in ${nearest.month}, ${placeOf(view, nearest.node)}: ${fixed(nearest.margin, 0)} Pa below saturation, ${percent(nearest.relativeHumidity, 0)} relative humidity.`
      : "";
  const standard = `ISO 13788: ${where}${CASES[verdict]}${amount}.${margin}`;
  if (verdict === "dry" && withinMonth.verdict === "dry") return [standard];
  const within = `With drying within each month, as judged: ${CASES[withinMonth.verdict]}${withinMonth.peak.month === null ? "" : `, ${mostGramsPerArea(withinMonth.peak.amount)} in ${withinMonth.peak.month}`}. The standard’s monthly step ignores ${gramsPerArea(writtenOff)} of drying.`;
  const runOn = repeating.settles
    ? `Repeated, the year settles after ${repeating.years} ${repeating.years === 1 ? "year" : "years"} at ${gramsPerArea(repeating.level)}.`
    : `Repeated, the year does not settle: ${gramsPerArea(repeating.growthPerYear)} more each year.`;
  return [standard, within, runOn];
}
