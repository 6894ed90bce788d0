import { formatInShownUnit, formatQuantity } from "../../quantities/format-quantity.ts";
import type { HeatFindings } from "../../result/types.ts";
import type { Wordings } from "./wording.ts";

type Codes = "cold-flat-roof-ventilated" | "cold-flat-roof-unventilated" | "insulation-below-deck";

/** Findings of flat roofs. */
export const ROOF_WORDINGS: Wordings<Codes> = {
  "cold-flat-roof-ventilated": ({ figures: { height } }) => ({
    says: `This cold flat roof relies on air moving through the ${formatQuantity(height, "thickness")} above its insulation, which is open at both ends.`,
    advice:
      "Keep the height clear over its whole length, the openings free at both ends, and close every gap in the ceiling: room air must not get in.",
    source: "common practice",
  }),
  "cold-flat-roof-unventilated": ({ figures }) => {
    const asks = figures.fault === "openings not told";
    return {
      says: `A cold flat roof (insulation below the deck) ${faultInWords(figures)}.`,
      more: [
        `${asks ? "Guidance rejects it without 50 mm of air open at both ends" : "Guidance rejects this"}, even where no condensation is predicted: no ceiling is tight enough, and nothing carries the vapour away.`,
      ],
      advice: asks
        ? "Say in the file where air gets in (`open: both ends`, `ventilation area`), or put the insulation above the deck."
        : "Put the insulation above the deck (a warm roof), or give it 50 mm of ventilated height with a continuous 25 mm opening at both ends.",
      source: "common practice (BS 5250:2021, from memory)",
    };
  },
  "insulation-below-deck": ({ figures: { shareBelow, usual } }) => {
    const isUsual = shareBelow <= usual;
    return {
      says: `${formatQuantity(shareBelow, "share")} of the roof's resistance lies below the deck.`,
      more: [
        "Up to a third is common practice: it keeps the deck and the vapour layer warm.",
        isUsual ? "" : "Here the deck is too cold.",
      ],
      advice: isUsual ? null : "Move insulation from below to above the deck.",
      source: "common practice",
    };
  },
};

function faultInWords(figures: HeatFindings["cold-flat-roof-unventilated"]): string {
  switch (figures.fault) {
    case "no air":
      return "has no ventilated air above its insulation";
    case "low":
      return `has only ${formatQuantity(figures.height, "thickness")} of air above its insulation and needs 50 mm`;
    case "closed":
      return "has air above its insulation that is closed";
    case "one end":
      return "has air above its insulation that is open at one end only";
    case "small openings":
      return (
        `has openings of ${squareMillimetres(figures.openings!)} mm² per square metre of roof; it needs ` +
        `a continuous 25 mm at both ends, or ${squareMillimetres(figures.openingsNeeded)} mm²`
      );
    case "slight":
      return "has only slightly ventilated air above its insulation";
    case "openings not told":
      return "is ventilated, but the file does not say where air gets in";
  }
}

function squareMillimetres(area: number): string {
  return formatInShownUnit(area, "ventilation area level");
}
