import type { VerdictWord } from "../result/types.ts";

/** The result of a year: amounts per area of a section [kg/m²], or in the plane per length [kg/m]. */
export interface WaterOfYear {
  verdict: VerdictWord;
  /** Month index 0 to 11; null when dry. */
  startMonth: number | null;
  /** Maximum accumulation at a month's end and its month; 0 and null when dry. */
  peak: number;
  peakMonth: number | null;
  /** Residual moisture after twelve months. */
  carriedOver: number;
  /** First month at whose end all water is gone until the year ends; null when dry or when water stays. */
  dryBy: number | null;
}

/** A year without water. */
export const NO_WATER: Readonly<WaterOfYear> = {
  verdict: "dry",
  startMonth: null,
  peak: 0,
  peakMonth: null,
  carriedOver: 0,
  dryBy: null,
};

/** One year of a section that begins at `startMonth`; its lists are in calendar order. */
export interface SectionYear extends WaterOfYear {
  /** Drying ignored by the standard's monthly step, which stops at zero [kg/m²]; 0 with drying within the month. */
  writtenOff: number;
  /** Index of the first month from the start in which drying was ignored, 0 to 11 by calendar; null without one. */
  firstWrittenOff: number | null;
  /** Water held at the month's end [kg/m²]: one list of nodes for each calendar month, as in the next two. */
  held: Float64Array[];
  /** Change over the month [kg/m²]. */
  change: Float64Array[];
  /** Vapour pressure [Pa]. */
  pressure: Float64Array[];
}

/** How the repeated year develops. */
export interface RepeatingYear {
  settles: boolean;
  /** Years until its water no longer changes, or until it clearly grows [a]. */
  years: number;
  /** Water left at the end of each repeated year [kg/m²]. */
  level: number;
  /** Growth of the water [kg/m² a year]. */
  growthPerYear: number;
}
