import { type BuildUpResult, type MoistureResult, TRACE } from "@warmside/core";
import { gramsPerArea } from "../../numbers.ts";
import { waterHeadline } from "../../water-headline.ts";
import { pathWords } from "../../words.ts";

/** What a verdict is made from; without moisture figures there is none. */
type Judged = Pick<BuildUpResult, "surface" | "trappedWater"> & { moisture: MoistureResult };

/**
 * The verdict that the judgement follows, with its figures, in one sentence, and the standard's where it differs. Drops on
 * a surface and built-in water are not part of the verdict, but are always told with it.
 *
 * @param buildUp - the result of a build-up within the method
 * @returns such as "Verdict: dries out, at most 187 g/m², in March, gone by July."
 */
export function verdictInWords({ moisture, surface, trappedWater }: Judged): string {
  const { verdict, words, byStandard } = waterHeadline(moisture);
  const beside = [...dropsInWords(surface), ...trappedWater.flatMap(builtInWords)].map((each) => `; ${each}`).join("");
  const followed = byStandard === null ? "" : " (with drying within the month, which the judgement follows)";
  const other =
    byStandard === null ? "" : ` By the standard's monthly step: ${byStandard.verdict}, ${byStandard.words}.`;
  if (verdict === "dry")
    return `Verdict: dry${beside === "" ? "," : " inside"} in every month of the year${followed}${beside}.${other}`;
  return `Verdict: ${verdict}${wayInWords(moisture)}, ${traceInWords(moisture)}${words}${endInWords(moisture)}${followed}${beside}.${other}`;
}

function dropsInWords(surface: BuildUpResult["surface"]): string[] {
  const months = surface === null ? [] : [surface.condensationMonths, surface.otherFace?.condensationMonths ?? []];
  const count = new Set(months.flat()).size;
  return count === 0 ? [] : [`drops on the surface in ${count === 1 ? "one month" : `${count} months`}`];
}

/** Empty where nothing had to dry. Amounts in framing refer to its own face, and days are rounded up, as in the finding. */
function builtInWords({ amount, daysToDry, sectionId }: BuildUpResult["trappedWater"][number]): string[] {
  if (daysToDry === 0) return [];
  const where =
    sectionId.kind === "through framing"
      ? `in the ${sectionId.through.join(" and ")}, for each square metre of their own face, `
      : "";
  const leaves = daysToDry === null ? "does not leave within ten years" : `takes ${Math.ceil(daysToDry)} days to leave`;
  return [`${where}the ${gramsPerArea(amount)} built in ${leaves}`];
}

function wayInWords(moisture: MoistureResult): string {
  const { id } = moisture.governing;
  return id.kind === "whole" ? "" : ` ${pathWords(id)}`;
}

/** A trace is called a trace: it is no reason to change anything. */
function traceInWords(moisture: MoistureResult): string {
  const judged = moisture.governing.withinMonth;
  return judged.verdict === "dries out" && judged.peak.amount <= TRACE ? "only a trace, " : "";
}

function endInWords(moisture: MoistureResult): string {
  const { verdict, dryBy } = moisture.governing.withinMonth;
  if (verdict === "stays wet") return "";
  return dryBy === null ? ", gone within the year" : `, gone by ${dryBy}`;
}
