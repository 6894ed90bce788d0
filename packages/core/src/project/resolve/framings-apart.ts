import type { Framing, Layer } from "../types.ts";

/**
 * Whether a framing's name has the word "and" in it: a way through "studs and battens" is through two framings, so that
 * no framing may be called like that.
 *
 * @param name - of a framing
 * @returns true when it has
 */
export function saysAnd(name: string): boolean {
  return name.split(/\s+/).some((word) => word.toLowerCase() === "and");
}

/**
 * A framing's name as it looks in print, where spaces run together.
 *
 * @param name - of a framing
 * @returns the same for names that a reader could not tell apart
 */
export function nameInPrint(name: string): string {
  return name.trim().replace(/\s+/g, " ");
}

/**
 * Framings written inside layers told apart: each is of its layer alone, so that it crosses every other, even one of the
 * same material. The first keeps its material's name, with "&" for any "and", the others say which layer they are of.
 *
 * @param layers - of one build-up or variant
 * @returns the layers, no two different framings of one name, and none whose name reads like two
 */
export function framingsApart(layers: readonly Layer[]): Layer[] {
  const named = layers.flatMap(({ framing }) => (framing === null || framing.ofOneLayer ? [] : framing.name));
  const taken = new Set(named.map(nameInPrint));
  return layers.map((layer, index) => {
    const { framing } = layer;
    if (framing === null || !framing.ofOneLayer) return layer;
    const called = { ...framing, name: freeName(framing, index + 1, taken) };
    taken.add(called.name);
    return { ...layer, framing: called };
  });
}

function freeName({ name }: Framing, layer: number, taken: ReadonlySet<string>): string {
  let free = nameInPrint(name)
    .split(" ")
    .map((word) => (saysAnd(word) ? "&" : word))
    .join(" ");
  while (taken.has(free)) free = `${free} of layer ${layer}`;
  return free;
}
