import type { BuildUp, Framing, FramingOrigin, Layer } from "../../project/types.ts";

/** One kind of goods in a square metre of a build-up. */
export interface Goods {
  use: "layer" | "framing" | "tape";
  material: string;
  /** Thickness of the layer, or depth of the framing [m]; null for sheets. */
  thickness: number | null;
  /** Area [m²], volume [m³] and length [m] in a square metre; null if it is not counted in that unit. */
  area: number | null;
  volume: number | null;
  length: number | null;
  /** How many layers of it there are; the hours count for each. */
  layers: number;
}

/**
 * The goods in a square metre of a build-up: every solid layer by its area without framing, every framing by its volume
 * and, if its width is known, by its length.
 *
 * @param buildUp - the build-up
 * @returns one entry for each material and thickness, from the room outwards, then framing
 */
export function goodsOf(buildUp: BuildUp): Goods[] {
  return merged([...buildUp.layers.flatMap(layerGoods), ...framingGoods(buildUp.layers)]);
}

function layerGoods(layer: Layer): Goods[] {
  if (layer.type === "air") return [];
  const area = 1 - (layer.framing?.share ?? 0);
  const isSheet = layer.type === "sheet";
  return [
    {
      use: "layer",
      material: layer.material.name,
      thickness: isSheet ? null : layer.thickness,
      area,
      volume: isSheet ? null : area * layer.thickness,
      length: null,
      layers: 1,
    },
  ];
}

/** The goods for framing; a framing of one name through several layers is one timber, as deep as all of them. */
function framingGoods(layers: readonly Layer[]): Goods[] {
  const depths = new Map<Framing | string, { framing: Framing; depth: number }>();
  for (const { framing, thickness } of layers) {
    if (framing === null) continue;
    const key = framing.ofOneLayer ? framing : framing.name;
    const depth = (depths.get(key)?.depth ?? 0) + thickness;
    depths.set(key, { framing, depth });
  }
  return [...depths.values()].map(({ framing: { material, share, origin }, depth }) => ({
    use: "framing",
    material: material.name,
    thickness: depth,
    area: null,
    volume: share * depth,
    length: lengthPerArea(origin, share),
    layers: 1,
  }));
}

/** Length of framing in a square metre [m/m²]; null if only its share is known. */
function lengthPerArea(origin: FramingOrigin, share: number): number | null {
  if (origin.kind === "fraction") return null;
  return origin.kind === "channel" ? 1 / origin.spacing : share / origin.width;
}

function merged(goods: readonly Goods[]): Goods[] {
  const byKind = new Map<string, Goods>();
  for (const one of goods) {
    const key = JSON.stringify([one.use, one.material, one.thickness]);
    const before = byKind.get(key);
    byKind.set(key, before === undefined ? one : together(before, one));
  }
  return [...byKind.values()];
}

function together(one: Goods, other: Goods): Goods {
  const sum = (a: number | null, b: number | null): number | null => (a === null || b === null ? null : a + b);
  return {
    ...one,
    area: sum(one.area, other.area),
    volume: sum(one.volume, other.volume),
    length: sum(one.length, other.length),
    layers: one.layers + other.layers,
  };
}
