import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import type { VapourLayerResult } from "../result/types.ts";

/**
 * The vapour layer in a sentence. Never worded as "inside" when the warm side is meant.
 *
 * @param result - the vapour layer without its sentence
 * @param name - its name, or null without any
 * @param calculation - the build-up's figures
 * @returns a sentence
 */
export function vapourLayerMessage(
  result: Omit<VapourLayerResult, "message">,
  name: string | null,
  calculation: BuildUpCalculation,
): string {
  const side = sideInWords(result.warmSide, calculation);
  if (result.warmSide === "neither")
    return "Nothing drives vapour through this build-up: both sides have the same vapour pressure all year.";
  if (name === null) return `There is no vapour layer. Over the year vapour is pushed from ${side}, the warm side.`;
  const sd = `sd ${formatQuantity(result.sd!, "sd")}`;
  if (result.onWarmSide === false) {
    return `There is no vapour layer on the warm side (${side}). The only tight layer, ${name} (${sd}), lies on the cold side.`;
  }
  const skin = result.outerSkin;
  const isOuter = result.warmSide === calculation.buildUp.room;
  const beside =
    skin === null
      ? ""
      : ` On the cold side ${skin.name} (sd ${formatQuantity(skin.sd, "sd")}) is tighter still${isOuter ? ": a tight outer skin" : ""}.`;
  const months = result.monthsOnWarmSide!;
  const always = months === 12 ? "in every month" : `in ${months} of 12 months`;
  return `The vapour layer is ${name} (${sd}). It lies on the warm side (${side}) over the year, and ${always}.${beside}`;
}

/** A side in words for a sentence: "the room", "the damp room", "outdoors". */
export function sideInWords(side: string, calculation: BuildUpCalculation): string {
  const { name } = calculation.farSide;
  if (side === "outdoors") return name === "outdoors" ? name : `the ${name}`;
  if (side === "indoor") return "the room";
  return calculation.buildUp.room === side || calculation.farSide.name === side ? `the ${side}` : side;
}
