import type { BuildUp } from "../project/types.ts";

/** Whether a build-up is a roof, flat or pitched. */
export function isRoof({ element }: Pick<BuildUp, "element">): boolean {
  return element === "flat roof" || element === "pitched roof";
}
