import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { SensitivityName, VerdictWord } from "../../result/types.ts";

/** The result of a run: amounts in kg/m². */
interface YearInShort {
  verdict: VerdictWord;
  peak: number;
  carriedOver: number;
  /** Whether the mean years after a 1-in-10 year remove the water it leaves. */
  isCleared?: boolean;
}

/**
 * A sensitivity run in a sentence.
 *
 * @param name - the changed assumption
 * @param year - the result of the year
 * @returns such as "With no vapour layer it stays dry."
 */
export function runInWords(name: SensitivityName, year: YearInShort): string {
  return `${OPENING[name]} ${outcome(year)}.`;
}

const OPENING: Readonly<Record<SensitivityName, string>> = {
  "one in ten colder year": "In a cold year (1 in 10) it",
  "one in ten warmer year": "In a warm year (1 in 10) it",
  "heated every day": "Heated every day it",
  "unfavourable vapour resistance": "With the unfavourable vapour resistances it",
  "vapour layer ten times more open": "With the vapour layer ten times more open it",
  "no vapour layer": "Without the vapour layer it",
  "wetter room": "With a wetter room it",
};

function outcome({ verdict, peak, carriedOver, isCleared = false }: YearInShort): string {
  if (verdict === "dry") return "stays dry";
  const amount = formatQuantity(peak, "condensate");
  const most = amount.startsWith("under") ? `a trace, ${amount}` : `at most ${amount}`;
  if (verdict === "dries out") return `dries out, ${most}`;
  const remains = `${formatQuantity(carriedOver, "condensate")} remains`;
  return isCleared
    ? `holds ${most}, and ${remains} at its end, which mean years clear`
    : `stays wet, ${most} in the first year, and ${remains}`;
}
