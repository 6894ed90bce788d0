import type { JudgementWord, VerdictWord } from "../result/types.ts";
import type { JudgementEffect, RuledFinding } from "./types.ts";

/** The judgement as data: its word, and the findings behind it. */
export interface RuledJudgement {
  word: JudgementWord;
  /** Verdict of the year with drying within the month, shown where no finding decides. */
  verdict: VerdictWord;
  /** The findings it is based on, the most serious first. */
  reasons: readonly RuledFinding[];
  /** The finding that decides; null where none counts against the build-up. */
  decisive: RuledFinding | null;
  /** Where it is beyond the method, a finding that fails it even so; otherwise null. */
  failsEvenSo: RuledFinding | null;
  /** The finding that ISO 13788 does not pass it; null where it does. */
  notPassed: RuledFinding | null;
  /** Its conditions; empty unless the word is "sound with conditions". */
  conditions: readonly RuledFinding[];
}

/** Effects in order of precedence, with the word for each. Source: this project's rule (METHOD.md, Judgement). */
const PRECEDENCE: readonly { effect: JudgementEffect; word: JudgementWord }[] = [
  { effect: "change by guidance", word: "change it" },
  { effect: "beyond", word: "beyond this method" },
  { effect: "change by number", word: "change it" },
  { effect: "condition", word: "sound with conditions" },
];

/**
 * The judgement: first guidance that rejects the build-up, then cases beyond the method, then numbers over their
 * limits, then conditions; sound where none of these applies.
 *
 * @param findings - all findings with their effects
 * @param verdict - of the governing section
 * @returns the word, and the findings behind it
 * Source: this project's rule (METHOD.md, Judgement).
 */
export function judge(findings: readonly RuledFinding[], verdict: VerdictWord): RuledJudgement {
  const speaking = PRECEDENCE.flatMap(({ effect }) => findings.filter((finding) => finding.effect === effect));
  const decisive = speaking[0] ?? null;
  const word = PRECEDENCE.find(({ effect }) => effect === decisive?.effect)?.word ?? "sound";
  return {
    word,
    verdict,
    reasons: speaking.length > 0 ? speaking : findings.filter(({ code }) => SUPPORTING.has(code)),
    decisive,
    failsEvenSo: word === "beyond this method" ? certainFailure(findings) : null,
    notPassed: findings.find(({ code }) => code === "standard-not-passed") ?? null,
    conditions: word === "sound with conditions" ? speaking : [],
  };
}

/** Water that stays or exceeds its limit, or drops on the surface, found even without rain, sun and steam. */
function certainFailure(findings: readonly RuledFinding[]): RuledFinding | null {
  if (findings.some(({ code }) => UNFOUNDED.has(code))) return null;
  return findings.find(({ effect, code }) => effect === "change by number" && CERTAIN.has(code)) ?? null;
}

const CERTAIN: ReadonlySet<string> = new Set([
  "condensation-too-much",
  "stays-wet",
  "surface-condensation",
  "metal-drips",
]);

/** With one of these, no figure of the method is valid. */
const UNFOUNDED: ReadonlySet<string> = new Set([
  "layers-from-outside",
  "metal-bridging",
  "ground-feeds-water",
  "bonded-foam-grows",
]);

/** Findings that speak for a sound build-up. */
const SUPPORTING: ReadonlySet<string> = new Set(["stays-dry", "forgives-gaps", "trace", "condensation-dries-out"]);
