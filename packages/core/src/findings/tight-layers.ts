import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { insulates } from "../project/insulates.ts";
import { isUpright } from "../project/is-upright.ts";
import type { Layer } from "../project/types.ts";
import { layerSd } from "../vapour/layer-sd.ts";
import { TIGHT } from "../vapour/tight.ts";
import { betweenFraming } from "../vapour-layer/assess-vapour-layer.ts";
import { layersAsTightAs } from "../vapour-layer/candidates.ts";
import { CAUTION, CONDITION, found, REFUSED } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isRequired } from "./vapour-layer.ts";
import { worstOf } from "./water-level.ts";
import { weatherSkinOfRoof } from "./weather-skin.ts";

/**
 * Tight layers on the cold side, two tight layers with a layer between them that holds water, and tight sheets where
 * leaks must dry. None on the ground, where every tight layer is a membrane.
 * Source: common practice.
 */
export function tightLayerFindings(evidence: Evidence): RuledFinding[] {
  if (evidence.buildUp.faces === "ground") return [];
  return [...tightOuterSkin(evidence), ...twoTightLayers(evidence), ...tightSheetOnColdSide(evidence)];
}

function tightOuterSkin(evidence: Evidence): RuledFinding[] {
  const { buildUp, vapourLayer } = evidence;
  const skin = tightSkin(evidence);
  if (skin === null || vapourLayer.warmSide !== "inside") return [];
  const isWeatherSkinOfRoof = !isUpright(buildUp) && buildUp.element !== "floor";
  if (isRequired(evidence, skin) && !isWeatherSkinOfRoof) return [];
  const { level, amount, growthPerYear, yearsToGather } = worstOf(evidence.water);
  return [
    found("tight-outer-skin", isWeatherSkinOfRoof ? CAUTION : CONDITION, {
      name: skin.name,
      layers: skin.layers,
      sd: skin.sd,
      countsAsTight: skin.sd < TIGHT,
      level,
      amount,
      growthPerYear,
      yearsToGather,
      isWeatherSkinOfRoof,
      isOnFoam: isFoam(buildUp.layers[skin.layers[0]! - 1]),
    }),
  ];
}

/** The outer skin if tight by its sd or the weather skin of a roof, whatever the table gives for its polymer. */
function tightSkin({
  buildUp,
  calculation,
  vapourLayer,
}: Evidence): { name: string; layers: number[]; sd: number } | null {
  const skin = vapourLayer.outerSkin;
  if (skin !== null && skin.sd >= TIGHT) return skin;
  const index = weatherSkinOfRoof(buildUp, calculation.heat.counted.length);
  const layer = index === null ? undefined : buildUp.layers[index];
  if (layer === undefined || vapourLayer.layers.includes(index!)) return null;
  const sd = layerSd(layer, "dry");
  return sd < TIGHT ? { name: layer.name, layers: [index!], sd } : null;
}

function isFoam(layer: Layer | undefined): boolean {
  return layer?.type === "material" && insulates(layer) && layer.material.kind === "plastic";
}

/** Longer than this, construction moisture needs more than a year's seasons to dry [d] (this project's rule). */
const A_YEAR = 365;

function twoTightLayers(evidence: Evidence): RuledFinding[] {
  const { calculation } = evidence;
  const tight = layersAsTightAs(betweenFraming(calculation), calculation.heat, TIGHT);
  const inner = tight[0];
  const skin = tightSkin(evidence);
  const isBeyond = skin !== null && skin.sd < TIGHT && skin.layers[0]! > (tight.at(-1)?.layers.at(-1) ?? -1);
  const outer = isBeyond ? skin : tight[tight.length - 1];
  if (inner === undefined || outer === undefined || inner === outer) return [];
  const end = outer.layers[0]!;
  const between = evidence.buildUp.layers.flatMap((layer, index) =>
    index > inner.layers[inner.layers.length - 1]! && index < end && holdsWater(layer) ? [index] : [],
  );
  if (between.length === 0) return [];
  const neverDries = evidence.checks.trappedWater.some(({ daysToDry }) => daysToDry === null || daysToDry > A_YEAR);
  return [
    found("two-tight-layers", neverDries ? REFUSED : CONDITION, {
      inner: inner.layers,
      outer: outer.layers,
      between,
      sdInner: inner.sd,
      sdOuter: outer.sd,
      neverDries,
    }),
  ];
}

/** Timber, boards, paper and fibre hold water; foam, foil and air do not. */
function holdsWater(layer: Layer): boolean {
  if (layer.type !== "material") return false;
  if (layer.framing !== null && layer.framing.material.kind === "wood") return true;
  return layer.material.kind !== "plastic" && layer.material.kind !== "metal" && layer.material.kind !== null;
}

/** With more than this share of the resistance outside it, a sheet lies in the insulation [–] (common practice). */
const SHARE_OUTSIDE = 1 / 3;

/**
 * A tight sheet under a raised floor, outside a wall, or under the ventilated covering of a pitched roof, in a heated
 * building: leaks, spills and wet timber cannot dry. In a roof, only layers from its insulation outwards count.
 */
function tightSheetOnColdSide(evidence: Evidence): RuledFinding[] {
  const { buildUp, calculation, vapourLayer } = evidence;
  const isRoof = isUnderlaidRoof(evidence);
  if (buildUp.element !== "floor" && buildUp.element !== "wall" && !isRoof) return [];
  if (vapourLayer.warmSide !== "inside") return [];
  const main = mainInsulation(calculation.heat.counted);
  if (main === null) return [];
  const { counted } = calculation.heat;
  const total = sumOfResistances(counted);
  const isOutside = (index: number): boolean =>
    sumOfResistances(counted.filter((layer) => layer.index > index)) < SHARE_OUTSIDE * total;
  const sheet = counted.find(({ index, layer }) => index > main.index && isOutside(index) && isTightSheet(layer));
  if (sheet === undefined || isRequired(evidence, { layers: [sheet.index] })) return [];
  const first = isRoof ? main.index : 0;
  const above = buildUp.layers.flatMap((layer, index) =>
    index >= first && index < sheet.index && holdsWater(layer) ? [index] : [],
  );
  return above.length === 0 ? [] : [found("tight-sheet-under-floor", REFUSED, { layer: sheet.index, above })];
}

/** A pitched roof whose covering lies beyond ventilated air: its outermost counted sheet is an underlay, not the skin. */
function isUnderlaidRoof({ buildUp, calculation }: Evidence): boolean {
  if (buildUp.element !== "pitched roof" || isUpright(buildUp)) return false;
  return (calculation.heat.counted.at(-1)?.index ?? 0) < buildUp.layers.length - 1;
}

function isTightSheet(layer: Layer): boolean {
  if (layer.type !== "sheet" || layer.material.kind === "metal") return false;
  return layer.material.equivalentAirLayerThickness !== null && layer.material.equivalentAirLayerThickness >= TIGHT;
}
