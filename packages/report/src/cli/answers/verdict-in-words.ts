import type { MoistureResult } from "@warmside/core";
import { grams } from "../../numbers.ts";

/**
 * The verdict of the monthly method with its figures, in one sentence.
 *
 * @param moisture - of the build-up's governing section
 * @returns such as "Verdict: dries out, with at most 187 g/m² of water in March and none left by July."
 */
export function verdictInWords(moisture: MoistureResult): string {
  if (moisture.verdict === "dry") return "Verdict: dry, in every month of the year.";
  return `Verdict: ${moisture.verdict}, with ${mostInWords(moisture)} and ${endInWords(moisture)}.${withinMonthInWords(moisture)}`;
}

function mostInWords({ peak, section }: MoistureResult): string {
  const where = section === "whole" ? "" : ` ${section}`;
  const when = peak.month === null ? "" : ` in ${peak.month}`;
  const trace = peak.amount <= TRACE ? "only a trace, " : "";
  return `${trace}at most ${grams(peak.amount)} g/m² of water${where}${when}`;
}

function endInWords({ verdict, carriedOver, dryBy }: MoistureResult): string {
  if (verdict === "stays wet") return `${grams(carriedOver)} g/m² left after twelve months`;
  return dryBy === null ? "none left within the year" : `none left by ${dryBy}`;
}

/** Up to this is a trace [kg/m²]; the judgement's rule. Source: this project's rule. */
const TRACE = 0.01;

/** The standard's month-end rule and drying inside the month may part; then both are told. */
function withinMonthInWords(moisture: MoistureResult): string {
  const section = moisture.sections.find(({ name }) => name === moisture.section);
  if (section === undefined || section.withinMonth.verdict === moisture.verdict) return "";
  return ` With drying counted inside each month: ${section.withinMonth.verdict}.`;
}
