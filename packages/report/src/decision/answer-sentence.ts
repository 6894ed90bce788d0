import { inSpeech, type JudgementWord } from "@warmside/core";

/** What the answer is made from: one build-up's judgement, and whether it misses its U-value. */
export interface Asked {
  name: string;
  judgement: JudgementWord;
  /** Null where the file states no target, or heat could not be worked out. */
  meetsTarget: boolean | null;
}

/** The answer to the question whether build-ups may be closed as drawn. */
export type AnswerWord = "Yes" | "Yes, on conditions" | "No" | "No answer";

/**
 * The answer in one sentence, made from the results alone: "no" if anything must change or misses its U-value; otherwise
 * "cannot be told" if any build-up is beyond the method; otherwise "yes", with conditions if there are any.
 *
 * @param asked - every build-up, at least one
 * @returns the word, and the sentence that begins with it
 * @example answerSentence([{ name: "Wall", judgement: "sound", meetsTarget: null }]).sentence // "Yes: it may be closed as drawn."
 */
export function answerSentence(asked: readonly Asked[]): { word: AnswerWord; sentence: string } {
  const change = asked.filter(({ judgement }) => judgement === "change it");
  const missed = asked.filter(({ meetsTarget }) => meetsTarget === false);
  const beyond = asked.filter(({ judgement }) => judgement === "beyond this method");
  const rest = asked.filter((one) => ![...change, ...missed, ...beyond].includes(one));
  const isAlone = asked.length === 1;
  const word = answerWord(change.length + missed.length, beyond.length, asked);
  const clauses = [
    change.length === 0 ? null : `${names(change, isAlone)} must change`,
    missed.length === 0
      ? null
      : `${names(missed, isAlone)} ${missed.length > 1 ? "miss" : "misses"} ${missed.length > 1 ? "their" : "its"} U-value`,
    beyond.length === 0 ? null : `${names(beyond, isAlone)} cannot be judged by this method`,
    rest.length === 0 ? null : `${theRest(rest, asked)} may be closed ${closing(rest)}`,
  ].filter((clause) => clause !== null);
  return { word, sentence: `${word}: ${clauses.join("; ")}.` };
}

function answerWord(refused: number, beyond: number, asked: readonly Asked[]): AnswerWord {
  if (refused > 0) return "No";
  if (beyond > 0) return "No answer";
  return asked.some(({ judgement }) => judgement === "sound with conditions") ? "Yes, on conditions" : "Yes";
}

/** More names than this are counted instead. */
const MOST_NAMES = 2;

function names(some: readonly Asked[], isAlone: boolean): string {
  if (isAlone) return "it";
  if (some.length > MOST_NAMES) return `${some.length} build-ups`;
  return inSpeech(
    some.map(({ name }) => name),
    "and",
  );
}

function theRest(rest: readonly Asked[], asked: readonly Asked[]): string {
  if (asked.length === 1) return "it";
  if (rest.length === asked.length) return rest.length === 2 ? "both build-ups" : `all ${rest.length} build-ups`;
  return rest.length === 1 ? "the other" : `the other ${rest.length}`;
}

function closing(rest: readonly Asked[]): string {
  const conditional = rest.filter(({ judgement }) => judgement === "sound with conditions").length;
  if (conditional === 0) return "as drawn";
  return conditional === rest.length ? "on the conditions below" : "as drawn or on the conditions below";
}
