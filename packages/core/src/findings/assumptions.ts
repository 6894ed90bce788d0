import { cooledMonths } from "../climate/cooled-months.ts";
import type { SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import type { SectionYear } from "../year/types.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isTooMuch, judgeWater, worstOf } from "./water-level.ts";

/** Assumptions about the air on both sides. Source: ISO 13788:2012 Annex A (from memory) and this project's rules. */
export function assumptionFindings(evidence: Evidence): RuledFinding[] {
  return [
    ...classInCooledRoom(evidence),
    ...oneHumidityAllYear(evidence),
    ...unfavourableVerdict(evidence),
    ...heatedOnSomeDays(evidence),
    ...groundUnderVoid(evidence),
  ];
}

function classInCooledRoom({ room, site }: Evidence): RuledFinding[] {
  if (room.humidity.kind !== "class" || room.humidityWhenCooled !== null) return [];
  if (cooledMonths(room, site.outdoor.temperature).length === 0) return [];
  return [found("humidity-needs-cooling-statement", CONDITION, { class: room.humidity.class })];
}

/** A coldest month below this is a winter, in which no house keeps its summer humidity [°C] (this project's rule). */
const WINTER = 10;

/** One humidity all year, in a room cooled in summer with a winter outdoors, is the reverse of practice. */
function oneHumidityAllYear({ room, site }: Evidence): RuledFinding[] {
  const { humidity, humidityWhenCooled, temperature } = room;
  if (humidity.kind !== "months" || humidityWhenCooled !== null || temperature.kind === "held") return [];
  const [share] = humidity.relativeHumidity;
  const isOne = humidity.relativeHumidity.every((month) => month === share);
  const outdoors = site.outdoor.temperature;
  if (!isOne || cooledMonths(room, outdoors).length === 0 || Math.min(...outdoors) >= WINTER) return [];
  return [found("one-humidity-all-year", CONDITION, { humidity: share! })];
}

function unfavourableVerdict({ sensitivity, calculation, water }: Evidence): RuledFinding[] {
  const run = sensitivity.find(({ name }) => name === "unfavourable vapour resistance");
  if (run === undefined) return [];
  const judged = judgeWater(run.calculation);
  const turns = isTooMuch(judged) && !isTooMuch(worstOf(water));
  if (!turns && run.calculation.governing.year.verdict === calculation.governing.year.verdict) return [];
  const overLimit = turns && judged.amount > judged.limit!.amount;
  const figures = { ...inShort(run), limitPassed: overLimit ? judged.limit!.amount : null };
  return [found("unfavourable-vapour-resistance", turns ? CONDITION : NOTE, figures)];
}

/** Sound only because it is heated on some days: the use may change, and nobody sees inside the wall. */
function heatedOnSomeDays({ sensitivity, water }: Evidence): RuledFinding[] {
  const run = sensitivity.find(({ name }) => name === "heated every day");
  if (run === undefined) return [];
  const judged = judgeWater(run.calculation);
  if (!isTooMuch(judged) || isTooMuch(worstOf(water))) return [];
  const figures = { ...inShort(run), amount: judged.amount, limit: judged.limit!.amount };
  return [found("sound-as-used", CONDITION, figures)];
}

function inShort({ calculation }: SensitivityRun): Pick<SectionYear, "verdict" | "peak" | "carriedOver"> {
  const { verdict, peak, carriedOver } = calculation.governing.year;
  return { verdict, peak, carriedOver };
}

function groundUnderVoid({ buildUp }: Evidence): RuledFinding[] {
  return buildUp.faces === "void" && buildUp.voidClimate === null ? [found("damp-ground-below", NOTE, {})] : [];
}
