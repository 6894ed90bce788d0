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
    says: "The room is cooled but its humidity is told by a class, and classes are made for heated rooms: while it is cooled the answer is too kind.",
    advice: "State the humidity of the cooled room in percent, or as a moisture balance.",
    source: "ISO 13788:2012 Annex A (from memory)",
  }),
  "unfavourable-vapour-resistance": ({ figures }) => ({
    says: `The answer hangs on the vapour resistances: ${runInWords("unfavourable vapour resistance", figures)}`,
    more: [figures.limitPassed === null ? "" : `That is over the limit of ${grams(figures.limitPassed)} there.`],
    advice: "Use declared values of the products where you have them.",
    source: "ISO 10456:2007 gives each material a dry and a wet value (from memory)",
  }),
  "sound-as-used": ({ figures }) => ({
    says: "The answer rests on the room being heated on some days only.",
    more: [runInWords("heated every day", figures)],
    advice: "Keep to that use, or choose a build-up that stands daily heating.",
    source: "worked out again for this build-up (this project's rule)",
  }),
  "damp-ground-below": () => ({
    says: "The void's air is taken to hold as much vapour as the air outdoors.",
    more: ["Damp bare ground makes it wetter."],
    advice: "Cover the ground with a membrane and keep the openings clear.",
    source: "common practice",
  }),
};
