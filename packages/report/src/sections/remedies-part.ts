import { meetsTarget } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, grams, millimetres } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { judgementWords, verdictWords } from "./coverage.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Changes that were computed to turn the judgement, with their results. */
export function remediesPart({ buildUp }: BuildUpPage): Part | null {
  const { remedies, remedySearch } = buildUp;
  if (remedies.length === 0 && remedySearch === null) return null;
  return {
    key: "remedies",
    heading: "Remedies",
    body: html`${remedySearch ? html`<p>${remedySearch}</p>` : null}${remedies.length > 0 ? table(buildUp) : null}`,
  };
}

function table({ remedies, target }: BuildUpPage["buildUp"]): Html {
  return tableMarkup({
    caption: "Each change was worked out in full",
    columns: [
      { head: "Change", kind: "words" },
      { head: "Judgement then", kind: "words" },
      { head: "Verdict then", kind: "words" },
      { head: "U", unit: "W/(m²·K)", kind: "words" },
      { head: "Peak", unit: "g/m²", kind: "figures" },
      { head: "Thicker inside", unit: "mm", kind: "figures" },
      { head: "Thicker outside", unit: "mm", kind: "figures" },
    ],
    rows: remedies.map((remedy) => [
      remedy.change,
      judgementWords(remedy.judgement, "cell"),
      verdictWords(remedy.verdict),
      target !== null && !meetsTarget(remedy.transmittance, target)
        ? `${fixed(remedy.transmittance, 2)}, over the target`
        : fixed(remedy.transmittance, 2),
      grams(remedy.peak.amount),
      millimetres(remedy.thicknessInside),
      millimetres(remedy.thicknessOutside),
    ]),
  });
}
