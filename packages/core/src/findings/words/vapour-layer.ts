import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { DependenceFigures, TightLayerFigures, VapourLayerFindings, WaterWithout } from "../../result/types.ts";
import { atMost, grams } from "../figures-in-words.ts";
import { isTooMuch } from "../water-level.ts";
import { sideInWords } from "./side-in-words.ts";
import type { Wordings } from "./wording.ts";

const TRIED = "calculated again for this build-up; the usual limits apply";

type Codes = "vapour-layer-cold-side" | "no-vapour-layer-warm-side" | "depends-on-vapour-layer" | "forgives-gaps";

/** Findings on the position of the vapour layer and on the dependence on it. */
export const VAPOUR_LAYER_WORDINGS: Wordings<Codes & keyof VapourLayerFindings> = {
  "vapour-layer-cold-side": ({ figures }, buildUp) => {
    const side = sideInWords(figures.warmSide, buildUp);
    return {
      says: `The tight layer ${layerInWords(figures)} lies on the cold side: over the year vapour comes from ${side}.`,
      more: [`The air at its warm face reaches 80 % or more in ${figures.dampMonths} months.`],
      advice: `Remove it, or move it to the warm side, towards ${side}.`,
      source: "common practice",
    };
  },
  "no-vapour-layer-warm-side": ({ figures: { warmSide, tooOpen, holdsRain } }, buildUp) => {
    const side = sideInWords(warmSide, buildUp);
    return {
      says:
        tooOpen === null
          ? `Nothing on the warm side (${side}) holds the vapour back.`
          : `On the warm side (${side}) only ${layerInWords(tooOpen)} holds the vapour back, and that is too little: there is no vapour layer.`,
      advice: holdsRain
        ? "Put none there while rain wets the outside: it would hold the rain in. Insulate outside, or keep the rain off first."
        : `Put a vapour layer on the warm side, towards ${side}, before the insulation.`,
      source: "common practice",
    };
  },
  "depends-on-vapour-layer": ({ figures, severity }) => ({
    says:
      severity === "note"
        ? `The build-up depends on an unbroken ${layerInWords(figures)}: with ${formatQuantity(figures.usualShare!, "share")} of it missing ${grams(figures.usualAmount!)} of water condenses.`
        : `The build-up depends on an unbroken ${layerInWords(figures)}: with that layer ten times more open it ${outcome(figures.whenOpened)}.`,
    advice: sealing(figures),
    source: TRIED,
  }),
  "forgives-gaps": ({ figures }) => {
    const { whenOpened, whenLeftOut } = figures;
    return {
      says: `Small faults in ${layerInWords(figures)} do no harm: ten times more open it still ${outcome(whenOpened)}.`,
      more: whenLeftOut === null ? [] : [withoutTheLayer(whenLeftOut)],
      advice: whenLeftOut !== null && isTooMuch(whenLeftOut) ? sealing(figures) : null,
      source: TRIED,
    };
  },
};

function withoutTheLayer(water: WaterWithout): string {
  const said = `Without the layer it ${outcome(water)}`;
  return isTooMuch(water) ? `${said}.` : `${said}; sealed, the layer still keeps moving air out.`;
}

function layerInWords({ name, sd }: TightLayerFigures): string {
  return `${name} (sd ${formatQuantity(sd, "sd")})`;
}

/** What to seal: laps of a sheet, or joints of boards. */
function sealing({ joints }: DependenceFigures): string {
  const which = joints === "boards" ? "the joints of the boards (tape or sealant)" : "laps (tape on the sheet)";
  return `Seal ${which}, the perimeter (a batten or sealant along the edges), sockets and pipes (airtight boxes, or a service layer on the room side).`;
}

function outcome(water: WaterWithout): string {
  const amount = grams(water.amount);
  switch (water.level) {
    case "none":
      return "stays dry";
    case "stays":
      return `stays wet (${amount} in the first year)`;
    case "too much":
      return `collects too much water (${amount}, limit ${grams(water.limit!)})`;
    case "trace":
      return `has only a trace of water (${amount}${untilItGathers(water)})`;
    case "some":
      return `dries out (${atMost(water.amount)})`;
  }
}

/** How slowly a trace accumulates; empty where it does not. */
function untilItGathers({ yearsToGather }: WaterWithout): string {
  return yearsToGather === null ? "" : ` in the first year, 200 g/m² after ${Math.round(yearsToGather)} years`;
}
