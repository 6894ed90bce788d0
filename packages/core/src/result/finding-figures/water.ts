import type { MonthName, Place, SectionId } from "../places.ts";
import type { VerdictWord } from "../words.ts";

/** How much water there is, by what it sits on. */
export type WaterLevel = "none" | "trace" | "some" | "too much" | "stays";

/** Why a limit of an amount of water applies. */
export type LimitReason =
  | { kind: "anywhere" }
  /** A share of the dry mass [–] of a material that takes up water. */
  | { kind: "dry mass"; share: number; material: string }
  /** Foam bonded to a skin: a share of its volume [–]. */
  | { kind: "bonded foam"; share: number }
  | { kind: "smooth upright surface" }
  | { kind: "surface that takes up no water" };

/** The year to which the water belongs: the reported one, or a harder one. */
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
  /** What a year leaves behind [kg/m² a year]: 0 where it settles at a level, null where all of it dries. */
  growthPerYear: number | null;
  /** Years until the remainder reaches 200 g/m² [a]; null if it does not grow. */
  yearsToGather: number | null;
}

/** Figures of findings of water inside a build-up, by code. */
export interface WaterFindings {
  "stays-dry": {
    /** [kg/m²] */
    amountInColderYear: number;
    /** Null where no colder year was run. */
    levelInColderYear: WaterLevel | null;
  };
  "condensation-too-much": WaterFigures & {
    /** True if the finding before it reports the same water. */
    isSameWater: boolean;
  };
  "condensation-dries-out": WaterFigures & {
    /** Whether drops may run down a smooth upright surface. */
    runsDown: boolean;
    /** Whether a sheet or board on the warm side holds the vapour back, and so must stay whole. */
    restsOnLayer: boolean;
  };
  "stays-wet": WaterFigures & {
    /** Whether layers above the ground's membrane absorb it, where nothing can rot. */
    isAboveGroundMembrane: boolean;
  };
  trace: WaterFigures & {
    /** The material below it, if even a trace is worth reporting. */
    sitsOn: "steel" | "gypsum paper" | null;
  };
  /**
   * The standard does not pass it, and the judgement still may: amount [kg/m²], growth [kg/m² a year] and the years until
   * it makes 200 g/m² [a].
   */
  "standard-not-passed": {
    amount: number;
    growthPerYear: number | null;
    yearsToGather: number | null;
    /** Whether the year with drying within the month ends dry; otherwise ordinary years clear what is not reported as growth. */
    driesWithinMonth: boolean;
  };
  /** Foam bonded to a skin, its layer by index from 0: least difference of its inner face to the room's dew point [K]. */
  "bonded-foam": { layer: number; margin: number };
  /** [kg/m²] a year, in mean years */
  "bonded-foam-grows": { layer: number; growthPerYear: number };
  "two-verdicts": { section: SectionId; standard: VerdictWord; insideTheMonth: VerdictWord };
  "framing-worse": {
    governing: SectionId;
    /** Most water in either [kg/m²]. */
    peak: number;
    /** [kg/m²] */
    peakBetween: number;
  };
}
