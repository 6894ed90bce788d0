import { runInWords } from "../../sensitivity/run-in-words.ts";
import { grams } from "../figures-in-words.ts";
import type { Wordings } from "./wording.ts";

type Codes =
  | "humidity-needs-cooling-statement"
  | "unfavourable-vapour-resistance"
  | "sound-as-used"
  | "damp-ground-below";

/** Findings of what the answer takes as given. */
export const ASSUMPTION_WORDINGS: Wordings<Codes> = {
  "humidity-needs-cooling-statement": () => ({
    says: "The room is cooled but has a humidity class, and classes are made for heated rooms: in the cooled months the answer is too favourable.",
    advice: "State the humidity of the cooled room in per cent, or as a moisture balance.",
    source: "ISO 13788:2012 Annex A (from memory)",
  }),
  "unfavourable-vapour-resistance": ({ figures }) => ({
    says: `The answer depends on the vapour resistances: ${runInWords("unfavourable vapour resistance", figures)}`,
    more: [figures.limitPassed === null ? "" : `That exceeds the limit of ${grams(figures.limitPassed)}.`],
    advice: "Use the declared values of your products.",
    source: "ISO 10456:2007 gives each material a dry and a wet value (from memory)",
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
