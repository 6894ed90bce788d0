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
  /** That sentence and those after it, in plain words with figures. */
  message: string;
  /** What to do, or what to ask for; null where nothing is needed. */
  advice: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
  /** The data behind the words. */
  figures: FindingFigures[Code];
}

/** A finding, with the figures behind it and advice; its code determines its figures. */
export type Finding<Code extends FindingCode = FindingCode> = Code extends FindingCode ? FindingOf<Code> : never;

/** The judgement with its reasons. */
export interface Judgement {
  word: JudgementWord;
  /** Ids of findings. */
  reasons: string[];
  /** Id of the finding that decides; null where none counts against the build-up. */
  decisive: string | null;
  /** Where it is beyond the method, id of a finding that fails it even so; otherwise null. */
  failsEvenSo: string | null;
  /** Verdict of the year with drying within the month, shown where no finding decides. */
  verdict: VerdictWord;
  /** The answer in one sentence, and in full. */
  short: string;
  message: string;
  /** Ids of the findings that make conditions, and their advice, each once; empty unless sound with conditions. */
  conditionsFrom: string[];
  conditions: string[];
}

/** A change that improves the judgement or meets the target, with its calculated result. */
export interface Remedy {
  /** The steps: one change, or two together; and in words. */
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
  /** For *sound with conditions*, the findings that make the conditions, and their messages; otherwise empty. */
  conditionFindings: Finding[];
  conditions: string[];
  /** The changes of the layers, in the form of variants; empty where the layers stay. */
  changes: LayerChange[];
  /** Keys of the build-up that are no longer stated. */
  removes: readonly "leak"[];
  /** The change of a room; null without one. */
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
