import { type FloorBasis, type HeatResult, VOID_VENTILATION_FACTOR, WELL_INSULATED_SHAPE } from "@warmside/core";
import { readFigure, trimmed } from "../numbers.ts";
import { DECIMALS, type Printed, printed } from "./printed.ts";

/** A line of a calculation: the quantity, its formula with the figures inserted, and the result with its unit. */
export interface FloorStep {
  symbol: string;
  formula: string;
  outcome: Printed;
  unit: string;
}

/** The three ways out of a void, as printed, for its temperatures [W/(m²·K)]. */
export interface VoidByHand {
  floor: Printed;
  ground: Printed;
  outdoors: Printed;
}

/** A floor on the ground or over a void worked step by step with rounded figures. */
export interface FloorByHand {
  steps: FloorStep[];
  transmittance: Printed;
  void: VoidByHand | null;
}

/**
 * ISO 13370 as worked with a pocket calculator: every figure follows from the printed ones.
 *
 * @param basis - what the floor was worked out from
 * @param resistance - R of the floor with its surfaces, as the combined method's sum by hand came to it [m²·K/W]
 * @param heat - heat figures: the floor's surface resistances and corrections
 * @returns the steps from Rf to U
 * Source: ISO 13370:2017 clauses 7.1 to 7.3, Annex D (from memory).
 */
export function floorByHand(basis: FloorBasis, resistance: Printed, heat: HeatResult): FloorByHand {
  const inside = printed(heat.surfaceResistanceInside, DECIMALS.resistance);
  const outside = printed(heat.surfaceResistanceOutside, DECIMALS.resistance);
  const floor = step(
    "Rf",
    `R − Rsi − Rse = ${resistance.text} − ${inside.text} − ${outside.text}`,
    resistance.value - inside.value - outside.value,
    "m²·K/W",
  );
  const area = given(basis.area);
  const perimeter = given(basis.perimeter);
  const dimension = step(
    "B",
    `A / (0.5 × P) = ${area.text} / (0.5 × ${perimeter.text})`,
    area.value / (0.5 * perimeter.value),
    "m",
  );
  const correction = printed(heat.correction, DECIMALS.transmittance);
  return basis.void === null
    ? slabByHand(basis, floor, dimension, correction)
    : suspendedByHand(basis, basis.void, floor, dimension, correction);
}

function slabByHand(basis: FloorBasis, floor: FloorStep, dimension: FloorStep, correction: Printed): FloorByHand {
  const { soil, wall, inside, outside } = givenOf(basis);
  const thickness = step(
    "dt",
    `dw + λg × (Rsi + Rf + Rse) = ${wall.text} + ${soil.text} × (${inside.text} + ${floor.outcome.text} + ${outside.text})`,
    wall.value + soil.value * (inside.value + floor.outcome.value + outside.value),
    "m",
  );
  const isWellInsulated = thickness.outcome.value >= dimension.outcome.value;
  const plain = isWellInsulated
    ? step(
        "U0",
        `dt is not under B: λg / (${WELL_INSULATED_SHAPE} × B + dt) = ${soil.text} / (${WELL_INSULATED_SHAPE} × ${dimension.outcome.text} + ${thickness.outcome.text})`,
        soil.value / (WELL_INSULATED_SHAPE * dimension.outcome.value + thickness.outcome.value),
        "W/(m²·K)",
      )
    : throughGround("U0", "dt is under B: ", "dt", soil, dimension.outcome, thickness.outcome);
  const edge = basis.edgeInsulation === null ? [] : edgeSteps(basis.edgeInsulation, soil, thickness.outcome);
  const factor = edge.at(-1)?.outcome ?? null;
  const atEdge = factor === null ? "" : ` + 2 × (${factor.text}) / ${dimension.outcome.text}`;
  const sum = plain.outcome.value + (factor === null ? 0 : (2 * factor.value) / dimension.outcome.value);
  const whole = step(
    "U",
    `U0${factor === null ? "" : " + 2 × Ψ / B"} + corrections = ${plain.outcome.text}${atEdge} + ${correction.text}`,
    sum + correction.value,
    "W/(m²·K)",
  );
  return { steps: [floor, dimension, thickness, plain, ...edge, whole], transmittance: whole.outcome, void: null };
}

/** The reduction by edge insulation: D counts twice if it is upright. */
function edgeSteps(edge: NonNullable<FloorBasis["edgeInsulation"]>, soil: Printed, thickness: Printed): FloorStep[] {
  const resistance = given(edge.resistance);
  const own = given(edge.thickness);
  const extent = given(edge.upright ? 2 * edge.extent : edge.extent);
  const added = step(
    "d′",
    `(Rn − dn / λg) × λg = (${resistance.text} − ${own.text} / ${soil.text}) × ${soil.text}`,
    (resistance.value - own.value / soil.value) * soil.value,
    "m",
  );
  const bare = Math.log(extent.value / thickness.value + 1);
  const insulated = Math.log(extent.value / (thickness.value + added.outcome.value) + 1);
  const factor = step(
    "Ψ",
    `−λg / π × (ln(D / dt + 1) − ln(D / (dt + d′) + 1)), D ${edge.upright ? "twice the depth" : "the width"} = −${soil.text} / π × (ln(${extent.text} / ${thickness.text} + 1) − ln(${extent.text} / (${thickness.text} + ${added.outcome.text}) + 1))`,
    (-soil.value / Math.PI) * (bare - insulated),
    "W/(m·K)",
  );
  return [added, factor];
}

function suspendedByHand(
  basis: FloorBasis,
  space: NonNullable<FloorBasis["void"]>,
  floor: FloorStep,
  dimension: FloorStep,
  correction: Printed,
): FloorByHand {
  const { soil, wall, inside, outside } = givenOf(basis);
  const toVoid = step(
    "Uf",
    `1 / (Rsi + Rf + Rsi) = 1 / (${inside.text} + ${floor.outcome.text} + ${inside.text})`,
    1 / (inside.value + floor.outcome.value + inside.value),
    "W/(m²·K)",
  );
  const below = given(space.groundInsulation);
  const thickness = step(
    "dg",
    `dw + λg × (Rsi + Rg + Rse) = ${wall.text} + ${soil.text} × (${inside.text} + ${below.text} + ${outside.text})`,
    wall.value + soil.value * (inside.value + below.value + outside.value),
    "m",
  );
  const toGround = throughGround("Ug", "", "dg", soil, dimension.outcome, thickness.outcome);
  const [height, wallTransmittance] = [given(space.height), given(space.wallTransmittance)];
  const [openings, wind, shielding] = [given(space.openings), given(space.windSpeed), given(space.windShielding)];
  const { text: across, value: length } = dimension.outcome;
  const outdoors = step(
    "Ux",
    `2 × h × Uw / B + ${VOID_VENTILATION_FACTOR} × ε × v × fw / B = 2 × ${height.text} × ${wallTransmittance.text} / ${across} + ${VOID_VENTILATION_FACTOR} × ${openings.text} × ${wind.text} × ${shielding.text} / ${across}`,
    (2 * height.value * wallTransmittance.value +
      VOID_VENTILATION_FACTOR * openings.value * wind.value * shielding.value) /
      length,
    "W/(m²·K)",
  );
  const whole = step(
    "U",
    `1 / (1 / Uf + 1 / (Ug + Ux)) + corrections = 1 / (1 / ${toVoid.outcome.text} + 1 / (${toGround.outcome.text} + ${outdoors.outcome.text})) + ${correction.text}`,
    1 / (1 / toVoid.outcome.value + 1 / (toGround.outcome.value + outdoors.outcome.value)) + correction.value,
    "W/(m²·K)",
  );
  return {
    steps: [floor, dimension, toVoid, thickness, toGround, outdoors, whole],
    transmittance: whole.outcome,
    void: { floor: toVoid.outcome, ground: toGround.outcome, outdoors: outdoors.outcome },
  };
}

function throughGround(
  symbol: string,
  why: string,
  thicknessSymbol: string,
  soil: Printed,
  dimension: Printed,
  thickness: Printed,
): FloorStep {
  const reach = Math.PI * dimension.value;
  return step(
    symbol,
    `${why}2 × λg / (π × B + ${thicknessSymbol}) × ln(π × B / ${thicknessSymbol} + 1) = 2 × ${soil.text} / (π × ${dimension.text} + ${thickness.text}) × ln(π × ${dimension.text} / ${thickness.text} + 1)`,
    ((2 * soil.value) / (reach + thickness.value)) * Math.log(reach / thickness.value + 1),
    "W/(m²·K)",
  );
}

function givenOf(basis: FloorBasis): Record<"soil" | "wall" | "inside" | "outside", Printed> {
  return {
    soil: given(basis.soilConductivity),
    wall: given(basis.wallThickness),
    inside: given(basis.surfaceResistanceInside),
    outside: given(basis.surfaceResistanceOutside),
  };
}

/** A figure of the file as it is printed. */
function given(value: number): Printed {
  const text = trimmed(value, DECIMALS_OF_GIVEN);
  return { text, value: readFigure(text) };
}

function step(symbol: string, formula: string, value: number, unit: string): FloorStep {
  return { symbol, formula, outcome: printed(value, DECIMALS.resistance), unit };
}

/** More decimals than anyone measures, so that openings of a few square centimetres keep their figures. */
export const DECIMALS_OF_GIVEN = 5;
