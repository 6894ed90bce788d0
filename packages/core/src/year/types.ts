import type { VerdictWord } from "../result/types.ts";

/** Totals of the water in a year: amounts per area of a section [kg/m²], in the plane per length [kg/m]. */
export interface WaterOfYear {
  verdict: VerdictWord;
  /** Month index 0 to 11; null when dry. */
  startMonth: number | null;
  /** Greatest month-end total and its month; 0 and null when dry. */
  peak: number;
  peakMonth: number | null;
  /** Total after twelve months. */
  carriedOver: number;
  /** First month at whose end all water is gone for good; null if dry, or if some stays. */
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

/** One year of a section, months in calendar order of the year that begins at `startMonth`. */
export interface SectionYear extends WaterOfYear {
  /** Water written off by setting nodes to zero [kg/m²]; 0 with drying within the month. */
  writtenOff: number;
  /** Index from 0 of the first month, from the start on, in which anything was written off; null when nothing was. */
  firstWrittenOff: number | null;
  /** Water held at month end and change over the month [kg/m²], vapour pressure [Pa]: one list of nodes a calendar month. */
  held: Float64Array[];
  /** [kg/m²] */
  change: Float64Array[];
  /** [Pa] */
  pressure: Float64Array[];
}

/** How the water develops when the year is repeated. */
export interface RepeatingYear {
  settles: boolean;
  /** Years until it repeats itself [a] (or until it is clear that it grows). */
  years: number;
  /** Water left at the end of each repeated year [kg/m²]. */
  level: number;
  /** [kg/m² a year] */
  growthPerYear: number;
}
