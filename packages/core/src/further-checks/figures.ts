import { formatQuantity } from "../quantities/format-quantity.ts";
import type { Peak, VerdictWord } from "../result/types.ts";

/** "dry", "dries out, at most 37 g/m² at the end of February". */
export function yearInWords(verdict: VerdictWord, peak: Peak): string {
  if (peak.month === null) return verdict;
  const amount = formatQuantity(peak.amount, "condensate");
  const most = amount.startsWith("under") ? amount : `at most ${amount}`;
  return `${verdict}, ${most} at the end of ${peak.month}`;
}
