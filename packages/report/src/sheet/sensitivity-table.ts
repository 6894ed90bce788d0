import type { BuildUpResult, SensitivityResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { grams } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { sentence } from "../words.ts";

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
      { head: "Assumption", kind: "words" },
      { head: "ISO 13788", kind: "words" },
      { head: "Ma at most", unit: "g/m²", kind: "figures" },
      { head: "Left after 12 months", unit: "g/m²", kind: "figures" },
    ],
    rows: [
      ["As reported", moisture.verdict, grams(moisture.peak.amount), grams(moisture.carriedOver)],
      ...sensitivity.map(({ name, verdict, peak, carriedOver, worse }) => [
        sentence(ASSUMPTIONS[name] ?? name),
        html`${verdict}${worse ? html`, <strong>worse</strong>` : null}`,
        grams(peak.amount),
        grams(carriedOver),
      ]),
    ],
  });
}

/** The assumptions as a table names them. */
const ASSUMPTIONS: Readonly<Record<SensitivityResult["name"], string>> = {
  "one in ten colder year": "1-in-10 cold year",
  "one in ten warmer year": "1-in-10 warm year",
  "heated every day": "heated every day",
  "unfavourable vapour resistance": "less favourable tabulated μ and sd",
  "vapour layer ten times more open": "vapour layer ten times more open",
  "no vapour layer": "no vapour layer",
  "wetter room": "wetter room (one humidity class up)",
};
