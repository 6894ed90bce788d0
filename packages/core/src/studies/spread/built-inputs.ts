import { canHaveGaps } from "../../further-checks/gaps/gaps.ts";
import type { Framing, Layer, SolidLayer } from "../../project/types.ts";
import { layerSd, sdWithGaps } from "../../vapour/layer-sd.ts";
import { ends } from "./material-inputs.ts";
import type { SpreadInput } from "./types.ts";
import { FRAMING_WIDTH, factorAt, MOST_OF_UNSTATED_GAPS, STATED_GAPS_WIDTH } from "./widths.ts";

/** Largest share of the area that framing may take [–]. */
const MOST_FRAMING = 0.95;

/**
 * The share of each framing: the timber built in may be more or less than drawn.
 *
 * @param layers - the counted layers of the working copy
 * @returns one input for each framing
 */
export function framingInputs(layers: readonly Layer[]): SpreadInput[] {
  const byName = new Map<string, Framing[]>();
  for (const { framing } of layers) {
    if (framing !== null) byName.set(framing.name, [...(byName.get(framing.name) ?? []), framing]);
  }
  return [...byName].map(([name, framings]) => {
    const stated = framings[0]!.share;
    const set = (quantile: number): void => {
      const share = Math.min(MOST_FRAMING, stated * factorAt(FRAMING_WIDTH, quantile));
      for (const framing of framings) framing.share = share;
    };
    const description = { name: `share of ${name}`, kind: "framing share", unit: "share" } as const;
    return { description: { ...description, ...ends(stated, FRAMING_WIDTH) }, set };
  });
}

/**
 * The gaps of layers for which the file states gaps, and of a vapour layer without any stated.
 *
 * @param layers - the counted layers of the working copy
 * @param vapourLayer - indices of the vapour layer's layers
 * @returns one input for each such layer; to be set after the inputs of materials
 * Source: METHOD.md, Studies: up to 0.1 % of a vapour layer; none missing is the likeliest (this project's rule).
 */
export function gapInputs(layers: readonly Layer[], vapourLayer: readonly number[]): SpreadInput[] {
  const tightest = tightestOf(layers, vapourLayer);
  return layers.flatMap((layer, index) => {
    if (layer.type === "air") return [];
    const isOnly = layers.every((other) => other === layer || other.name !== layer.name);
    const name = `gaps in ${layer.name}${isOnly ? "" : ` (layer ${index + 1})`}`;
    if (layer.gaps !== null) return [statedGaps(layer, name)];
    return index === tightest && canHaveGaps(layer) ? [unstatedGaps(layer, name)] : [];
  });
}

/** Index of the tightest layer, whose gaps alone count: gaps through touching layers seldom line up. */
function tightestOf(layers: readonly Layer[], vapourLayer: readonly number[]): number | null {
  const solid = vapourLayer.filter((index) => layers[index] !== undefined && layers[index]!.type !== "air");
  const [first, ...others] = solid;
  if (first === undefined) return null;
  return others.reduce(
    (best, index) => (layerSd(layers[index]!, "dry") > layerSd(layers[best]!, "dry") ? index : best),
    first,
  );
}

function statedGaps(layer: SolidLayer, name: string): SpreadInput {
  const gaps = layer.gaps!;
  const stated = gaps.share;
  const set = (quantile: number): void => {
    gaps.share = Math.min(1, stated * factorAt(STATED_GAPS_WIDTH, quantile));
  };
  const description = { name, kind: "gap share", unit: "share" } as const;
  return { description: { ...description, ...ends(stated, STATED_GAPS_WIDTH) }, set };
}

/** Lowers sd as if part of the area were missing: the sd of a sheet, and the facings of a faced board, since a gap goes
 * through the whole board. */
function unstatedGaps(layer: SolidLayer, name: string): SpreadInput {
  const { material } = layer;
  const set = (quantile: number): void => {
    const share = MOST_OF_UNSTATED_GAPS * (1 - Math.sqrt(1 - quantile));
    const open = (sd: number): number => (sd > 0 ? sdWithGaps(sd, share) : sd);
    if (layer.type === "sheet") material.equivalentAirLayerThickness = open(material.equivalentAirLayerThickness!);
    layer.facingInner = open(layer.facingInner);
    layer.facingOuter = open(layer.facingOuter);
  };
  return {
    description: {
      name,
      kind: "gap share",
      unit: "share",
      stated: 0,
      low: 0,
      high: MOST_OF_UNSTATED_GAPS,
      origin: "as built, assumed",
    },
    set,
  };
}
