import { formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import type { HeatFindings, TargetFigures } from "../../result/types.ts";
import { joined } from "../figures-in-words.ts";
import type { Named, Wordings } from "./wording.ts";

type Codes = Exclude<keyof HeatFindings, `${string}flat-roof${string}` | "insulation-below-deck" | "pitch-not-said">;

/** Findings on heat. */
export const HEAT_WORDINGS: Wordings<Codes> = {
  "target-met": ({ figures }) => ({ ...againstTarget(figures, "meets"), source: "compared at two decimals" }),
  "target-missed": ({ figures }) => ({
    ...againstTarget(figures, "misses"),
    advice: "More insulation, insulation across the framing, or less framing.",
    source: "compared at two decimals",
  }),
  "limits-far-apart": ({ figures: { limitsRatio, possibleError } }) => ({
    says: `The upper limit of the resistance is ${formatNumber(limitsRatio, 2)} times the lower one, and over 1.5 the combined method passes its own bound.`,
    more: [`The U-value may be ${formatQuantity(possibleError, "share")} off.`],
    advice: "Ask for a detailed calculation to ISO 10211 if the U-value matters.",
    source: "ISO 6946:2017 clause 6.7.2.1",
  }),
  "foil-without-air": ({ figures: { layers } }, buildUp) => ({
    says: `The foil of ${numberedNamesOf(layers, buildUp)} has no still air in front of it, so it does nothing for heat.`,
    more: ["It still counts as a vapour layer."],
    advice: "A closed air layer of about 20 mm in front of a bright foil adds resistance.",
    source: "common practice",
  }),
  "insulation-beyond-ventilation": ({ figures: { layers, isAll } }, buildUp) => ({
    says: `${namesOf(layers, buildUp)} lies outside a well-ventilated air layer: outdoor air reaches its warm side, so it does not count.`,
    advice: isAll
      ? "Layers run from the room outwards: if these are written from outside, reverse the list. Otherwise put the insulation on the room side of the ventilated air, or close that air."
      : "Put the insulation on the room side of the ventilated air, or close that air.",
    source: "ISO 6946:2017 clause 6.9.4",
  }),
  "air-behind-insulation": ({ figures: { layers } }, buildUp) => ({
    says: `Air can move behind ${namesOf(layers, buildUp)}: it takes warmth and moisture past the insulation, which no figure here counts.`,
    advice: `Fit ${namesOf(layers, buildUp)} tight: no gap beside it and no space behind it, joints foamed or taped.`,
    source: "common practice; ISO 6946:2017 Annex F, level 2",
  }),
  "inverted-roof-rain": ({ figures: { layer, transmittance, target } }, buildUp) => ({
    says: `Rain runs below ${namesOf([layer], buildUp)}, over the weather skin, and takes heat along: ${formatQuantity(transmittance, "transmittance")} is the U-value without it.`,
    more: [target === null ? "" : "Without the rain it is not said whether the target is met."],
    advice: "Give the rain of the heating season at the top of the file (`rain of the heating season: 2 mm/day`).",
    source: "ISO 6946:2017 Annex F",
  }),
  "openings-not-told": ({ figures: { layer } }, buildUp) => ({
    says: `The openings of ${namesOf([layer], buildUp)} are not given: it counts as well ventilated, which is the lower resistance.`,
    advice: "Give its `ventilation area`.",
    source: "ISO 6946:2017 clause 6.9.3",
  }),
};

/** Names with numbers, since another layer of the same name may have foil that does face air. */
function numberedNamesOf(indices: readonly number[], { layers }: Named): string {
  return joined(indices.map((index) => `layer ${index + 1}, ${layers[index]!.name}`));
}

function namesOf(indices: readonly number[], { layers }: Named): string {
  return joined(indices.map((index) => layers[index]!.name));
}

function againstTarget(figures: TargetFigures, outcome: "meets" | "misses"): { says: string; more: string[] } {
  const { transmittance, target, clearTransmittance } = figures;
  return {
    says: `The U-value, with framing and corrections, is ${formatQuantity(transmittance, "transmittance")} and ${outcome} its target of ${formatQuantity(target, "transmittance")}.`,
    more: [`Without framing it would be ${formatQuantity(clearTransmittance, "transmittance")}.`],
  };
}
