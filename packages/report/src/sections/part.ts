import type { BuildUpResult, ProjectResult } from "@warmside/core";
import type { Html } from "../html.ts";
import type { SectionView } from "../section-view.ts";

/** What every part of a build-up's pages is made from. */
export interface BuildUpPage {
  result: ProjectResult;
  buildUp: BuildUpResult;
  /** Counts from 1. */
  number: number;
  /** Prefix of every name in these pages. */
  id: string;
  /** The governing section; null when moisture was not worked out. */
  view: SectionView | null;
  /** How much is told of its variants. */
  comparison: "short" | "whole";
}

/** A part with its heading; numbered when the pages are put together. */
export interface Part {
  key: string;
  heading: string;
  body: Html;
}
