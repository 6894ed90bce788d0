import type { BuildUp } from "../../project/types.ts";
import type { FindingCode } from "../../result/types.ts";
import type { RuledFindingOf } from "../types.ts";

/** What words may take from the build-up: names, and what it is. The result of a build-up has it as well. */
export interface Named extends Pick<BuildUp, "element" | "room" | "faces"> {
  layers: readonly { name: string }[];
}

/** What a finding says. */
export interface Said {
  /** The finding in one sentence that can stand alone. */
  says: string;
  /** Sentences that follow it; empty ones are left out. */
  more?: readonly string[];
  /** What to do, or what to ask; null where nothing follows. */
  advice?: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
}

/** Words a finding of one code. */
export type Wording<Code extends FindingCode> = (ruled: RuledFindingOf<Code>, buildUp: Named) => Said;

/** Wordings of one subject, by code. */
export type Wordings<Codes extends FindingCode> = { readonly [Code in Codes]: Wording<Code> };
