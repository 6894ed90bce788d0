import type { BuildUpResult, WarmSide } from "@warmside/core";
import { html } from "../html.ts";
import { fixed, percent, trimmed } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { vapourLayerStanding } from "../vapour-layer-standing.ts";
import { shortMonth, sideWords } from "../words.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Where the vapour layer lies, which side vapour is driven from, and what else is tight. */
export function vapourLayerPart({ buildUp }: BuildUpPage): Part | null {
  const found = buildUp.vapourLayer;
  if (!found) return null;
  const standing = vapourLayerStanding(found);
  const named = layersWords(buildUp, found.layers);
  const facts: [string, string | null][] = [
    ["Vapour layer", standing === "vapour layer" ? named : WITHOUT[standing]],
    ["Tight layer", standing === "vapour layer" || standing === "none" ? null : named],
    ["Its sd", found.sd === null ? null : `${trimmed(found.sd, 2)} m`],
    ["Warm side over the year", sideName(buildUp, found.warmSide)],
    [
      "On the warm side",
      found.onWarmSide === null
        ? null
        : `${found.onWarmSide ? "yes" : "no"}${found.monthsOnWarmSide === null ? "" : `, in ${found.monthsOnWarmSide} of 12 months`}`,
    ],
    [
      "Resistance on its warm side",
      found.resistanceShareWarmSide === null
        ? null
        : `${percent(found.resistanceShareWarmSide, 0)} of the layers’ (up to a third is common practice in mild climates)`,
    ],
    [
      "Least margin above the dew point",
      found.dewPointMargin === null ? null : `${fixed(found.dewPointMargin, 1)} K, in ${found.dewPointMarginMonth}`,
    ],
    [
      "sd on the warm side of the insulation over sd on its cold side",
      found.sdRatioWarmToCold === null || buildUp.element !== "wall"
        ? null
        : `${trimmed(found.sdRatioWarmToCold, 1)} (at least 5 is common practice for walls)`,
    ],
    [
      "Tight outer skin",
      found.outerSkin
        ? `${layersWords(buildUp, found.outerSkin.layers)}, sd ${trimmed(found.outerSkin.sd, 2)} m`
        : "none",
    ],
    [
      "Every candidate",
      found.candidates.length === 0
        ? "none"
        : found.candidates
            .map(({ layers, sd, side }) => `${layersWords(buildUp, layers)}, sd ${trimmed(sd, 2)} m, ${SIDES[side]}`)
            .join("; "),
    ],
  ];
  const drive = tableMarkup({
    caption: "Which side vapour is driven from",
    columns: [
      { head: "Month", kind: "words" },
      { head: "From", kind: "words" },
      { head: "Pressure difference", unit: "Pa", kind: "figures" },
    ],
    rows: found.drive.map(({ month, from, pressure }) => [
      shortMonth(month),
      sideName(buildUp, from),
      fixed(Math.abs(pressure), 0),
    ]),
  });
  return {
    key: "vapour-layer",
    heading: "The vapour layer and its place",
    body: html`<p>${found.message}</p><div class="pair"><dl class="facts">${facts
      .filter(([, value]) => value !== null)
      .map(
        ([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`,
      )}</dl>${found.drive.length > 0 ? drive : null}</div>`,
  };
}

/** What is said of the vapour layer where the tightest layer is none. */
const WITHOUT = {
  "on the cold side": "none on the warm side",
  "nothing drives vapour": "none needed: nothing drives vapour",
  none: "none",
} as const;

const SIDES = { warm: "warm side", cold: "cold side", both: "on both sides", neither: "on neither side" } as const;

/** A side in the words of the drawing. */
function sideName(buildUp: BuildUpResult, side: WarmSide): string {
  if (side === "neither") return side;
  const { room, far } = sideWords(buildUp);
  return side === "inside" ? room : far;
}

function layersWords(buildUp: BuildUpResult, layers: readonly number[]): string {
  return layers.map((index) => `layer ${index + 1}, ${buildUp.layers[index]?.name ?? ""}`).join(" with ");
}
