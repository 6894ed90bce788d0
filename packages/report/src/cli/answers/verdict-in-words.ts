import { type MoistureResult, TRACE } from "@warmside/core";
import { waterHeadline } from "../../water-headline.ts";
import { pathWords } from "../../words.ts";

/**
 * The verdict with the figures that the judgement follows, in one sentence, and the standard's where it reads otherwise.
 *
 * @param moisture - of the build-up's governing section
 * @returns such as "Verdict: dries out, at most 187 g/m², in March, gone by July."
 */
export function verdictInWords(moisture: MoistureResult): string {
  const { verdict, words, byStandard } = waterHeadline(moisture);
  const followed = byStandard === null ? "" : " (with drying within the month, which the judgement follows)";
  const other =
    byStandard === null ? "" : ` By the standard's monthly step: ${byStandard.verdict}, ${byStandard.words}.`;
  if (verdict === "dry") return `Verdict: dry, in every month of the year${followed}.${other}`;
  return `Verdict: ${verdict}${wayInWords(moisture)}, ${traceInWords(moisture)}${words}${endInWords(moisture)}${followed}.${other}`;
}

function wayInWords(moisture: MoistureResult): string {
  const { id } = moisture.governing;
  return id.kind === "whole" ? "" : ` ${pathWords(id)}`;
}

/** A trace is called one: it is no reason to change anything. */
function traceInWords(moisture: MoistureResult): string {
  const judged = moisture.governing.withinMonth;
  return judged.verdict === "dries out" && judged.peak.amount <= TRACE ? "only a trace, " : "";
}

function endInWords(moisture: MoistureResult): string {
  const { verdict, dryBy } = moisture.governing.withinMonth;
  if (verdict === "stays wet") return "";
  return dryBy === null ? ", gone within the year" : `, gone by ${dryBy}`;
}
