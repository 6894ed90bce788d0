import type { Peak } from "./moisture-result.ts";
import type { FindingSeverity, JudgementWord, VerdictWord } from "./words.ts";

/** One thing worth telling, with the figures behind it and what to do. */
export interface Finding {
  /** `build-up-slug/code`, with `/section` or a number when one code occurs twice. */
  id: string;
  code: string;
  severity: FindingSeverity;
  /** What is so, in plain words with its figures. */
  message: string;
  /** What to do, or what to ask; null where nothing follows. */
  advice: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
  figures: Record<string, number | string | null>;
}

/** The judgement with its reasons. */
export interface Judgement {
  word: JudgementWord;
  /** Ids of findings. */
  reasons: string[];
  /** One plain sentence: the answer and its first reason. */
  message: string;
  /** What the answer rests on and does not cover, in sentences. */
  conditions: string[];
}

/** A change that was computed to turn the judgement or to meet the target, with its result. */
export interface Remedy {
  change: string;
  judgement: JudgementWord;
  verdict: VerdictWord;
  transmittance: number;
  peak: Peak;
  /** Thickness added on the room side and on the outer side [m]. */
  thicknessInside: number;
  thicknessOutside: number;
  /** What a *sound with conditions* rests on: the messages of the findings that make the conditions; else empty. */
  conditions: string[];
  /** Materials that it brings in, with the values used. */
  materials: RemedyMaterial[];
}

/** A material that a remedy brings in, with the values that it was worked out with. */
export interface RemedyMaterial {
  name: string;
  /** [W/(m·K)]; null for a sheet */
  conductivity: number | null;
  /** μ, dry [–]; null for a sheet */
  vapourResistanceFactor: number | null;
  /** [m]; null where μ and the thickness give it */
  sd: number | null;
}
