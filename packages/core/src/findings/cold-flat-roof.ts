import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { insulates } from "../project/insulates.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, Layer } from "../project/types.ts";
import { formatInShownUnit, formatQuantity } from "../quantities/format-quantity.ts";
import { roofDeck } from "./roof-deck.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Ventilated height over a cold roof's insulation [m] (common practice). */
export const VENTILATED_HEIGHT = 0.05;
/**
 * Openings that are the equal of a continuous 25 mm at each end [m² per m² of roof] (common practice: 0.6 % of the
 * roof's area, both ends together; level air layers tell their openings per square metre).
 */
export const OPENINGS_OF_ROOF = 0.006;
/** Part of the resistance below the deck of a warm roof [–]: up to a third is common practice, over half is refused. */
export const USUAL_SHARE_BELOW_DECK: number = 1 / 3;
export const MOST_SHARE_BELOW_DECK = 0.5;

/**
 * Flat roofs: a cold one needs ventilated height above its insulation however dry it calculates; a warm one keeps most
 * of its resistance above the deck.
 * Source: common practice (BS 5250:2021 for the figures, from memory).
 */
export function flatRoofFindings(evidence: Evidence): RuledFinding[] {
  const { buildUp, calculation } = evidence;
  if (buildUp.element !== "flat roof" || isUpright(buildUp) || buildUp.faces !== "outdoors") return [];
  if (evidence.vapourLayer.warmSide !== buildUp.room) return [];
  const main = mainInsulation(calculation.heat.counted);
  if (main === null || main.resistance < LEAST_INSULATION) return [];
  const deck = roofDeck(buildUp.layers, main.index);
  const isCold = main.framing !== null || (deck !== null && deck > main.index);
  if (isCold && !insulatedAboveDeck(evidence, deck)) return coldRoof(buildUp.layers, main.index);
  return deck === null ? [] : warmRoof(evidence, main.index, deck);
}

/** Last digits of a stated figure [m], [m²/m²]. */
const ROUNDING = 1e-9;

/** Less than this is no insulation [m²·K/W]. */
const LEAST_INSULATION = 0.5;

function resistanceBeyond(evidence: Evidence, index: number): number {
  const beyond = evidence.calculation.heat.counted.filter(
    (layer) => layer.index > index && layer.layer.type === "material",
  );
  return sumOfResistances(beyond);
}

/** Insulation worth the name lies above the deck: then it is a warm roof with a part below. */
function insulatedAboveDeck(evidence: Evidence, deck: number | null): boolean {
  return deck !== null && resistanceBeyond(evidence, deck) >= LEAST_INSULATION;
}

function coldRoof(layers: readonly Layer[], insulation: number): RuledFinding[] {
  const air = layers.find(
    (layer, index): layer is AirLayer => index > insulation && layer.type === "air" && layer.ventilation !== "none",
  );
  const fault = whatIsWrong(air);
  if (fault === null) {
    return [
      {
        code: "cold-flat-roof-ventilated",
        severity: "caution",
        effect: "condition",
        message: `A cold flat roof with ${formatQuantity(air!.thickness, "thickness")} of ventilated air above the insulation, open at both ends: it rests on that air moving.`,
        advice:
          "Keep the height clear over its whole length, the openings free at both ends, and close every gap in the ceiling: room air must not get in.",
        source: "common practice",
        figures: { height: air!.thickness, needed: VENTILATED_HEIGHT },
      },
    ];
  }
  return [
    {
      code: "cold-flat-roof-unventilated",
      severity: fault.asks ? "caution" : "fault",
      effect: fault.asks ? "condition" : "change by guidance",
      message: `A cold flat roof (insulation below the deck) ${fault.words}. ${fault.asks ? "Without 50 mm of air that is open at both ends guidance refuses it" : "Guidance refuses that"} however dry it calculates: the ceiling is never tight enough, and nothing carries the vapour away.`,
      advice: fault.asks
        ? "Say in the file what is open (`open: both ends`, `ventilation area`), or put the insulation above the deck."
        : "Put the insulation above the deck (a warm roof), or give it 50 mm of ventilated height with a continuous 25 mm opening at both ends.",
      source: "common practice (BS 5250:2021, from memory)",
      figures: { height: air?.thickness ?? 0, needed: VENTILATED_HEIGHT },
    },
  ];
}

function whatIsWrong(air: AirLayer | undefined): { words: string; asks: boolean } | null {
  if (air === undefined) return { words: "has no ventilated air above its insulation", asks: false };
  if (air.thickness < VENTILATED_HEIGHT - ROUNDING) {
    return {
      words: `has only ${formatQuantity(air.thickness, "thickness")} of air above its insulation; 50 mm is needed`,
      asks: false,
    };
  }
  if (air.open === "one end" || air.open === "closed") {
    return {
      words: `has air above its insulation that is ${air.open === "closed" ? "closed" : "open at one end only"}`,
      asks: false,
    };
  }
  if (air.ventilationArea !== null && air.ventilationArea < OPENINGS_OF_ROOF - ROUNDING) {
    return {
      words:
        `has openings of ${formatInShownUnit(air.ventilationArea, "ventilation area level")} mm² per square metre of roof; ` +
        `a continuous 25 mm at both ends, or its equal of ${formatInShownUnit(OPENINGS_OF_ROOF, "ventilation area level")} mm², is needed`,
      asks: false,
    };
  }
  if (air.ventilation === "slight")
    return { words: "has only slightly ventilated air above its insulation", asks: false };
  if (air.open === null && air.ventilationArea === null) {
    return { words: "is said to be ventilated, but not where it is open", asks: true };
  }
  return null;
}

function warmRoof(evidence: Evidence, main: number, deck: number): RuledFinding[] {
  const { counted } = evidence.calculation.heat;
  const below = sumOfResistances(counted.filter(({ index, layer }) => index < deck && insulates(layer)));
  const total = sumOfResistances(counted);
  const share = below / total;
  if (below < LEAST_INSULATION || (main > deck && share < NOTHING_BELOW)) return [];
  const usual = share <= USUAL_SHARE_BELOW_DECK;
  const most = share <= MOST_SHARE_BELOW_DECK;
  return [
    {
      code: "insulation-below-deck",
      severity: usual ? "note" : most ? "caution" : "fault",
      effect: usual ? "none" : most ? "condition" : "change by guidance",
      message: `${formatQuantity(share, "share")} of the roof's resistance lies below the deck. Up to a third is common practice: it keeps the deck and the vapour layer warm.${usual ? "" : " Here the deck is too cold for that."}`,
      advice: usual ? null : "Move insulation from below to above the deck.",
      source: "common practice",
      figures: { shareBelow: share, usual: USUAL_SHARE_BELOW_DECK },
    },
  ];
}

/** A share below the deck that is nothing to speak of [–] (this project's rule). */
const NOTHING_BELOW = 0.01;
