import type { Peak, VerdictWord } from "../result/types.ts";

/** Figures as they stand in the sentences of these checks. Rounded for showing only. */

/** Water [kg/m²] in grams: "187 g/m²", "0.4 g/m²". */
export function gramsInWords(amount: number): string {
  const grams = amount * 1000;
  if (grams > 0 && grams < 0.05) return "under 0.1 g/m²";
  return `${thousandsApart(grams.toFixed(grams < 10 ? 1 : 0))} g/m²`;
}

/** Thousands of figures of five digits and more apart, as everywhere in the report. */
export function thousandsApart(digits: string): string {
  return digits.length > LONGEST_UNGROUPED ? digits.replace(/\B(?=(\d{3})+$)/g, "\u202f") : digits;
}

const LONGEST_UNGROUPED = 4;

/** An sd [m]: "0.55 m", "8.3 m", "50 m". */
export function sdInWords(sd: number): string {
  if (sd >= 10) return `${sd.toFixed(0)} m`;
  return `${sd.toFixed(sd >= 1 ? 1 : 2)} m`;
}

/** A small share 0 to 1: "0.1 %", "15 %". */
export function shareInWords(share: number): string {
  return `${Number((share * 100).toPrecision(2))} %`;
}

/** "dry", "dries out, at most 37 g/m² at the end of February". */
export function yearInWords(verdict: VerdictWord, peak: Peak): string {
  if (peak.month === null) return verdict;
  const amount = gramsInWords(peak.amount);
  const most = amount.startsWith("under") ? amount : `at most ${amount}`;
  return `${verdict}, ${most} at the end of ${peak.month}`;
}
