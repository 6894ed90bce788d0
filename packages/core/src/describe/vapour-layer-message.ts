import { sideInWords } from "../findings/words/side-in-words.ts";
import type { BuildUp } from "../project/types.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import type { VapourLayerData } from "../vapour-layer/assess-vapour-layer.ts";

/**
 * The vapour layer in a sentence, which never says "inside" for the warm side.
 *
 * @param result - the vapour layer without its sentence
 * @param name - its name, or null without any
 * @param buildUp - for the names of its sides
 * @returns a sentence
 */
export function vapourLayerMessage(
  result: VapourLayerData,
  name: string | null,
  buildUp: Pick<BuildUp, "room" | "faces">,
): string {
  if (result.warmSide === "neither")
    return "Nothing drives vapour through this build-up: the vapour pressure is the same on both sides all year.";
  const side = sideInWords(result.warmSide, buildUp);
  if (name === null) return `There is no vapour layer. Over the year vapour comes from ${side}, the warm side.`;
  const sd = `sd ${formatQuantity(result.sd!, "sd")}`;
  if (result.onWarmSide === false) {
    return `There is no vapour layer on the warm side (${side}). The only tight layer, ${name} (${sd}), lies on the cold side.`;
  }
  const skin = result.outerSkin;
  const isOuter = result.warmSide === "inside";
  const beside =
    skin === null
      ? ""
      : ` On the cold side ${skin.name} (sd ${formatQuantity(skin.sd, "sd")}) is even tighter${isOuter ? ": a tight outer skin" : ""}.`;
  const months = result.monthsOnWarmSide!;
  const always = months === 12 ? "in every month" : `in ${months} of 12 months`;
  return `The vapour layer is ${name} (${sd}). It is on the warm side (${side}) over the year, and ${always}.${beside}`;
}
