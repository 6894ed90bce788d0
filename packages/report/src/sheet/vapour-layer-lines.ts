import type { BuildUpResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, percent, trimmed } from "../numbers.ts";
import { vapourLayerKind } from "../vapour-layer-kind.ts";
import { sentence } from "../words.ts";

/**
 * The position of the vapour layer, with its margin.
 *
 * @param buildUp - a build-up of the result
 * @returns a paragraph and a list of figures; null where it was not looked for
 */
export function vapourLayerLines(buildUp: BuildUpResult): Html | null {
  const found = buildUp.vapourLayer;
  if (found === null) return null;
  const isLayer = vapourLayerKind(found) === "vapour layer";
  const figures = [
    found.dewPointMargin === null || !isLayer
      ? null
      : `least margin above the dew point ${fixed(found.dewPointMargin, 1)} K, in ${found.dewPointMarginMonth}`,
    found.resistanceShareWarmSide === null || !isLayer
      ? null
      : `${percent(found.resistanceShareWarmSide, 0)} of the thermal resistance on its warm side (up to a third is common practice)`,
    found.sdRatioWarmToCold === null || buildUp.element !== "wall"
      ? null
      : `sd on the warm side of the insulation over sd on its cold side ${trimmed(found.sdRatioWarmToCold, 1)} (at least 5 is common practice for walls)`,
    found.outerSkin === null
      ? null
      : `tight outer skin: ${found.outerSkin.name}, sd ${trimmed(found.outerSkin.sd, 2)} m`,
  ].filter((figure) => figure !== null);
  return html`<h3>Vapour control layer</h3><p>${found.message}${figures.length > 0 ? html` ${sentence(figures.join("; "))}.` : null}</p>`;
}
