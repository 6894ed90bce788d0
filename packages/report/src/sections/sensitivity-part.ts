import { html } from "../html.ts";
import { grams } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { verdictWords } from "./coverage.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The same build-up under other assumptions. */
export function sensitivityPart({ buildUp }: BuildUpPage): Part | null {
  if (buildUp.sensitivity.length === 0) return null;
  const table = tableMarkup({
    caption: "The same build-up worked out again",
    columns: [
      { head: "With", kind: "words" },
      { head: "Verdict", kind: "words" },
      { head: "Peak", unit: "g/m²", kind: "figures" },
      { head: "Carried over", unit: "g/m²", kind: "figures" },
      { head: "What it says", kind: "words" },
    ],
    rows: buildUp.sensitivity.map(({ name, verdict, peak, carriedOver, worse, message }) => [
      name,
      html`${verdictWords(verdict)}${worse ? html` <strong>worse</strong>` : null}`,
      grams(peak.amount),
      grams(carriedOver),
      message,
    ]),
    marked: buildUp.sensitivity.flatMap(({ worse }, index) => (worse ? [index] : [])),
  });
  return { key: "sensitivity", heading: "Under other assumptions", body: table };
}
