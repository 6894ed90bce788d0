import type { RuledJudgement } from "../findings/judgement.ts";
import type { RuledFinding } from "../findings/types.ts";
import { wordFinding } from "../findings/words/word-finding.ts";
import type { BuildUp } from "../project/types.ts";
import type { Finding, Judgement, VerdictWord } from "../result/types.ts";

/** Findings in words, by the finding that a rule gave. */
export type WordedFindings = ReadonlyMap<RuledFinding, Finding>;

/**
 * Puts findings into words and gives them their ids.
 *
 * @param findings - as the rules give them
 * @param buildUp - their build-up, for its slug and names
 * @returns findings in the same order, with ids `slug/code`, numbered where a code occurs twice
 */
export function findingsInWords(findings: readonly RuledFinding[], buildUp: BuildUp): WordedFindings {
  const seen = new Map<string, number>();
  return new Map(
    findings.map((ruled) => {
      const { code, severity, figures } = ruled;
      const count = (seen.get(code) ?? 0) + 1;
      seen.set(code, count);
      const id = `${buildUp.slug}/${code}${count > 1 ? `/${count}` : ""}`;
      return [ruled, { id, code, severity, ...wordFinding(ruled, buildUp), figures } as Finding];
    }),
  );
}

/**
 * Puts a judgement into words: the deciding finding; where it is beyond the method, first the finding that fails it
 * even so; and where the standard does not pass it, that it does not.
 *
 * @param ruled - the judgement as data
 * @param worded - all findings of the build-up in words
 * @returns the word, its reasons as finding ids, a sentence and the conditions
 */
export function judgementInWords(ruled: RuledJudgement, worded: WordedFindings): Judgement {
  const said = (finding: RuledFinding | null): Finding | null => (finding === null ? null : worded.get(finding)!);
  const [decisive, failing, notPassed] = [ruled.decisive, ruled.failsEvenSo, ruled.notPassed].map(said);
  const sound = notPassed ?? SOUND[ruled.verdict];
  const { short, message } = decisive ?? sound;
  const first = failing ? `Even this mild method fails it. ${failing.short}` : "";
  const conditions = ruled.conditions.map((finding) => worded.get(finding)!).filter(({ advice }) => advice !== null);
  return {
    word: ruled.word,
    reasons: ruled.reasons.map((finding) => worded.get(finding)!.id),
    decisive: decisive?.id ?? null,
    verdict: ruled.verdict,
    failsEvenSo: failing?.id ?? null,
    short: first === "" ? short : first,
    message: [first, message, decisive && notPassed ? notPassed.message : ""].filter((part) => part !== "").join(" "),
    conditionsFrom: conditions.map(({ id }) => id),
    conditions: [...new Set(conditions.map(({ advice }) => advice!))],
  };
}

const SOUND: Readonly<Record<VerdictWord, Pick<Finding, "short" | "message">>> = {
  dry: alone("No condensation in any month."),
  "dries out": alone("A little water condenses and is gone within the year."),
  "stays wet": alone("Only a trace of water remains, too little to matter in the life of the building."),
};

function alone(sentence: string): Pick<Finding, "short" | "message"> {
  return { short: sentence, message: sentence };
}
