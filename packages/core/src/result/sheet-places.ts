import type { JudgementWord, VerdictWord } from "./words.ts";

/** The results of a vapour sheet at every place between the layers of a build-up. */
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

/** The assessment of one place of the sheet. */
export interface SheetPlace {
  /** Index at which the sheet would stand among the layers without it; null where it is left out. */
  at: number | null;
  /** Whether the build-up has the sheet there. */
  isDrawn: boolean;
  /** The place in words: "between gypsum plasterboard and mineral wool slab", "left out". */
  words: string;
  judgement: JudgementWord;
  /** Verdict behind the judgement, of the year with drying within the month; null beyond the method. */
  verdict: VerdictWord | null;
  /** Maximum accumulation at a month's end [kg/m²]. */
  peak: number;
}
