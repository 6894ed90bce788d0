import type { BuildUp, Layer } from "./types.ts";

/** Layers that are unusual at that end of the list, by index from 0; null where the end is as usual. */
export interface OddEnds {
  innermost: number | null;
  outermost: number | null;
}

/** Names of linings and room paints, which rain would destroy (common practice). */
const OF_ROOMS = /plasterboard|gypsum|wallpaper|emulsion paint|clay (plaster|paint|board)|vinyl paint|eggshell/i;
/** Names of materials that keep the weather out and do not face a room (common practice). */
const OF_WEATHER = /breather|facing brick|roofing|underlay felt|bituminous felt/i;

/**
 * Signs that a list runs from outside to inside: a lining in the rain, or a weather skin in the room.
 *
 * @param buildUp - element, what it faces and layers
 * @returns null where there are none, and for a build-up that does not face outdoors
 * Source: METHOD.md, Lists written from outside (common practice).
 */
export function oddEndsOf({ element, faces, layers }: Pick<BuildUp, "element" | "faces" | "layers">): OddEnds | null {
  if (faces !== "outdoors" || element === "partition" || layers.length < 2) return null;
  const last = layers.length - 1;
  const ends = {
    innermost: element !== "floor" && isOfWeather(layers[0]!) ? 0 : null,
    outermost: isOfRooms(layers[last]!) ? last : null,
  };
  return ends.innermost === null && ends.outermost === null ? null : ends;
}

function isOfRooms(layer: Layer): boolean {
  return layer.type !== "air" && OF_ROOMS.test(layer.material.name);
}

function isOfWeather(layer: Layer): boolean {
  return layer.type !== "air" && (layer.material.group === "roofing" || OF_WEATHER.test(layer.material.name));
}
