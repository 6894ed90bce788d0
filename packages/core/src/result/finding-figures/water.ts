import type { MonthName, Place, SectionId } from "../places.ts";
import type { VerdictWord } from "../words.ts";

/** Level of an amount of water, relative to the limits of the layers it lies on. */
export type WaterLevel = "none" | "trace" | "some" | "too much" | "stays";

/** Why a limit on an amount of water applies. */
export type LimitReason =
  | { kind: "anywhere" }
  /** A share of the dry mass [–] of a material that takes up water. */
  | { kind: "dry mass"; share: number; material: string }
  /** Foam bonded to a skin: a share of its volume [–]. */
  | { kind: "bonded foam"; share: number }
  | { kind: "smooth upright surface" }
  | { kind: "surface that takes up no water" };

/** The year of the water: the reported one, or a 1-in-10 year. */
export type YearOfWater = "reported" | "one in ten colder year" | "one in ten warmer year";

/** Water in a zone, compared with its limit: amounts in kg/m². */
export interface WaterFigures {
  year: YearOfWater;
  /** [kg/m²] */
  amount: number;
  /** [kg/m²] */
  limit: number;
  limitBy: LimitReason;
  month: MonthName;
  section: SectionId;
  place: Place;
  /** Yearly growth [kg/m² a year]: 0 where the water settles at a level, null where all of it dries. */
  growthPerYear: number | null;
  /** Years until the residual moisture reaches 200 g/m² [a]; null where it does not grow. */
  yearsToGather: number | null;
}

/** Figures of findings on interstitial condensation, by code. */
export interface WaterFindings {
  "stays-dry": {
    /** [kg/m²] */
    amountInColderYear: number;
    /** Null where no colder year was calculated. */
    levelInColderYear: WaterLevel | null;
  };
  "condensation-too-much": WaterFigures & {
    /** True where the finding before it is about the same water. */
    isSameWater: boolean;
  };
  "condensation-dries-out": WaterFigures & {
    /** Whether drops may run down a smooth upright surface. */
    runsDown: boolean;
    /** Whether a sheet or board on the warm side holds the vapour back; masonry and insulation have no laps to seal. */
    restsOnLayer: boolean;
  };
  "stays-wet": WaterFigures & {
    /** Whether layers above the ground's membrane take it up, where nothing rots. */
    isAboveGroundMembrane: boolean;
  };
  trace: WaterFigures & {
    /** The material it lies on, where even a trace matters. */
    sitsOn: "steel" | "gypsum paper" | null;
  };
  /**
   * The standard does not pass it, but the judgement still may: amount [kg/m²], growth [kg/m² a year] and the years
   * until it reaches 200 g/m² [a].
   */
  "standard-not-passed": {
    amount: number;
    growthPerYear: number | null;
    yearsToGather: number | null;
    /** Whether the year with drying within the month ends dry; if not, water without growth dries in mean years. */
    driesWithinMonth: boolean;
  };
  /** Foam bonded to a skin: index of its layer, from 0; smallest margin of the inner face to the dew point [K]. */
  "bonded-foam": { layer: number; margin: number };
  /** [kg/m²] a year, in mean years */
  "bonded-foam-grows": { layer: number; growthPerYear: number };
  "two-verdicts": { section: SectionId; standard: VerdictWord; insideTheMonth: VerdictWord };
  "framing-worse": {
    governing: SectionId;
    /** Maximum accumulation through and between the framing [kg/m²]. */
    peak: number;
    /** [kg/m²] */
    peakBetween: number;
  };
}
