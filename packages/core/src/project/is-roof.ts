import type { BuildUp } from "./types.ts";

/**
 * Whether a build-up is a roof, flat or pitched.
 *
 * @param buildUp - its element
 * @returns true for a roof, however steep
 * @example isRoof({ element: "flat roof" }) // true
 */
export function isRoof({ element }: Pick<BuildUp, "element">): boolean {
  return element === "flat roof" || element === "pitched roof";
}
