import { formatQuantity } from "../../quantities/format-quantity.ts";
import { grams } from "../figures-in-words.ts";
import { runInWords } from "./run-in-words.ts";
import type { Wordings } from "./wording.ts";

type Codes =
  | "humidity-needs-cooling-statement"
  | "one-humidity-all-year"
  | "unfavourable-vapour-resistance"
  | "sound-as-used"
  | "damp-ground-below";

/** Findings on assumptions of the answer. */
export const ASSUMPTION_WORDINGS: Wordings<Codes> = {
  "humidity-needs-cooling-statement": () => ({
    says: "The room is cooled but has a humidity class, and classes are made for heated rooms: in the cooled months the answer is too favourable.",
    advice: "State the humidity of the cooled months (`humidity when cooled: 55 %`).",
    source: "ISO 13788:2012 Annex A",
  }),
  "one-humidity-all-year": ({ figures: { humidity } }) => ({
    says: `The room is held at ${formatQuantity(humidity, "relative humidity")} all year, cooled in summer and heated in winter: no such house is that damp in winter.`,
    advice:
      "Give a class for the heated months and the humidity of the cooled ones (`humidity: class 2`, `humidity when cooled: 55 %`).",
    source: "this project's rule (METHOD.md, Indoor humidity)",
  }),
  "unfavourable-vapour-resistance": ({ figures }) => ({
    says: `The answer depends on the vapour resistances. ${runInWords("unfavourable vapour resistance", figures)}`,
    more: [figures.limitPassed === null ? "" : `That exceeds the limit of ${grams(figures.limitPassed)}.`],
    advice: "Use the declared values of your products.",
    source: "ISO 10456:2007 gives each material a dry and a wet value",
  }),
  "sound-as-used": ({ figures }) => ({
    says: "The answer relies on the room being heated on some days only.",
    more: [runInWords("heated every day", figures)],
    advice: "Keep to that use, or choose a build-up that is sound with daily heating.",
    source: "calculated again for this build-up (this project's rule)",
  }),
  "damp-ground-below": () => ({
    says: "The void is assumed to hold as much vapour as outdoor air.",
    more: ["Damp bare ground makes it wetter."],
    advice: "Cover the ground with a membrane and keep the openings clear.",
    source: "common practice",
  }),
};
