import { formatInShownUnit, formatQuantity } from "../../quantities/format-quantity.ts";
import type { HeatFindings } from "../../result/types.ts";
import { VENTILATED_HEIGHT } from "../cold-flat-roof.ts";
import type { Wordings } from "./wording.ts";

type Codes = "pitch-not-said" | "cold-flat-roof-ventilated" | "cold-flat-roof-unventilated" | "insulation-below-deck";

/** Findings on flat roofs. */
export const ROOF_WORDINGS: Wordings<Codes> = {
  "pitch-not-said": ({ figures: { flatUnder, matters } }) => ({
    says: matters
      ? `The file does not give the pitch of the roof: under ${flatUnder}° it counts as a flat roof.`
      : `The file does not give the pitch of the roof; under ${flatUnder}° the judgement would be the same.`,
    advice: matters ? "Say the pitch in the file (`pitch: 35 °`)." : null,
    source: "BS 6229",
  }),
  "cold-flat-roof-ventilated": ({ figures: { height } }) => ({
    says: `This cold flat roof relies on air moving through the ${formatQuantity(height, "thickness")} above its insulation, which is open at both ends.`,
    advice:
      "Keep the height clear over its whole length, the openings free at both ends, and close every gap in the ceiling: room air must not get in.",
    source: "common practice",
  }),
  "cold-flat-roof-unventilated": ({ figures }) => {
    const asks = figures.fault === "openings not told" || figures.fault === "span too long";
    const height = formatQuantity(figures.needed, "thickness");
    return {
      says: `A cold flat roof (insulation below the deck) ${faultInWords(figures)}.`,
      more: [
        `${asks ? `Guidance rejects it without ${height} of air open at both ends` : "Guidance rejects this"}, even where no condensation is predicted: no ceiling is tight enough, and nothing carries the vapour away.`,
      ],
      advice: asks
        ? "Say in the file where air gets in (`open: both ends`, `ventilation area`), or put the insulation above the deck."
        : `Put the insulation above the deck (a warm roof), or give it ${height} of ventilated height with a continuous ${endOpening(figures)} opening at both ends.`,
      source: "common practice (BS 5250:2021)",
    };
  },
  "insulation-below-deck": ({ figures: { shareBelow, usual }, severity }) => {
    const isUsual = shareBelow <= usual;
    return {
      says: `${formatQuantity(shareBelow, "share")} of the roof's resistance lies below the deck.`,
      more: [
        "Up to a third is common practice: it keeps the deck and the vapour layer warm.",
        isUsual ? "" : "Here the deck is too cold.",
      ],
      advice: isUsual
        ? null
        : severity === "fault"
          ? "Move insulation from below to above the deck."
          : "Keep the room air from the deck: the ceiling airtight, the room no damper than the file says.",
      source: "common practice",
    };
  },
};

function faultInWords(figures: HeatFindings["cold-flat-roof-unventilated"]): string {
  switch (figures.fault) {
    case "no air":
      return "has no ventilated air above its insulation";
    case "low":
      return `has only ${formatQuantity(figures.height, "thickness")} of air above its insulation and needs ${formatQuantity(figures.needed, "thickness")}`;
    case "closed":
      return "has air above its insulation that is closed";
    case "one end":
      return "has air above its insulation that is open at one end only";
    case "small openings":
      return (
        `has openings of ${squareMillimetres(figures.openings!)} mm² per square metre of roof; it needs ` +
        `a continuous ${endOpening(figures)} at both ends, or ${squareMillimetres(figures.openingsNeeded)} mm²`
      );
    case "slight":
      return "has only slightly ventilated air above its insulation";
    case "span too long":
      return "spans more than 10 m, further than any rule for such roofs reaches";
    case "openings not told":
      return "is ventilated, but the file does not say where air gets in";
  }
}

/** The continuous opening needed at each end for the ventilated height. */
function endOpening({ needed }: Pick<HeatFindings["cold-flat-roof-unventilated"], "needed">): string {
  return needed > VENTILATED_HEIGHT ? "30 mm" : "25 mm";
}

function squareMillimetres(area: number): string {
  return formatInShownUnit(area, "ventilation area level");
}
