import { UNVENTILATED_UP_TO, WELL_VENTILATED_FROM } from "../constants.ts";
import type { BuildUp, Ventilation } from "../project/types.ts";
import type { HeatFlowDirection } from "../result/types.ts";
import { calculateHeat, slightlyVentilatedLayer } from "./heat-of-build-up.ts";
import type { HeatCalculation } from "./types.ts";

/** The two cases that bound a slightly ventilated air layer. */
export interface VentilationCases {
  closed: BuildUp;
  open: BuildUp;
  /** Openings Av [m² per m or m²]; null when the file does not state them. */
  area: number | null;
}

/**
 * The two cases of a build-up with slightly ventilated air layers: all of them unventilated, or all well ventilated.
 *
 * @param buildUp - the build-up
 * @returns the cases, or null where no air layer that counts is slightly ventilated
 * Source: ISO 6946:2017 clause 6.9.3 (from memory); calculating moisture for both is this project's rule.
 */
export function ventilationCases(buildUp: BuildUp): VentilationCases | null {
  const slight = slightlyVentilatedLayer(buildUp);
  if (slight === null) return null;
  return {
    closed: withSlightLayersAs(buildUp, "none"),
    open: withSlightLayersAs(buildUp, "well"),
    area: slight.layer.ventilationArea,
  };
}

function withSlightLayersAs(buildUp: BuildUp, ventilation: Ventilation): BuildUp {
  const layers = buildUp.layers.map((layer) =>
    layer.type === "air" && layer.ventilation === "slight" ? { ...layer, ventilation } : layer,
  );
  return { ...buildUp, layers };
}

/**
 * Heat figures of any build-up; with slightly ventilated air layers, the total resistance is interpolated.
 *
 * @param buildUp - the build-up
 * @param direction - of the heat flow
 * @returns heat figures; where the openings are not stated, those of the well-ventilated case (the smaller resistance)
 * Source: ISO 6946:2017 clause 6.9.3, RT = (1500 − Av)/1000·RT,u + (Av − 500)/1000·RT,v (from memory).
 */
export function heatOfBuildUp(buildUp: BuildUp, direction: HeatFlowDirection): HeatCalculation {
  const cases = ventilationCases(buildUp);
  if (cases === null) return calculateHeat(buildUp, direction);
  const closed = calculateHeat(cases.closed, direction);
  const open = calculateHeat(cases.open, direction);
  const share = cases.area === null ? 1 : openShare(cases.area);
  const between = (figure: (heat: HeatCalculation) => number): number =>
    (1 - share) * figure(closed) + share * figure(open);
  const resistance = between((heat) => heat.resistance);
  const correction = between((heat) => heat.correction);
  const clear = between((heat) => 1 / heat.clearTransmittance);
  const upperLimit = between((heat) => heat.upperLimit);
  const lowerLimit = between((heat) => heat.lowerLimit);
  return {
    ...closed,
    upperLimit,
    lowerLimit,
    resistance,
    limitsRatio: upperLimit / lowerLimit,
    possibleError: (upperLimit - lowerLimit) / (2 * resistance),
    correction,
    transmittance: closed.ground === null ? 1 / resistance + correction : between((heat) => heat.transmittance),
    clearTransmittance: 1 / clear,
    slightVentilation: {
      openShare: share,
      closedResistance: closed.resistance,
      openResistance: open.resistance,
      closedCorrection: closed.correction,
      openCorrection: open.correction,
    },
  };
}

/** Weight of the well-ventilated case [–], 0 to 1. */
function openShare(area: number): number {
  const range = WELL_VENTILATED_FROM - UNVENTILATED_UP_TO;
  return Math.min(1, Math.max(0, (area - UNVENTILATED_UP_TO) / range));
}
