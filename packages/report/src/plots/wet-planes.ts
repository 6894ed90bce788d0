import type { SectionMonth } from "@warmside/core";
import { gramsPerArea } from "../numbers.ts";
import type { SectionView } from "../section-view.ts";

/** A wet node of a month; only the one with the most water carries words. */
export interface WetPlane {
  node: number;
  words: string;
}

/**
 * The wet nodes of a month and the words to stand beside the one that matters most.
 *
 * @param view - the section
 * @param month - one of its months
 * @returns from the room outwards; empty when the month is dry
 */
export function wetPlanes(view: SectionView, month: SectionMonth): WetPlane[] {
  const planes = month.planes.filter(({ change, held }) => change !== 0 || held > 0);
  const main = planes.reduce<(typeof planes)[number] | null>(
    (most, plane) => (most === null || Math.abs(plane.change) > Math.abs(most.change) ? plane : most),
    null,
  );
  const several = planes.length > 1;
  const total = planes.reduce((sum, { change }) => sum + change, 0);
  return planes
    .filter(({ node }) => node < view.deciding.nodes.length)
    .map(({ node }) => ({ node, words: node === main?.node ? amountWords(total, month.month, several) : "" }));
}

function amountWords(change: number, month: string, several: boolean): string {
  const what = change >= 0 ? "condenses" : "dries";
  return `${gramsPerArea(Math.abs(change))} ${what}${several ? " here and nearby" : ""} in ${month}`;
}
