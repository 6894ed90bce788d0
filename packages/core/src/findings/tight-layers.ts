import { mainInsulation } from "../heat/main-insulation.ts";
import { sumOfResistances } from "../heat/sum-of-resistances.ts";
import { insulates } from "../project/insulates.ts";
import { isUpright } from "../project/is-upright.ts";
import type { Layer } from "../project/types.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { TIGHT } from "../vapour/tight.ts";
import { betweenFraming } from "../vapour-layer/assess-vapour-layer.ts";
import { layersAsTightAs } from "../vapour-layer/candidates.ts";
import { DROPS_GATHER } from "./amount-limits.ts";
import { grams, joined, yearsInWords } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isRequired } from "./vapour-layer.ts";
import { judgeWater, type WaterJudged } from "./water-level.ts";

/**
 * Tight layers on the cold side, two tight layers with something between, and tight sheets where leaks must dry.
 * Source: common practice.
 */
export function tightLayerFindings(evidence: Evidence): RuledFinding[] {
  return [...tightOuterSkin(evidence), ...twoTightLayers(evidence), ...tightSheetOnColdSide(evidence)];
}

function tightOuterSkin(evidence: Evidence): RuledFinding[] {
  const { buildUp, vapourLayer } = evidence;
  const skin = vapourLayer.outerSkin;
  if (skin === null || skin.sd < TIGHT || vapourLayer.warmSide !== buildUp.room) return [];
  const isWeatherSkinOfRoof = !isUpright(buildUp) && buildUp.element !== "floor";
  if (isRequired(evidence, skin) && !isWeatherSkinOfRoof) return [];
  const judged = judgeWater(evidence.calculation);
  const { growthPerYear, yearsToGather } = judged;
  return [
    {
      code: "tight-outer-skin",
      severity: "caution",
      effect: isWeatherSkinOfRoof ? "none" : "condition",
      message: `A tight outer skin, ${skin.name} (sd ${formatQuantity(skin.sd, "sd")}), lets nothing leave outwards. ${dryingInwards(judged)}`,
      advice: adviceAtSkin(buildUp.layers[skin.layers[0]! - 1], isWeatherSkinOfRoof),
      source: "common practice",
      figures: { sd: skin.sd, growthPerYear, yearsToGather },
    },
  ];
}

function dryingInwards({ level, amount, growthPerYear, yearsToGather }: WaterJudged): string {
  if (level === "none") return "Vapour alone brings no water to it.";
  if (growthPerYear === null) return "What gathers there dries inwards within the year.";
  if (yearsToGather === null) return "Drying inwards is not enough: it stays at a level and never dries.";
  const until = amount < DROPS_GATHER ? `, ${yearsInWords(yearsToGather)} until that makes 200 g/m²` : "";
  const how = level === "stays" ? "Drying inwards is not enough" : "Nearly all of it dries inwards";
  return `${how}: ${grams(growthPerYear)} more each year${until}.`;
}

/** What has to be done between the skin and the layer inside it; the roof's weather skin lies on what carries it. */
function adviceAtSkin(inside: Layer | undefined, isWeatherSkinOfRoof: boolean): string {
  const seal = "Seal the room side: room air must not reach the skin.";
  const isFoam = inside?.type === "material" && insulates(inside) && inside.material.kind === "plastic";
  if (isFoam) return `The foam must be bonded to the skin without a void. ${seal}`;
  return isWeatherSkinOfRoof ? seal : `Keep a ventilated space between the insulation and the skin. ${seal}`;
}

/** Built-in water that takes longer than this to leave took a whole year of seasons [d] (this project's rule). */
const A_YEAR = 365;

function twoTightLayers(evidence: Evidence): RuledFinding[] {
  const { calculation } = evidence;
  const tight = layersAsTightAs(betweenFraming(calculation), calculation.heat, TIGHT);
  const inner = tight[0];
  const outer = tight[tight.length - 1];
  if (inner === undefined || outer === undefined || inner === outer) return [];
  const between = evidence.buildUp.layers.slice(inner.layers[inner.layers.length - 1]! + 1, outer.layers[0]!);
  const holding = between.filter(holdsWater);
  if (holding.length === 0 || evidence.buildUp.faces === "ground") return [];
  const trapped = evidence.checks.trappedWater;
  const neverDries = trapped.some(({ daysToDry }) => daysToDry === null || daysToDry > A_YEAR);
  const nameOf = (layers: readonly number[]): string =>
    joined(layers.map((index) => evidence.buildUp.layers[index]!.name));
  return [
    {
      code: "two-tight-layers",
      severity: neverDries ? "fault" : "caution",
      effect: neverDries ? "change by guidance" : "condition",
      message: `Between two tight layers, ${nameOf(inner.layers)} and ${nameOf(outer.layers)}, lies ${joined(holding.map(({ name }) => name))}, which can hold water: what gets in can hardly leave.${neverDries ? " The water that is built in does not dry within a year." : ""}`,
      advice:
        "Close it only when the timber is dry (under 20 %), and make one of the two layers more open where that is allowed.",
      source: "common practice; ISO 13788:2012 clause 7 for the trapped water (from memory)",
      figures: { sdInner: inner.sd, sdOuter: outer.sd },
    },
  ];
}

/** Timber, boards, paper and fibre hold water; foam, foil and air do not. */
function holdsWater(layer: Layer): boolean {
  if (layer.type !== "material") return false;
  if (layer.framing !== null && layer.framing.material.kind === "wood") return true;
  return layer.material.kind !== "plastic" && layer.material.kind !== "metal" && layer.material.kind !== null;
}

/** A sheet with more of the resistance than this outside it lies in the insulation, not outside it [–] (common practice: a third). */
const SHARE_OUTSIDE = 1 / 3;

/** Under a raised floor or outside a wall, in a heated building: leaks, spills and wet timber cannot dry. */
function tightSheetOnColdSide(evidence: Evidence): RuledFinding[] {
  const { buildUp, calculation, vapourLayer } = evidence;
  if (buildUp.element !== "floor" && buildUp.element !== "wall") return [];
  if (buildUp.faces === "ground" || vapourLayer.warmSide !== buildUp.room) return [];
  const main = mainInsulation(calculation.heat.counted);
  if (main === null) return [];
  const { counted } = calculation.heat;
  const total = sumOfResistances(counted);
  const isOutside = (index: number): boolean =>
    sumOfResistances(counted.filter((layer) => layer.index > index)) < SHARE_OUTSIDE * total;
  const sheet = counted.find(({ index, layer }) => index > main.index && isOutside(index) && isTightSheet(layer));
  if (sheet === undefined || isRequired(evidence, { layers: [sheet.index] })) return [];
  const above = buildUp.layers.slice(0, sheet.index).filter(holdsWater);
  if (above.length === 0) return [];
  const where = buildUp.element === "floor" ? "under the floor" : "outside the wall";
  return [
    {
      code: "tight-sheet-under-floor",
      severity: "fault",
      effect: "change by guidance",
      message: `A tight sheet, ${sheet.layer.name}, lies ${where} with ${joined(above.slice(-2).map(({ name }) => name))} on its room side. Leaks, spills and wet timber cannot dry through it, even where vapour alone leaves only a trace.`,
      advice:
        "Use a breather membrane there. A damp-proof, gas or radon membrane against the ground is another matter: name its `purpose` in the file.",
      source: "common practice",
      figures: { layer: sheet.index + 1 },
    },
  ];
}

function isTightSheet(layer: Layer): boolean {
  if (layer.type !== "sheet" || layer.material.kind === "metal") return false;
  return layer.material.equivalentAirLayerThickness !== null && layer.material.equivalentAirLayerThickness >= TIGHT;
}
