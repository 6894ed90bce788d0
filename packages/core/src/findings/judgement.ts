import type { Finding, Judgement, JudgementWord, VerdictWord } from "../result/types.ts";
import type { FindingWithEffect } from "./all-findings.ts";
import type { JudgementEffect } from "./types.ts";

/** Effects in order of precedence, with the word each makes. Source: this project's rule (METHOD.md, Judgement). */
const PRECEDENCE: readonly { effect: JudgementEffect; word: JudgementWord }[] = [
  { effect: "change by guidance", word: "change it" },
  { effect: "beyond", word: "beyond this method" },
  { effect: "change by number", word: "change it" },
  { effect: "condition", word: "sound with conditions" },
];

/**
 * The judgement: guidance that refuses the build-up first, then what is beyond the method, then numbers over their
 * limits, then conditions; sound where none of these speaks.
 *
 * @param findings - all findings with their effects
 * @param verdict - of the governing section
 * @returns the word, its reasons as finding ids, a sentence and the conditions
 * Source: this project's rule (METHOD.md, Judgement).
 */
export function judge(findings: readonly FindingWithEffect[], verdict: VerdictWord): Judgement {
  const speaking = PRECEDENCE.flatMap(({ effect }) => findings.filter((entry) => entry.effect === effect));
  const first = PRECEDENCE.find(({ effect }) => findings.some((entry) => entry.effect === effect));
  const word = first?.word ?? "sound";
  const reasons = speaking.length > 0 ? speaking : findings.filter(({ finding }) => SUPPORTING.has(finding.code));
  const decisive = speaking[0]?.finding;
  const failing = word === "beyond this method" ? certainFailure(findings) : null;
  const notPassed = findings.find(({ finding }) => finding.code === "standard-not-passed")?.finding;
  const sound = notPassed?.short ?? SOUND[verdict];
  const conditions = findings
    .filter(({ effect, finding }) => first?.effect === "condition" && effect === "condition" && finding.advice !== null)
    .map(({ finding }) => finding);
  return {
    word,
    reasons: reasons.map(({ finding }) => finding.id),
    decisive: decisive?.id ?? null,
    verdict,
    failsEvenSo: failing?.id ?? null,
    short: failing === null ? (decisive?.short ?? sound) : `${FAILS} ${failing.short}`,
    message: [
      failing === null ? "" : `${FAILS} ${failing.short}`,
      decisive?.message ?? notPassed?.message ?? SOUND[verdict],
      decisive !== undefined && notPassed !== undefined ? notPassed.message : "",
    ]
      .filter((part) => part !== "")
      .join(" "),
    conditionsFrom: conditions.map(({ id }) => id),
    conditions: [...new Set(conditions.map(({ advice }) => advice!))],
  };
}

const FAILS = "It fails even by this mild method:";

/** Water over its limits, or drops on the surface, that even a method without rain, sun and steam finds. */
function certainFailure(findings: readonly FindingWithEffect[]): Finding | null {
  if (findings.some(({ finding }) => UNFOUNDED.has(finding.code))) return null;
  return (
    findings.find(({ effect, finding }) => effect === "change by number" && CERTAIN.has(finding.code))?.finding ?? null
  );
}

const CERTAIN: ReadonlySet<string> = new Set([
  "condensation-too-much",
  "stays-wet",
  "surface-condensation",
  "metal-drips",
]);

/** After these no figure of the method means anything. */
const UNFOUNDED: ReadonlySet<string> = new Set([
  "layers-from-outside",
  "metal-bridging",
  "ground-feeds-water",
  "bonded-foam-grows",
]);

/** Findings that speak for a sound build-up. */
const SUPPORTING: ReadonlySet<string> = new Set(["stays-dry", "forgives-gaps", "trace", "condensation-dries-out"]);

const SOUND: Readonly<Record<VerdictWord, string>> = {
  dry: "No condensation in any month.",
  "dries out": "A little water condenses and is gone within the year.",
  "stays wet": "Only a trace of water remains, too little to matter in the life of the building.",
};
