import { cooledMonths } from "../climate/cooled-months.ts";
import type { SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import type { SectionYear } from "../year/types.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isTooMuch, judgeWater, worstOf } from "./water-level.ts";

/** What was assumed for the air of the room and of the far side. Source: ISO 13788:2012 Annex A (from memory) and this project's rules. */
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

/** Below this outdoor temperature it is winter, when no house keeps its summer humidity [°C] (this project's rule). */
const WINTER = 10;

/** A room cooled in summer and heated in winter never has one humidity all year: assuming so reverses what such houses do. */
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

/** The build-up is sound only because the room is heated on some days: its use may change, and nobody sees into the wall. */
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
