import type { BuildUpResult, ProjectResult } from "@warmside/core";
import type { Html } from "../html.ts";
import type { SectionView } from "../section-view.ts";

/** The input of every part of a build-up's annex. */
export interface AnnexOf {
  result: ProjectResult;
  buildUp: BuildUpResult;
  /** Counts from 1. */
  number: number;
  /** Prefix of every name in it. */
  id: string;
  /** The governing path; null when moisture was not worked out. */
  view: SectionView | null;
}

/** A part with its heading. */
export interface Part {
  heading: string;
  body: Html;
}
