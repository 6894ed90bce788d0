import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { insulates } from "../project/insulates.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, Layer } from "../project/types.ts";
import type { RoofAirFault } from "../result/types.ts";
import { CONDITION, found, NOTE, REFUSED } from "./found.ts";
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
  if (evidence.vapourLayer.warmSide !== "inside") return [];
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
  const height = air?.thickness ?? 0;
  const fault = faultOfAir(air);
  if (fault === null) return [found("cold-flat-roof-ventilated", CONDITION, { height, needed: VENTILATED_HEIGHT })];
  return [
    found("cold-flat-roof-unventilated", fault === "openings not told" ? CONDITION : REFUSED, {
      fault,
      height,
      needed: VENTILATED_HEIGHT,
      openings: air?.ventilationArea ?? null,
      openingsNeeded: OPENINGS_OF_ROOF,
    }),
  ];
}

function faultOfAir(air: AirLayer | undefined): RoofAirFault | null {
  if (air === undefined) return "no air";
  if (air.thickness < VENTILATED_HEIGHT - ROUNDING) return "low";
  if (air.open === "one end" || air.open === "closed") return air.open;
  if (air.ventilationArea !== null && air.ventilationArea < OPENINGS_OF_ROOF - ROUNDING) return "small openings";
  if (air.ventilation === "slight") return "slight";
  return air.open === null && air.ventilationArea === null ? "openings not told" : null;
}

function warmRoof(evidence: Evidence, main: number, deck: number): RuledFinding[] {
  const { counted } = evidence.calculation.heat;
  const below = sumOfResistances(counted.filter(({ index, layer }) => index < deck && insulates(layer)));
  const total = sumOfResistances(counted);
  const share = below / total;
  if (below < LEAST_INSULATION || (main > deck && share < NOTHING_BELOW)) return [];
  const weight = share <= USUAL_SHARE_BELOW_DECK ? NOTE : share <= MOST_SHARE_BELOW_DECK ? CONDITION : REFUSED;
  return [found("insulation-below-deck", weight, { shareBelow: share, usual: USUAL_SHARE_BELOW_DECK })];
}

/** A share below the deck that is nothing to speak of [–] (this project's rule). */
const NOTHING_BELOW = 0.01;
