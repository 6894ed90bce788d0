import type { FindingCode, FindingFigures } from "./finding-figures/finding-figures.ts";
import type { LayerResult } from "./layer-result.ts";
import type { Peak } from "./moisture-result.ts";
import type { LayerChange, RoomChange } from "./remedy-changes.ts";
import type { RemedyStep } from "./remedy-steps.ts";
import type { FindingSeverity, JudgementWord, VerdictWord } from "./words.ts";

/** A finding of one code. */
interface FindingOf<Code extends FindingCode> {
  /** `build-up-slug/code`, with `/section` or a number when one code occurs twice. */
  id: string;
  code: Code;
  severity: FindingSeverity;
  /** The finding in one sentence that can stand alone. */
  short: string;
  /** That, and what follows it, in plain words with its figures. */
  message: string;
  /** What to do, or what to ask; null where nothing follows. */
  advice: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
  /** The data behind the words. */
  figures: FindingFigures[Code];
}

/** One result worth reporting, with its figures and what to do; the code determines the figures. */
export type Finding<Code extends FindingCode = FindingCode> = Code extends FindingCode ? FindingOf<Code> : never;

/** The judgement with its reasons. */
export interface Judgement {
  word: JudgementWord;
  /** Ids of findings. */
  reasons: string[];
  /** Id of the finding that decides; null where none speaks against the build-up. */
  decisive: string | null;
  /** Id of the finding by which it fails even by this mild method, where it is beyond it; null for all else. */
  failsEvenSo: string | null;
  /** Verdict of the year with drying within the month: told if no finding decides. */
  verdict: VerdictWord;
  /** The answer in one sentence, and with what follows it. */
  short: string;
  message: string;
  /** Ids of the findings that it rests on, and their advice in words, each once; none unless it is sound with conditions. */
  conditionsFrom: string[];
  conditions: string[];
}

/** A change that was calculated to change the judgement or to meet the target, with its result. */
export interface Remedy {
  /** What is done: one change, or two that go together; and in words. */
  does: readonly RemedyStep[];
  change: string;
  judgement: JudgementWord;
  verdict: VerdictWord;
  /** [W/(m²·K)] */
  transmittance: number;
  peak: Peak;
  /** Thickness added on the room side and on the outer side [m]. */
  thicknessInside: number;
  /** [m] */
  thicknessOutside: number;
  /** The findings behind *sound with conditions*, and their messages; otherwise empty. */
  conditionFindings: Finding[];
  conditions: string[];
  /** What is done to the layers, in the language of variants; empty where the layers stay. */
  changes: LayerChange[];
  /** Keys of the build-up that are no longer stated. */
  removes: readonly "leak"[];
  /** What is done to a room; null where none is changed. */
  roomChange: RoomChange | null;
  /** The changed build-up's layers. */
  layers: LayerResult[];
  /** Materials that it adds, with the values used. */
  materials: RemedyMaterial[];
}

/** A material that a remedy adds, with the values used. */
export interface RemedyMaterial {
  name: string;
  /** [W/(m·K)]; null for a sheet */
  conductivity: number | null;
  /** μ, dry [–]; null for a sheet */
  vapourResistanceFactor: number | null;
  /** [m]; null where μ and the thickness give it */
  sd: number | null;
}
