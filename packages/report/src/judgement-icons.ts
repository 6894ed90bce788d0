import type { FindingSeverity, JudgementWord } from "@warmside/core";
import type { Mark } from "./decision/marks.ts";
import { type Html, markup } from "./html.ts";

/**
 * An icon for a judgement that differs in shape, so that it reads without colour.
 *
 * @param word - the judgement
 * @returns a small decorative drawing; the word itself always stands beside it
 */
export function judgementIcon(word: JudgementWord): Html {
  return icon(CLASSES[word], JUDGEMENT_SHAPES[word]);
}

/**
 * An icon for one of the three marks.
 *
 * @param mark - pass, conditions, fail or untold
 * @returns a small decorative drawing; words stand beside it
 */
export function markIcon(mark: Mark): Html {
  return icon(MARK_CLASSES[mark], JUDGEMENT_SHAPES[JUDGEMENT_OF_MARK[mark]]);
}

/**
 * An icon for a finding's severity.
 *
 * @param severity - note, caution or fault
 * @returns a small decorative drawing; the word itself always stands beside it
 */
export function severityIcon(severity: FindingSeverity): Html {
  return icon(severity, SEVERITY_SHAPES[severity]);
}

/** Name of the style for each judgement. */
export const CLASSES: Readonly<Record<JudgementWord, string>> = {
  sound: "sound",
  "sound with conditions": "conditional",
  "change it": "change",
  "beyond this method": "beyond",
};

const JUDGEMENT_OF_MARK: Readonly<Record<Mark, JudgementWord>> = {
  pass: "sound",
  conditions: "sound with conditions",
  fail: "change it",
  untold: "beyond this method",
};

/** Name of the style for each mark: a pass looks as a sound judgement does. */
export const MARK_CLASSES: Readonly<Record<Mark, string>> = {
  pass: CLASSES.sound,
  conditions: CLASSES["sound with conditions"],
  fail: CLASSES["change it"],
  untold: CLASSES["beyond this method"],
};

const TRIANGLE = '<path d="M10 2L19 18H1z"/><path d="M10 8v5M10 14.5v1.6" class="cut"/>';
const OPEN_RING = '<circle cx="10" cy="10" r="7.5" class="ring"/>';

const JUDGEMENT_SHAPES: Readonly<Record<JudgementWord, string>> = {
  sound: '<circle cx="10" cy="10" r="8.5"/><path d="M6 10.5l3 3 5.5-6.5" class="cut"/>',
  "sound with conditions": `${OPEN_RING}<path d="M10 2.5a7.5 7.5 0 0 0 0 15z"/>`,
  "change it": TRIANGLE,
  "beyond this method": '<path d="M10 1.8L18.2 10L10 18.2L1.8 10z" class="ring"/>',
};

const SEVERITY_SHAPES: Readonly<Record<FindingSeverity, string>> = {
  fault: TRIANGLE,
  caution: '<path d="M10 1.8L18.2 10L10 18.2L1.8 10z"/>',
  note: OPEN_RING,
};

function icon(name: string, shape: string): Html {
  return markup(
    `<svg class="sign ${name}" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">${shape}</svg>`,
  );
}
