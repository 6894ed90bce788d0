import type { GapsData, LeakData, TrappedWaterData, TwoSeasonData } from "../further-check-results.ts";
import type { MonthName } from "../places.ts";
import type { VerdictWord } from "../words.ts";
import type { NoFigures } from "./beyond-method.ts";

/** A year under another assumption: amounts in kg/m². */
export interface YearInShort {
  verdict: VerdictWord;
  /** [kg/m²] */
  peak: number;
  /** [kg/m²] */
  carriedOver: number;
}

/** Figures of findings on the checks beside the monthly method and on assumptions, by code. */
export interface CheckFindings {
  "air-leakage": Omit<LeakData, "months">;
  "gaps-in-vapour-layer": GapsData;
  /** `daysToDry` and the like; for water outside the counted layers, only its layer. */
  "trapped-water":
    | ({ isCounted: true } & Omit<TrappedWaterData, "held" | "heldElsewhere">)
    | { isCounted: false /** Index from 0. */; layer: number };
  "two-season-check": TwoSeasonData;
  "variable-resistance": {
    /** Indices from 0. */
    layers: readonly number[];
    verdict: VerdictWord;
    dryVerdict: VerdictWord;
    /** [kg/m²] */
    peak: number;
    peakMonth: MonthName | null;
    /** Count. */
    rounds: number;
    /** [–] */
    tolerance: number;
    converged: boolean;
  };
  /** Humidity class, counted from 1 to 5. */
  "humidity-needs-cooling-statement": { class: number };
  /** Fraction of saturation [–]. */
  "one-humidity-all-year": { humidity: number };
  "unfavourable-vapour-resistance": YearInShort & {
    /** The limit that is exceeded [kg/m²]; null where none is. */
    limitPassed: number | null;
  };
  /** `amount` includes the level at which water settles; `limit` is the limit for it [kg/m²]. */
  "sound-as-used": YearInShort & { amount: number; limit: number };
  "damp-ground-below": NoFigures;
}
