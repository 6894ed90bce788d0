import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { DependenceFigures, TightLayerFigures, VapourLayerFindings, WaterWithout } from "../../result/types.ts";
import { sideInWords } from "../../vapour-layer/vapour-layer-message.ts";
import { grams } from "../figures-in-words.ts";
import { isTooMuch } from "../water-level.ts";
import type { Wordings } from "./wording.ts";

const TRIED = "worked out again for this build-up; what counts as too much is as for any water";

type Codes = "vapour-layer-cold-side" | "no-vapour-layer-warm-side" | "depends-on-vapour-layer" | "forgives-gaps";

/** Findings of where the vapour layer lies, and of what hangs on it. */
export const VAPOUR_LAYER_WORDINGS: Wordings<Codes & keyof VapourLayerFindings> = {
  "vapour-layer-cold-side": ({ figures }, buildUp) => {
    const side = sideInWords(figures.warmSide, buildUp);
    return {
      says: `The tight layer ${layerInWords(figures)} lies on the cold side: over the year vapour is pushed from ${side}.`,
      more: [`The air at its warm face stands at 80 % or more in ${figures.dampMonths} months.`],
      advice: `Take it out, or move it to the warm side, towards ${side}.`,
      source: "common practice",
    };
  },
  "no-vapour-layer-warm-side": ({ figures: { warmSide, tooOpen } }, buildUp) => {
    const side = sideInWords(warmSide, buildUp);
    return {
      says:
        tooOpen === null
          ? `Nothing on the warm side (${side}) holds the vapour back before it reaches the cold part of the build-up.`
          : `On the warm side (${side}) only ${layerInWords(tooOpen)} holds the vapour back, which is too little here: there is no vapour layer.`,
      advice: `A vapour layer belongs on the warm side: towards ${side}, before the insulation.`,
      source: "common practice",
    };
  },
  "depends-on-vapour-layer": ({ figures }) => ({
    says: `The build-up depends on ${layerInWords(figures)} being continuous: ten times more open it ${outcome(figures.whenOpened)}.`,
    advice: sealing(figures),
    source: TRIED,
  }),
  "forgives-gaps": ({ figures }) => {
    const { whenOpened, whenLeftOut } = figures;
    return {
      says: `The build-up forgives gaps: with ${layerInWords(figures)} ten times more open it still ${outcome(whenOpened)}.`,
      more: [
        isTooMuch(whenLeftOut)
          ? `Left out altogether it ${outcome(whenLeftOut)}.`
          : "By vapour alone it would do without it; it is still needed against moving air.",
      ],
      advice: isTooMuch(whenLeftOut) ? sealing(figures) : null,
      source: TRIED,
    };
  },
};

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
      return `takes up too much water (${amount}, limit ${grams(water.limit!)})`;
    case "trace":
      return `has only a trace of water (${amount}${untilItGathers(water)})`;
    case "some":
      return `dries out (${amount} at most)`;
  }
}

/** How slowly a trace gathers where it does not dry out; nothing where it does. */
function untilItGathers({ yearsToGather }: WaterWithout): string {
  return yearsToGather === null ? "" : ` in the first year, ${Math.round(yearsToGather)} years until 200 g/m²`;
}
