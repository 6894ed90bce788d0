import type { BuildUp } from "../../project/types.ts";
import type { FindingCode } from "../../result/types.ts";
import type { RuledFindingOf } from "../types.ts";

/** The parts of a build-up that words may use: names and kind. The result of a build-up has them as well. */
export interface Named extends Pick<BuildUp, "element" | "room" | "faces"> {
  layers: readonly { name: string }[];
}

/** The words of a finding. */
export interface Said {
  /** The finding in one sentence that can stand alone. */
  says: string;
  /** Sentences that follow it; empty ones are left out. */
  more?: readonly string[];
  /** What to do, or what to ask for; null where nothing is needed. */
  advice?: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
}

/** Words a finding of one code. */
export type Wording<Code extends FindingCode> = (ruled: RuledFindingOf<Code>, buildUp: Named) => Said;

/** Wordings of one subject, by code. */
export type Wordings<Codes extends FindingCode> = { readonly [Code in Codes]: Wording<Code> };
