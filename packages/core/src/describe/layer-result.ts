import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { mainInsulation } from "../heat/main-insulation.ts";
import { distinctFramings } from "../heat/paths.ts";
import type { CountedLayer } from "../heat/types.ts";
import type { BuildUp, Framing, Layer } from "../project/types.ts";
import type { FramingResult, LayerResult } from "../result/types.ts";
import { coreSd, layerSd, shareLeftByGaps } from "../vapour/layer-sd.ts";
import { framingOriginInWords, usualFraming } from "./framing-in-words.ts";

/**
 * The layers in the shape of the result. Those beyond a well-ventilated layer are included and marked as not counted.
 *
 * @param calculation - the build-up's figures
 * @returns a row for each layer
 */
export function layerResults({ buildUp, heat }: BuildUpCalculation): LayerResult[] {
  const coldFace = mainInsulation(heat.counted)?.index ?? -1;
  return buildUp.layers.map((layer, index) => {
    const counted = heat.counted.find((entry) => entry.index === index);
    return layerResult(layer, index, counted, index <= coldFace);
  });
}

function layerResult(
  layer: Layer,
  index: number,
  counted: CountedLayer | undefined,
  warmSideOfColdFace: boolean,
): LayerResult {
  const solid = layer.type === "air" ? null : layer;
  const material = solid?.material ?? null;
  return {
    number: index + 1,
    name: layer.name,
    type: layer.type,
    kind: material?.kind ?? null,
    group: material?.group ?? null,
    thickness: layer.thickness,
    conductivity: solid?.type === "material" ? material!.conductivity : null,
    resistance: counted?.resistance ?? 0,
    vapourResistanceFactor: solid?.type === "material" ? material!.vapourResistanceFactorDry : null,
    sd: layerSd(layer, "dry"),
    sdUnfavourable: layerSd(layer, warmSideOfColdFace ? "wet" : "dry"),
    sdParts: sdParts(layer),
    density: material?.density ?? null,
    emissivityInner: solid?.emissivityInner ?? null,
    emissivityOuter: solid?.emissivityOuter ?? null,
    source: material?.source ?? "air layer",
    basis: material?.basis ?? "tabulated",
    framing: layer.framing?.name ?? null,
    ventilation: layer.type === "air" ? layer.ventilation : null,
    ventilationArea: layer.type === "air" ? layer.ventilationArea : null,
    open: layer.type === "air" ? layer.open : null,
    airRule: airRule(layer, counted),
    fit: solid?.fit ?? null,
    purpose: solid?.purpose ?? null,
    counted: counted !== undefined,
  };
}

/** sd of the facings and of the core between them [m]. */
function sdParts(layer: Layer): LayerResult["sdParts"] {
  if (layer.type === "air" || (layer.facingInner === 0 && layer.facingOuter === 0)) return null;
  const left = shareLeftByGaps(layer, "dry");
  return { innerFacing: layer.facingInner * left, core: coreSd(layer, "dry"), outerFacing: layer.facingOuter * left };
}

function airRule(layer: Layer, counted: CountedLayer | undefined): string | null {
  if (layer.type !== "air") return null;
  if (layer.ventilation === "well") return "well ventilated: it and everything beyond it do not count";
  const rule = counted?.airRule ?? "beyond a well-ventilated layer: not counted";
  return layer.ventilation === "slight"
    ? `slightly ventilated: between closed and well ventilated; closed: ${rule}`
    : rule;
}

/**
 * The framings in the shape of the result.
 *
 * @param calculation - the build-up's figures
 * @returns a row for each framing, with the origin of its share and the usual share
 */
export function framingResults(calculation: BuildUpCalculation): FramingResult[] {
  return distinctFramings(calculation.heat.counted).map((framing) => framingResult(framing, calculation.buildUp));
}

function framingResult(framing: Framing, buildUp: BuildUp): FramingResult {
  const layers = buildUp.layers.flatMap((layer, index) => (layer.framing?.name === framing.name ? [index] : []));
  return {
    name: framing.name,
    material: framing.material.name,
    conductivity: framing.material.conductivity!,
    vapourResistanceFactor: framing.material.vapourResistanceFactorDry,
    source: framing.material.source,
    basis: framing.material.basis,
    share: framing.share,
    origin: framingOriginInWords(framing),
    usual: usualFraming(buildUp.element),
    layers,
    width: framing.origin.kind === "width and spacing" ? framing.origin.width : null,
    spacing: framing.origin.kind === "fraction" ? null : framing.origin.spacing,
  };
}
