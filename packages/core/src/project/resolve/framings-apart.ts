import type { Framing, Layer } from "../types.ts";

/**
 * Whether a framing's name contains the word "and". A path through "studs and battens" is one through two framings, so
 * no single framing may have such a name.
 *
 * @param name - name of a framing
 * @returns true if it does
 */
export function saysAnd(name: string): boolean {
  return name.split(/\s+/).some((word) => word.toLowerCase() === "and");
}

/**
 * A framing's name as it looks in print, where several spaces look like one.
 *
 * @param name - name of a framing
 * @returns the same text for names that a reader could not tell apart
 */
export function nameInPrint(name: string): string {
  return name.trim().replace(/\s+/g, " ");
}

/**
 * Gives framings written inside layers names that tell them apart. Each belongs to its layer alone, so it crosses all
 * others, even one of the same material. The first keeps its material's name, with "&" for any "and"; the others add
 * their layer's number.
 *
 * @param layers - the layers of one build-up or variant
 * @returns the layers, with a different name for each framing, and no name that reads like two
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
