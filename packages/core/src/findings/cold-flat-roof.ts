import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { insulates } from "../project/insulates.ts";
import { isRoof } from "../project/is-roof.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, BuildUp } from "../project/types.ts";
import type { RoofAirFault } from "../result/types.ts";
import { CONDITION, found, NOTE, REFUSED } from "./found.ts";
import { roofDeck } from "./roof-deck.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Below this pitch a roof is flat, whatever it is called [degrees from level]. Source: BS 6229 (from memory). */
export const FLAT_UNDER = 10;
/** Span up to which 50 mm are enough, and longest span with a figure [m]. Source: BS 5250:2021 (from memory). */
const SHORT_SPAN = 5;
const LONG_SPAN = 10;
/** Ventilated height over a cold roof's insulation, up to the short span and beyond [m]: BS 5250:2021, from memory. */
export const VENTILATED_HEIGHT = 0.05;
const VENTILATED_HEIGHT_OF_LONG = 0.06;
/**
 * Openings equal to a continuous 25 mm at each end [m² per m² of roof] (common practice: 0.6 % of the roof's area, both
 * ends together; openings of level air layers are stated per square metre); 30 mm beyond the short span.
 */
export const OPENINGS_OF_ROOF = 0.006;
const OPENINGS_OF_LONG_ROOF = 0.0072;
/** Share of the resistance below the deck of a warm roof [–]: a third is common practice, over half is rejected. */
export const USUAL_SHARE_BELOW_DECK: number = 1 / 3;
export const MOST_SHARE_BELOW_DECK = 0.5;

/**
 * Flat roofs: a cold roof needs ventilated height above its insulation even where no condensation is predicted; a warm
 * roof needs most of its resistance above the deck. A pitched roof without a stated pitch is asked for it.
 * Source: METHOD.md, Roofs (BS 6229 and BS 5250:2021 for the figures, from memory).
 */
export function flatRoofFindings(evidence: Evidence): RuledFinding[] {
  const { buildUp } = evidence;
  if (!isRoof(buildUp) || isUpright(buildUp) || buildUp.faces !== "outdoors") return [];
  if (buildUp.element === "flat roof" || (buildUp.pitch !== null && buildUp.pitch < FLAT_UNDER))
    return asFlatRoof(evidence);
  if (buildUp.pitch !== null) return [];
  const matters = asFlatRoof(evidence).some(({ effect }) => effect !== "none");
  return [found("pitch-not-said", matters ? CONDITION : NOTE, { flatUnder: FLAT_UNDER, matters })];
}

function asFlatRoof(evidence: Evidence): RuledFinding[] {
  const { buildUp, calculation, vapourLayer } = evidence;
  const main = mainInsulation(calculation.heat.counted);
  if (vapourLayer.warmSide !== "inside" || main === null || main.resistance < LEAST_INSULATION) return [];
  const deck = roofDeck(buildUp.layers, main.index);
  const isCold = deck.isCold ?? main.framing !== null;
  if (isCold && !insulatedAboveDeck(evidence, deck.index)) return coldRoof(buildUp, main.index);
  return deck.index === null ? [] : warmRoof(evidence, main.index, deck.index);
}

/** Tolerance for rounding of a stated figure [m], [m²/m²]. */
const ROUNDING = 1e-9;

/** Least resistance that counts as insulation [m²·K/W]. */
const LEAST_INSULATION = 0.5;

function resistanceBeyond(evidence: Evidence, index: number): number {
  const beyond = evidence.calculation.heat.counted.filter(
    (layer) => layer.index > index && layer.layer.type === "material",
  );
  return sumOfResistances(beyond);
}

/** Whether insulation lies above the deck: then it is a warm roof, with a part below. */
function insulatedAboveDeck(evidence: Evidence, deck: number | null): boolean {
  return deck !== null && resistanceBeyond(evidence, deck) >= LEAST_INSULATION;
}

function coldRoof({ layers, span }: BuildUp, insulation: number): RuledFinding[] {
  const air = layers.find(
    (layer, index): layer is AirLayer => index > insulation && layer.type === "air" && layer.ventilation !== "none",
  );
  const isLong = span !== null && span > SHORT_SPAN;
  const needed = isLong ? VENTILATED_HEIGHT_OF_LONG : VENTILATED_HEIGHT;
  const openingsNeeded = isLong ? OPENINGS_OF_LONG_ROOF : OPENINGS_OF_ROOF;
  const height = air?.thickness ?? 0;
  const fault = faultOfAir(air, { needed, openingsNeeded, span });
  if (fault === null) return [found("cold-flat-roof-ventilated", CONDITION, { height, needed })];
  const isAsked = fault === "openings not told" || fault === "span too long";
  return [
    found("cold-flat-roof-unventilated", isAsked ? CONDITION : REFUSED, {
      fault,
      height,
      needed,
      openings: air?.ventilationArea ?? null,
      openingsNeeded,
    }),
  ];
}

/** Requirements of guidance for a cold roof of some span [m]. */
interface AskedOfRoof {
  needed: number;
  openingsNeeded: number;
  span: number | null;
}

function faultOfAir(air: AirLayer | undefined, asked: AskedOfRoof): RoofAirFault | null {
  if (air === undefined) return "no air";
  if (air.thickness < asked.needed - ROUNDING) return "low";
  if (air.open === "one end" || air.open === "closed") return air.open;
  if (air.ventilationArea !== null && air.ventilationArea < asked.openingsNeeded - ROUNDING) return "small openings";
  if (air.ventilation === "slight") return "slight";
  if (air.open === null && air.ventilationArea === null) return "openings not told";
  return asked.span !== null && asked.span > LONG_SPAN ? "span too long" : null;
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

/** Negligible share below the deck [–] (this project's rule). */
const NOTHING_BELOW = 0.01;
