import { saturationPressure } from "../air/saturation-pressure.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { betweenFraming } from "../vapour-layer/assess-vapour-layer.ts";
import type { TightLayer } from "../vapour-layer/candidates.ts";
import { sideInWords } from "../vapour-layer/vapour-layer-message.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isTooMuch, judgeWater } from "./water-level.ts";

/** A layer on the cold side matters where the air at its warm face stands this damp [–] … */
export const DAMP_FACE = 0.8;
/** … for this many months (both this project's rules). */
export const DAMP_MONTHS = 2;

/**
 * Where the vapour layer lies: on the cold side in damp air, or missing on the warm side while water condenses.
 * Source: common practice.
 */
export function vapourLayerFindings(evidence: Evidence): RuledFinding[] {
  const { vapourLayer, calculation, tightLayer } = evidence;
  const side = sideInWords(vapourLayer.warmSide, calculation);
  const findings: RuledFinding[] = [];
  const coldSide = layerOnColdSide(evidence);
  if (coldSide !== null && !isRequired(evidence, coldSide)) {
    const damp = dampMonths(evidence, coldSide);
    if (damp >= DAMP_MONTHS && isFinishOrSheet(evidence, coldSide))
      findings.push(coldSideLayer(evidence, coldSide, damp, side));
  }
  const missing = vapourLayer.warmSide !== "neither" && vapourLayer.onWarmSide !== true;
  const judged = judgeWater(calculation);
  const tooMuch = isTooMuch(judged);
  const tooOpen = tightLayer !== null && tooMuch && isTooOpen(evidence, tightLayer);
  if (tooOpen || (missing && (tooMuch || judged.level === "some"))) {
    findings.push({
      code: "no-vapour-layer-warm-side",
      severity: "caution",
      effect: "none",
      message: tooOpen
        ? `On the warm side (${side}) only ${tightLayer.name} (sd ${formatQuantity(tightLayer.sd, "sd")}) holds the vapour back, which is too little here: there is no vapour layer.`
        : `Nothing on the warm side (${side}) holds the vapour back before it reaches the cold part of the build-up.`,
      advice: `A vapour layer belongs on the warm side: towards ${side}, before the insulation.`,
      source: "common practice",
      figures: { warmSide: vapourLayer.warmSide },
    });
  }
  return findings;
}

/**
 * The tight layer on the cold side: the only one there is, or, where vapour comes from the far side, the skin towards
 * the room that is tighter than what lies on the warm side. Outwards such a skin is the tight outer skin's own rule.
 */
function layerOnColdSide({ vapourLayer, tightLayer, tightLayers, buildUp }: Evidence): TightLayer | null {
  if (vapourLayer.onWarmSide === false) return tightLayer;
  const { outerSkin, warmSide } = vapourLayer;
  if (outerSkin === null || warmSide === buildUp.room) return null;
  return tightLayers.find(({ layers }) => layers === outerSkin.layers) ?? null;
}

/** A board on the warm side that nobody meant as a vapour layer and that is more open than any membrane sold as one. */
function isTooOpen(evidence: Evidence, layer: TightLayer): boolean {
  if (evidence.vapourLayer.onWarmSide !== true || layer.sd >= LEAST_VAPOUR_LAYER_SD) return false;
  return layer.parts.every(({ layer: index, part }) => {
    const found = evidence.buildUp.layers[index];
    return part === "whole" && found?.type === "material" && found.purpose !== "vapour layer";
  });
}

/** The most open membrane sold as a vapour control layer [m] (common practice). */
export const LEAST_VAPOUR_LAYER_SD = 2;

function coldSideLayer(evidence: Evidence, layer: TightLayer, damp: number, side: string): RuledFinding {
  const inwards = evidence.vapourLayer.warmSide !== evidence.buildUp.room;
  return {
    code: "vapour-layer-cold-side",
    severity: "fault",
    effect: inwards ? "change by guidance" : "none",
    message:
      `The tight layer ${layer.name} (sd ${formatQuantity(layer.sd, "sd")}) lies on the cold side: over the year vapour is pushed from ${side}. ` +
      `The air at its warm face stands at 80 % or more in ${damp} months.`,
    advice: `Take it out, or move it to the warm side, towards ${side}.`,
    source: "common practice",
    figures: { sd: layer.sd, warmSide: evidence.vapourLayer.warmSide, dampMonths: damp },
  };
}

/** Months in which the air at the layer's warm face stands at 80 % or more, between framing. */
function dampMonths(evidence: Evidence, layer: TightLayer): number {
  const section = betweenFraming(evidence.calculation);
  const fromRoom = evidence.vapourLayer.warmSide === evidence.buildUp.room;
  const { line, climate, year } = section;
  const face = fromRoom ? layer.resistanceBefore : layer.resistanceAfter;
  const nodes = Array.from({ length: line.count }, (_, node) => node).filter(
    (node) => line.resistanceFrom[node]! - 1e-9 <= face && face <= line.resistanceTo[node]! + 1e-9,
  );
  const node = fromRoom ? nodes[0] : nodes[nodes.length - 1];
  if (node === undefined) return 0;
  return year.pressure.filter((pressure, month) => {
    return pressure[node]! / saturationPressure(climate.temperature[month]![node]!) >= DAMP_FACE;
  }).length;
}

/** Sheets, coatings and facings are somebody's choice; a board or masonry is what the building is made of. */
function isFinishOrSheet(evidence: Evidence, layer: TightLayer): boolean {
  return layer.parts.some(({ layer: index, part }) => {
    const found = evidence.buildUp.layers[index];
    return part !== "whole" || found?.type === "sheet";
  });
}

/** Whether a tight layer is required for another purpose: then no finding speaks against it and no remedy takes it out. */
export function isRequired(evidence: Pick<Evidence, "buildUp">, layer: { layers: readonly number[] }): boolean {
  return layer.layers.some((index) => {
    const found = evidence.buildUp.layers[index];
    return found !== undefined && found.type !== "air" && found.purpose !== null && found.purpose !== "vapour layer";
  });
}
