import type { BuildUpResult, VerdictWord } from "@warmside/core";
import { gramsPerArea, mostGramsPerArea } from "./numbers.ts";

/**
 * The result in ISO 13788's own three-way sense, by its month-end rule, and whether it reads otherwise than the judgement.
 *
 * @param buildUp - a build-up of the result
 * @returns words and whether they differ from the judgement; null where moisture was not worked out
 * Source: ISO 13788:2012 clause 6.5 (from memory).
 */
export function standardWords({ moisture, judgement }: Pick<BuildUpResult, "moisture" | "judgement">): {
  words: string;
  differs: boolean;
} | null {
  if (moisture === null) return null;
  const { verdict, peak, carriedOver } = moisture;
  const judged = moisture.governing.withinMonth;
  const amount = peak.month === null ? "" : `, ${mostGramsPerArea(peak.amount)} in ${peak.month}`;
  const left = verdict === "stays wet" ? `, ${gramsPerArea(carriedOver)} left after 12 months` : "";
  const accepts = verdict !== "stays wet";
  const accepted = judgement.word !== "change it";
  const reason = accepts === accepted ? (verdict === judged.verdict ? "" : COUNTED) : accepts ? STRICTER : MILDER;
  return { words: `${CASES[verdict]}${amount}${left}.${reason}`, differs: reason !== "" };
}

/** The standard's three cases. */
export const CASES: Readonly<Record<VerdictWord, string>> = {
  dry: "no condensation predicted in any month",
  "dries out": "condensation, and all of it evaporates within the year",
  "stays wet": "condensation that does not all evaporate within the year",
};

const STRICTER = " The judgement is stricter, for the reason above.";
const MILDER = " The judgement counts drying within each month, and judges by the amount.";
const COUNTED = " The judgement counts drying within each month.";
