import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import { MONTH_NAMES } from "../constants.ts";
import type { Side, VapourLayerResult, WarmSide } from "../result/types.ts";
import { vapourDrive } from "../vapour/warm-side.ts";
import { type InsulationPlace, type TightLayer, tightLayers } from "./candidates.ts";
import { type DewPointMargin, dewPointMargin } from "./dew-point-margin.ts";

/** The vapour layer as data: its result without the message. */
export type VapourLayerData = Omit<VapourLayerResult, "message">;

/** The vapour layer's result, the tight layer it describes with its parts, and all tight layers. */
export interface VapourLayerAssessment {
  tightLayer: TightLayer | null;
  tightLayers: readonly TightLayer[];
  result: VapourLayerData;
}

/**
 * The vapour layer of a build-up: which layer it is, whether it lies on the warm side, and how far its warm face stays
 * above the dew point.
 *
 * @param calculation - the build-up's figures
 * @returns the vapour layer, the tight outer skin beside it, position and margin
 * Source: this project's rules (METHOD.md, Vapour layer); position and order are common practice.
 */
export function assessVapourLayer(calculation: BuildUpCalculation): VapourLayerAssessment {
  const section = betweenFraming(calculation);
  const drive = vapourDrive(calculation.inside, calculation.farSide.months);
  const { candidates, insulation } = tightLayers(section, calculation.heat);
  const isWarm = (layer: TightLayer): boolean => liesOn(layer, drive.year);
  const vapourLayer = candidates.find(isWarm) ?? candidates[0] ?? null;
  const onWarmSide = vapourLayer === null || drive.year === "neither" ? null : isWarm(vapourLayer);
  const skin =
    drive.year === "neither"
      ? null
      : (candidates.find((layer) => !isWarm(layer) && (layer === vapourLayer || layer.sd > vapourLayer!.sd)) ?? null);
  const margin =
    vapourLayer === null || drive.year === "neither" ? null : marginOf(vapourLayer, drive.year, section, calculation);
  const result = {
    present: vapourLayer !== null,
    layers: vapourLayer?.layers ?? [],
    sd: vapourLayer?.sd ?? null,
    warmSide: drive.year,
    warmSideName: nameOf(drive.year, calculation),
    onWarmSide,
    monthsOnWarmSide: vapourLayer === null ? null : drive.months.filter(({ from }) => liesOn(vapourLayer, from)).length,
    drive: drive.months.map((month, index) => ({ month: MONTH_NAMES[index]!, ...month })),
    resistanceShareWarmSide: vapourLayer === null ? null : shareOnWarmSide(section, vapourLayer, drive.year),
    dewPointMargin: margin?.margin ?? null,
    dewPointMarginMonth: margin?.month ?? null,
    sdRatioWarmToCold: sdRatio(section, insulation, drive.year),
    outerSkin: skin === null ? null : { layers: skin.layers, sd: skin.sd, name: skin.name },
    candidates: candidates.map(({ layers, sd, roomSide, farSide }) => ({
      layers,
      sd,
      side: sideWord(roomSide, farSide, drive.year),
    })),
  };
  return { tightLayer: vapourLayer, tightLayers: candidates, result };
}

/** The section between framing, or the first where there is none. */
export function betweenFraming(calculation: BuildUpCalculation): SectionCalculation {
  return calculation.sections.find(({ path }) => path.through.length === 0) ?? calculation.sections[0]!;
}

function liesOn(layer: TightLayer, side: WarmSide): boolean {
  if (side === "inside") return layer.roomSide;
  if (side === "outside") return layer.farSide;
  return false;
}

function sideWord(roomSide: boolean, farSide: boolean, warm: WarmSide): "warm" | "cold" | "both" | "neither" {
  if (warm === "neither") return "neither";
  if (roomSide && farSide) return "both";
  return (warm === "inside") === roomSide ? "warm" : "cold";
}

function nameOf(side: WarmSide, calculation: BuildUpCalculation): string | null {
  if (side === "inside") return calculation.buildUp.room;
  if (side === "neither") return null;
  const { name } = calculation.farSide;
  return name === "ground" || name === "void" ? "outdoors" : name;
}

function shareOnWarmSide(section: SectionCalculation, layer: TightLayer, warm: WarmSide): number | null {
  const total = section.line.totalResistance;
  if (!(total > 0) || warm === "neither") return null;
  return warm === "inside" ? layer.resistanceBefore / total : (total - layer.resistanceAfter) / total;
}

/** The margin of a tight layer on the warm side, in the section between framing. */
function marginOf(
  layer: TightLayer,
  warm: Side,
  section: SectionCalculation,
  { inside, farSide }: BuildUpCalculation,
): DewPointMargin {
  const placeOf = (part: TightLayer["parts"][number]): number =>
    section.slices.findIndex((slice) => slice.layer === part.layer && slice.part === part.part);
  const face = { first: placeOf(layer.parts[0]!), last: placeOf(layer.parts[layer.parts.length - 1]!), warm };
  return dewPointMargin(section, face, warm === "inside" ? inside : farSide.months);
}

/** sd on the warm side of the main insulation divided by sd on its cold side, without the insulation itself. */
function sdRatio(section: SectionCalculation, insulation: InsulationPlace | null, warm: WarmSide): number | null {
  if (insulation === null || warm === "neither") return null;
  let before = 0;
  let after = 0;
  let passed = false;
  for (const slice of section.slices) {
    if (slice.layer === insulation.layer && slice.resistance > 0) passed = true;
    else if (passed) after += slice.sd;
    else before += slice.sd;
  }
  const [warmSd, coldSd] = warm === "inside" ? [before, after] : [after, before];
  return coldSd > 0 ? warmSd / coldSd : null;
}
