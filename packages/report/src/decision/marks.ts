import { type BuildUpResult, meetsTarget } from "@warmside/core";

/** One of the three marks of a build-up. */
export type Mark = "pass" | "conditions" | "fail" | "untold";

/** The marks of a build-up: moisture inside, inside surface, U-value. */
export interface Marks {
  moisture: Mark;
  surface: Mark;
  /** Null without a target. */
  heat: Mark | null;
}

/**
 * The three marks of a build-up.
 *
 * @param buildUp - a build-up of the result
 * @returns moisture as judged without the surface's findings, the surface against its required factor, U against target
 */
export function marksOf(buildUp: BuildUpResult): Marks {
  return { moisture: moistureMark(buildUp), surface: surfaceMark(buildUp), heat: heatMark(buildUp) };
}

/**
 * The worst of the marks: the colour of the row.
 *
 * @param marks - the three
 * @returns fail before untold before conditions before pass
 * @example worstOf({ moisture: "pass", surface: "pass", heat: "fail" }) // "fail"
 */
export function worstOf({ moisture, surface, heat }: Marks): Mark {
  const all = [moisture, surface, heat];
  return ORDER.find((mark) => all.includes(mark)) ?? "pass";
}

const ORDER: readonly Mark[] = ["fail", "untold", "conditions", "pass"];

/**
 * The word beside the mark of the inside surface.
 *
 * @param mark - of the surface
 * @param required - the factor required [–]; null where none is
 * @returns the word; null where nothing is required and nothing speaks against it, as then nothing is met
 * @example surfaceWord("pass", null) // null
 */
export function surfaceWord(mark: Mark, required: number | null): string | null {
  return required === null && mark === "pass" ? null : SURFACE_WORDS[mark];
}

const SURFACE_WORDS: Readonly<Record<Mark, string>> = {
  pass: "met",
  conditions: "on conditions",
  fail: "missed",
  untold: "not available",
};

function moistureMark({ judgement, findings }: BuildUpResult): Mark {
  if (judgement.word === "beyond this method") return "untold";
  if (judgement.word === "sound") return "pass";
  const reasons = findings.filter(({ id }) => judgement.reasons.includes(id));
  if (reasons.length > 0 && reasons.every(({ code }) => ofSurface(code))) return "pass";
  if (judgement.word === "sound with conditions") return "conditions";
  return reasons.some(({ code, severity }) => !ofSurface(code) && severity === "fault") ? "fail" : mildest(reasons);
}

/** Whether a build-up must be changed because of its surface only. */
function mildest(reasons: readonly { code: string; severity: string }[]): Mark {
  return reasons.some(({ code, severity }) => ofSurface(code) && severity === "fault") ? "conditions" : "fail";
}

function ofSurface(code: string): boolean {
  return code.startsWith("surface-") || code.startsWith("junction-");
}

function surfaceMark({ heat, findings, surface }: BuildUpResult): Mark {
  if (heat === null || surface === null) return "untold";
  const found = findings.filter(({ code }) => ofSurface(code));
  if (found.some(({ severity }) => severity === "fault")) return "fail";
  const { temperatureFactor, requiredTemperatureFactor: required } = heat;
  if (required !== null && !(temperatureFactor >= required)) return "fail";
  return found.some(({ severity }) => severity === "caution") ? "conditions" : "pass";
}

function heatMark({ heat, target }: BuildUpResult): Mark | null {
  if (target === null) return null;
  if (heat === null) return "untold";
  return meetsTarget(heat.transmittance, target) ? "pass" : "fail";
}
