import type { BuildUpResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { grams } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { ASSUMPTIONS, sentence } from "../words.ts";

/**
 * The build-up calculated again under other assumptions, a row each.
 *
 * @param buildUp - a build-up of the result
 * @returns the table; null without any
 */
export function sensitivityTable({ sensitivity, moisture }: BuildUpResult): Html | null {
  if (sensitivity.length === 0 || moisture === null) return null;
  return tableMarkup({
    caption: "Sensitivity",
    columns: [
      wordsUnder("Assumption"),
      wordsUnder("ISO 13788"),
      figuresUnder("Ma at most", "g/m²"),
      figuresUnder("Left after 12 months", "g/m²"),
    ],
    rows: [
      ["As reported", moisture.verdict, grams(moisture.peak.amount), grams(moisture.carriedOver)],
      ...sensitivity.map(({ name, verdict, peak, carriedOver, worse }) => [
        sentence(ASSUMPTIONS[name]),
        html`${verdict}${worse ? html`, <strong>worse</strong>` : null}`,
        grams(peak.amount),
        grams(carriedOver),
      ]),
    ],
  });
}
