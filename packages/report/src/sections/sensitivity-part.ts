import { html } from "../html.ts";
import { grams } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { sentence } from "../words.ts";
import { COVERED_BY_TABLE, verdictCell } from "./coverage.ts";
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
      html`${verdictCell(verdict)}${worse ? html` <strong>worse</strong>` : null}`,
      grams(peak.amount),
      grams(carriedOver),
      message,
    ]),
    marked: buildUp.sensitivity.flatMap(({ worse }, index) => (worse ? [index] : [])),
    note: COVERED_BY_TABLE,
  });
  const names = new Set<string>(buildUp.sensitivity.map(({ name }) => name));
  const meanings = Object.entries(MEANINGS).flatMap(([name, meaning]) =>
    names.has(name) ? [html`<li>${sentence(name)}: ${meaning}</li>`] : [],
  );
  const body = html`${table}${meanings.length > 0 ? html`<ul class="aside">${meanings}</ul>` : null}`;
  return { key: "sensitivity", heading: "Under other assumptions", body };
}

/** What is assumed otherwise in the runs whose names do not say it. */
const MEANINGS: Readonly<Record<string, string>> = {
  "unfavourable vapour resistance":
    "every layer up to the cold face of the main insulation has the smaller of its two tabulated vapour resistances, every layer beyond it keeps the larger.",
  "wetter room":
    "the room’s humidity class is one higher (class 5 stays), or a stated humidity ten points higher (up to 95 %), a moisture balance given half as much vapour again, normal use taken for high.",
};
