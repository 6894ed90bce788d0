import type { MonthName, SectionId, SlicePart } from "./places.ts";
import type { VerdictWord } from "./words.ts";

/** Maximum accumulation at a month's end, and its month, null when dry. */
export interface Peak {
  /** [kg/m²] */
  amount: number;
  month: MonthName | null;
}

/** Result of the year: verdict, maximum accumulation, residual moisture [kg/m²], the month by which all is gone. */
export interface YearSummary {
  verdict: VerdictWord;
  peak: Peak;
  /** [kg/m²] */
  carriedOver: number;
  dryBy: MonthName | null;
}

/** The moisture side: the result of the governing section, and every section. */
export interface MoistureResult extends YearSummary {
  /** Name of the governing section. */
  section: string;
  /** The governing section, one of `sections`: worst verdict, then most residual moisture, then highest peak. */
  governing: SectionResult;
  /** Subtracted from the outer temperature in the profile, for a clear sky [K]; 0 without. */
  skyOffset: number;
  sections: SectionResult[];
}

/** One section, with its twelve months. Amounts are per m² of its own area. */
export interface SectionResult extends YearSummary {
  /** Its index among the sections of the build-up, from 0. */
  index: number;
  /** Its heat-flow path; `name` is its name in words. */
  id: SectionId;
  name: string;
  /** [–] */
  share: number;
  startMonth: MonthName | null;
  /** Drying ignored by the standard's monthly step [kg/m²]. */
  writtenOff: number;
  withinMonth: YearSummary;
  /** The repeated year: number of years [a], level at the end of each [kg/m²] and growth [kg/m² a year]. */
  repeating: { settles: boolean; years: number; level: number; growthPerYear: number };
  /** The smallest margin to saturation over the year, psat − p [Pa], and the humidity there [–]; null when wet. */
  leastMargin: { node: number; month: MonthName; margin: number; relativeHumidity: number } | null;
  /** The critical month: that of most condensation per day or, when dry, of the smallest margin to saturation. */
  decidingMonth: MonthName;
  /** The slices of this section from the room outwards, each with R [m²·K/W] and sd [m]. */
  layers: {
    layer: number;
    name: string;
    /** The part of the layer: the framing in its place, a facing, or the layer itself. */
    part: SlicePart;
    material: string;
    resistance: number;
    sd: number;
    nodeAfter: number;
  }[];
  months: SectionMonth[];
}

/** One month of a section: the air on both sides [°C], [Pa], every node, and the nodes with water [kg/m²]. */
export interface SectionMonth {
  month: MonthName;
  /** [°C], [Pa] */
  outdoor: { temperature: number; vapourPressure: number };
  /** [°C], [Pa] */
  indoor: { temperature: number; vapourPressure: number };
  nodes: NodeState[];
  /** Gain over the month, and water held at its end [kg/m²]. */
  planes: { node: number; change: number; held: number }[];
}

/** A node in one month: place [m], temperature [°C], pressures [Pa]. */
export interface NodeState {
  /** Index from 0. */
  node: number;
  /** Index, from 0, of the layer that ends or is divided here; null at the room surface. */
  layer: number | null;
  /** Its name. */
  after: string | null;
  /** [m] from the room surface */
  depth: number;
  /** [m] */
  sd: number;
  /** [°C] */
  temperature: number;
  /** [Pa] */
  saturationPressure: number;
  /** [Pa] */
  vapourPressure: number;
}
