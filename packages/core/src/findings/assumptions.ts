import { cooledMonths } from "../climate/cooled-months.ts";
import { grams } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isTooMuch, judgeWater } from "./water-level.ts";

/** What the room's air and the far side rest on. Source: ISO 13788:2012 Annex A (from memory) and this project's rules. */
export function assumptionFindings(evidence: Evidence): RuledFinding[] {
  return [
    ...classInCooledRoom(evidence),
    ...unfavourableVerdict(evidence),
    ...heatedOnSomeDays(evidence),
    ...groundUnderVoid(evidence),
  ];
}

function classInCooledRoom({ room, site }: Evidence): RuledFinding[] {
  if (room.humidity.kind !== "class" || cooledMonths(room, site.outdoor.temperature).length === 0) return [];
  return [
    {
      code: "humidity-needs-cooling-statement",
      severity: "caution",
      effect: "condition",
      message:
        "The room is cooled but its humidity is told by a class, and classes are made for heated rooms: while it is cooled the answer is too kind.",
      advice: "State the humidity of the cooled room in percent, or as a moisture balance.",
      source: "ISO 13788:2012 Annex A (from memory)",
      figures: { class: room.humidity.class },
    },
  ];
}

function unfavourableVerdict({ sensitivity, calculation }: Evidence): RuledFinding[] {
  const run = sensitivity.find(({ name }) => name === "unfavourable vapour resistance");
  if (run === undefined) return [];
  const judged = judgeWater(run.calculation);
  const turns = isTooMuch(judged) && !isTooMuch(judgeWater(calculation));
  if (!turns && run.result.verdict === calculation.governing.year.verdict) return [];
  const overLimit = turns && judged.amount > judged.limit!.amount;
  const limit = overLimit ? ` That is over the limit of ${grams(judged.limit!.amount)} there.` : "";
  return [
    {
      code: "unfavourable-vapour-resistance",
      severity: turns ? "caution" : "note",
      effect: turns ? "condition" : "none",
      message: `The answer hangs on the vapour resistances: ${run.result.message}${limit}`,
      advice: "Use declared values of the products where you have them.",
      source: "ISO 10456:2007 gives each material a dry and a wet value (from memory)",
      figures: { verdict: run.result.verdict, peak: run.result.peak.amount },
    },
  ];
}

/** Sound only because it is heated on some days: the use may change, and nobody sees the wall. */
function heatedOnSomeDays({ sensitivity, calculation }: Evidence): RuledFinding[] {
  const run = sensitivity.find(({ name }) => name === "heated every day");
  if (run === undefined) return [];
  const judged = judgeWater(run.calculation);
  if (!isTooMuch(judged) || isTooMuch(judgeWater(calculation))) return [];
  return [
    {
      code: "sound-as-used",
      severity: "caution",
      effect: "condition",
      message: `The answer rests on the room being heated on some days only. ${run.result.message}`,
      advice: "Keep to that use, or choose a build-up that stands daily heating.",
      source: "worked out again for this build-up (this project's rule)",
      figures: { verdict: run.result.verdict, amount: judged.amount, limit: judged.limit!.amount },
    },
  ];
}

function groundUnderVoid({ buildUp }: Evidence): RuledFinding[] {
  if (buildUp.faces !== "void" || buildUp.voidClimate !== null) return [];
  return [
    {
      code: "damp-ground-below",
      severity: "note",
      effect: "none",
      message: "The void's air is taken to hold as much vapour as the air outdoors. Damp bare ground makes it wetter.",
      advice: "Cover the ground with a membrane and keep the openings clear.",
      source: "common practice",
      figures: {},
    },
  ];
}
