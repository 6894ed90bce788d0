import { meetsTarget, type Remedy, type RemedyMaterial } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, grams, millimetres, trimmed } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { sentence } from "../words.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "./coverage.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Changes that were computed to turn the judgement or to meet the target, with their results, what they rest on and the values used. */
export function remediesPart({ buildUp }: BuildUpPage): Part | null {
  const { remedies, remedySearch } = buildUp;
  if (remedies.length === 0 && remedySearch === null) return null;
  return {
    key: "remedies",
    heading: "Remedies",
    body: html`${remedySearch ? html`<p>${remedySearch}</p>` : null}${
      remedies.length > 0 ? html`${table(buildUp)}${valuesUsed(remedies)}` : null
    }`,
  };
}

function table({ remedies, target }: BuildUpPage["buildUp"]): Html {
  const restOnSomething = remedies.some(({ conditions }) => conditions.length > 0);
  return tableMarkup({
    caption: "Each change was worked out in full",
    columns: [
      { head: "Change", kind: "words" },
      { head: "Judgement then", kind: "words" },
      ...(restOnSomething ? [{ head: "Its conditions", kind: "words" } as const] : []),
      { head: "Verdict then", kind: "words" },
      { head: "U", unit: "W/(m²·K)", kind: "words" },
      { head: "Peak", unit: "g/m²", kind: "figures" },
      { head: "Thicker inside", unit: "mm", kind: "figures" },
      { head: "Thicker outside", unit: "mm", kind: "figures" },
    ],
    rows: remedies.map((remedy) => [
      remedy.change,
      judgementCell(remedy.judgement),
      ...(restOnSomething ? [conditionsInShort(remedy)] : []),
      verdictCell(remedy.verdict),
      target !== null && !meetsTarget(remedy.transmittance, target)
        ? `${fixed(remedy.transmittance, 2)}, over the target`
        : fixed(remedy.transmittance, 2),
      grams(remedy.peak.amount),
      millimetres(remedy.thicknessInside),
      millimetres(remedy.thicknessOutside),
    ]),
    note: COVERED_BY_TABLE,
  });
}

function conditionsInShort({ conditionFindings }: Remedy): string {
  return conditionFindings.length === 0 ? "none" : conditionFindings.map(({ short }) => sentence(short)).join(" ");
}

/** λ, μ and sd of what the remedies bring in: the layer table holds only what is there. */
function valuesUsed(remedies: readonly Remedy[]): Html | null {
  const materials = new Map(remedies.flatMap((remedy) => remedy.materials.map((used) => [used.name, used] as const)));
  if (materials.size === 0) return null;
  const values = [...materials.values()].map(valuesInWords).join("; ");
  return html`<p class="aside">Values used for what is brought in, from the material table: ${values}.</p>`;
}

function valuesInWords({ name, conductivity, vapourResistanceFactor, sd }: RemedyMaterial): string {
  const values = [
    ...(conductivity === null ? [] : [`λ ${trimmed(conductivity, 3)} W/(m·K)`]),
    ...(vapourResistanceFactor === null ? [] : [`μ ${trimmed(vapourResistanceFactor, 1)}`]),
    ...(sd === null ? [] : [`sd ${trimmed(sd, 2)} m`]),
  ];
  return `${name} (${values.join(", ")})`;
}
