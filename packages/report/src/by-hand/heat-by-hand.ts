import type { HeatResult } from "@warmside/core";
import { DECIMALS, type Printed, printed } from "./printed.ts";

/** The transmittance worked step by step with rounded figures. */
export interface HeatByHand {
  paths: { name: string; share: Printed; resistance: Printed; conductance: Printed }[];
  sumOfConductances: Printed;
  upperLimit: Printed;
  layers: { number: number | null; name: string; resistance: Printed }[];
  lowerLimit: Printed;
  /** Mean of the limits; with a slightly ventilated air layer, of the closed case. */
  mean: Printed;
  /** The well-ventilated case and how far the layer is towards it; null without such a layer. */
  slight: { openShare: Printed; openResistance: Printed } | null;
  resistance: Printed;
  correction: Printed;
  transmittance: Printed;
}

/**
 * The combined method as worked with a pocket calculator: every figure follows from the printed ones.
 *
 * @param heat - heat figures of a build-up
 * @returns the steps
 * Source: ISO 6946:2017 clause 6.7.2 (from memory).
 */
export function heatByHand(heat: HeatResult): HeatByHand {
  const paths = heat.paths.map(({ name, share, resistance }) => {
    const shown = { share: printed(share, SHARE_DECIMALS), resistance: printed(resistance, DECIMALS.resistance) };
    return { name, ...shown, conductance: printed(shown.share.value / shown.resistance.value, CONDUCTANCE_DECIMALS) };
  });
  const sumOfConductances = printed(
    paths.reduce((sum, { conductance }) => sum + conductance.value, 0),
    CONDUCTANCE_DECIMALS,
  );
  const upperLimit = printed(1 / sumOfConductances.value, DECIMALS.resistance);
  const layers = heat.lowerLimitLayers.map(({ layer, name, resistance }) => ({
    number: layer === null ? null : layer,
    name,
    resistance: printed(resistance, DECIMALS.resistance),
  }));
  const lowerLimit = printed(
    layers.reduce((sum, { resistance }) => sum + resistance.value, 0),
    DECIMALS.resistance,
  );
  const mean = printed((upperLimit.value + lowerLimit.value) / 2, DECIMALS.resistance);
  const slight = heat.slightVentilation
    ? {
        openShare: printed(heat.slightVentilation.openShare, SHARE_DECIMALS),
        openResistance: printed(heat.slightVentilation.openResistance, DECIMALS.resistance),
      }
    : null;
  const resistance = slight
    ? printed(
        (1 - slight.openShare.value) * mean.value + slight.openShare.value * slight.openResistance.value,
        DECIMALS.resistance,
      )
    : mean;
  const correction = printed(heat.correction, DECIMALS.transmittance);
  const transmittance = printed(1 / resistance.value + correction.value, DECIMALS.transmittance);
  return {
    paths,
    sumOfConductances,
    upperLimit,
    layers,
    lowerLimit,
    mean,
    slight,
    resistance,
    correction,
    transmittance,
  };
}

const SHARE_DECIMALS = 4;
const CONDUCTANCE_DECIMALS = 6;
