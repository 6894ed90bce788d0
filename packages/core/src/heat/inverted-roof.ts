import { SECONDS_PER_DAY } from "../constants.ts";
import { insulates } from "../project/insulates.ts";
import { isRoof } from "../project/is-roof.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp, Layer } from "../project/types.ts";
import { formatNumber } from "../quantities/format-quantity.ts";
import type { HeatCorrection } from "../result/types.ts";
import { sumOfResistances } from "./sum-of-resistances.ts";
import type { CountedLayer } from "./types.ts";

/** f·x, one layer, butt joints, open ballast [W·day/(m²·K·mm)]. Source: ISO 6946:2017 Annex F (from memory). */
export const RAIN_FACTOR = 0.04;

const MILLIMETRES_PER_DAY = 1000 * SECONDS_PER_DAY;

/**
 * The insulation over the weather skin of an inverted roof, where rain runs below the insulation.
 *
 * @param buildUp - the build-up
 * @returns indices [–] of the insulating layers outside the outermost skin; empty for every other build-up
 * Source: METHOD.md, Corrections (common practice for what a skin is).
 */
export function insulationOverSkin({ element, pitch, faces, layers }: BuildUp): number[] {
  if (!isRoof({ element }) || isUpright({ element, pitch }) || faces !== "outdoors") return [];
  const skin = layers.findLastIndex(isWeatherSkin);
  if (skin === -1) return [];
  return layers.flatMap((layer, index) => (index > skin && insulates(layer) ? [index] : []));
}

/** A roofing sheet, or a layer stated to be the weather skin; tiles and chippings do not keep water out. */
function isWeatherSkin(layer: Layer): boolean {
  if (layer.type === "air") return false;
  if (layer.purpose === "weather skin") return true;
  return layer.material.group === "roofing" && layer.material.kind === "plastic";
}

/**
 * Heat carried off by rain that runs below the insulation of an inverted roof: ΔUr = p·f·x·(R1/RT)².
 *
 * @param buildUp - the build-up, with the rain of the heating season
 * @param counted - counted layers
 * @param total - RT without corrections [m²·K/W], above 0
 * @returns the correction [W/(m²·K)]; none for other build-ups, and none where no rain is given (a finding asks for it)
 * Source: ISO 6946:2017 Annex F (from memory).
 */
export function rainCorrections(buildUp: BuildUp, counted: readonly CountedLayer[], total: number): HeatCorrection[] {
  const above = insulationOverSkin(buildUp);
  const rain = buildUp.rainOfHeatingSeason;
  const insulation = counted.filter(({ index }) => above.includes(index));
  if (rain === null || insulation.length === 0) return [];
  const perDay = rain * MILLIMETRES_PER_DAY;
  const resistance = sumOfResistances(insulation);
  return [
    {
      name: `rain below ${insulation[0]!.layer.name}`,
      layer: insulation[0]!.index,
      value: rainCorrection(perDay, resistance, total),
      formula: `${formatNumber(perDay, 1)} × ${RAIN_FACTOR} × (${formatNumber(resistance, 3)} / ${formatNumber(total, 3)})²`,
    },
  ];
}

/**
 * ΔUr of an inverted roof.
 *
 * @param rain - p, mean over the heating season [mm/day], ≥ 0
 * @param resistance - R1 of the insulation over the skin [m²·K/W], ≥ 0
 * @param total - RT without corrections [m²·K/W], above 0
 * @returns ΔUr [W/(m²·K)]
 * Source: ISO 6946:2017 Annex F (from memory).
 * @example rainCorrection(2, 3.6, 4) // 0.0648
 */
export function rainCorrection(rain: number, resistance: number, total: number): number {
  const shareOfResistance = resistance / total;
  return rain * RAIN_FACTOR * shareOfResistance ** 2;
}
