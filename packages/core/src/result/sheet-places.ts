import type { JudgementWord, VerdictWord } from "./words.ts";

/** The vapour sheet of a build-up in every gap between its layers: what would come of each. */
export interface SheetPlaces {
  /** The build-up's own sheet, by its index among the layers; null where an ordinary one is tried. */
  own: number | null;
  /** Name and sd [m] of the sheet. */
  name: string;
  /** [m] */
  sd: number;
  /** Left out first, then from the room outwards. */
  places: SheetPlace[];
}

/** One place of the sheet, assessed. */
export interface SheetPlace {
  /** Index at which the sheet would stand among the layers without it; null where it is left out. */
  at: number | null;
  /** Whether the build-up is drawn so. */
  isDrawn: boolean;
  /** Where that is: "between gypsum plasterboard and mineral wool slab", "left out". */
  words: string;
  judgement: JudgementWord;
  /** What the judgement follows: the year with drying counted inside the month; null beyond the method. */
  verdict: VerdictWord | null;
  /** The most water at a month's end [kg/m²]. */
  peak: number;
}
