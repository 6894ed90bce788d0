import type { Framing, Layer } from "../types.ts";

/**
 * Framings written inside layers told apart: each is of its layer alone, so that it crosses every other, even one of the
 * same material. The first keeps its material's name, the others say which layer they are of.
 *
 * @param layers - of one build-up or variant
 * @returns the layers, no two different framings of one name
 */
export function framingsApart(layers: readonly Layer[]): Layer[] {
  const taken = new Set(layers.flatMap(({ framing }) => (framing === null || framing.ofOneLayer ? [] : framing.name)));
  return layers.map((layer, index) => {
    const { framing } = layer;
    if (framing === null || !framing.ofOneLayer) return layer;
    const named = { ...framing, name: freeName(framing, index + 1, taken) };
    taken.add(named.name);
    return { ...layer, framing: named };
  });
}

function freeName({ name }: Framing, layer: number, taken: ReadonlySet<string>): string {
  let free = name;
  while (taken.has(free)) free = `${free} of layer ${layer}`;
  return free;
}
