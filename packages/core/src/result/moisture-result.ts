import type { MonthName, SectionId, SlicePart } from "./places.ts";
import type { VerdictWord } from "./words.ts";

/** The greatest month-end total of held water, and its month; null when dry. */
export interface Peak {
  /** [kg/m²] */
  amount: number;
  month: MonthName | null;
}

/** What the year comes to: verdict, peak, water left after twelve months [kg/m²], the month by which all is gone. */
export interface YearSummary {
  verdict: VerdictWord;
  peak: Peak;
  /** [kg/m²] */
  carriedOver: number;
  dryBy: MonthName | null;
}

/** The moisture side: what the governing section comes to, and every section. */
export interface MoistureResult extends YearSummary {
  /** Name of the governing section. */
  section: string;
  /** The governing section, one of `sections`: worst verdict, then most carried over, then highest peak. */
  governing: SectionResult;
  /** Taken off the outer temperature in the profile, under a clear sky [K]; 0 without. */
  skyOffset: number;
  sections: SectionResult[];
}

/** One straight way through, with its twelve months. Amounts are per m² of its own area. */
export interface SectionResult extends YearSummary {
  /** Its place among the sections of the build-up, from 0. */
  index: number;
  /** Which way through it is; `name` is its name in words. */
  id: SectionId;
  name: string;
  /** [–] */
  share: number;
  startMonth: MonthName | null;
  /** Water written off by setting nodes to zero at month ends [kg/m²]. */
  writtenOff: number;
  withinMonth: YearSummary;
  /** The year repeated: how many [a], what is left at the end of each [kg/m²], and what each adds [kg/m² a year]. */
  repeating: { settles: boolean; years: number; level: number; growthPerYear: number };
  /** The least distance to saturation over the year, psat − p [Pa], and the humidity there [–]; null when wet. */
  leastMargin: { node: number; month: MonthName; margin: number; relativeHumidity: number } | null;
  /** The deciding month: the greatest change, or when dry the least distance to saturation. */
  decidingMonth: MonthName;
  /** Layers of this way through that were counted, with R [m²·K/W] and sd [m] each. */
  layers: {
    layer: number;
    name: string;
    /** Which part of the layer it is: the timber in its place, a facing, or the layer itself. */
    part: SlicePart;
    material: string;
    resistance: number;
    sd: number;
    nodeAfter: number;
  }[];
  months: SectionMonth[];
}

/** One month of a section: the air on both sides [°C], [Pa], every node, and the nodes where water comes or goes [kg/m²]. */
export interface SectionMonth {
  month: MonthName;
  /** [°C], [Pa] */
  outdoor: { temperature: number; vapourPressure: number };
  /** [°C], [Pa] */
  indoor: { temperature: number; vapourPressure: number };
  nodes: NodeState[];
  /** Gained over the month, and held at its end [kg/m²]. */
  planes: { node: number; change: number; held: number }[];
}

/** A node in one month: place [m], temperature [°C], pressures [Pa]. */
export interface NodeState {
  /** Index from 0. */
  node: number;
  /** Number of the layer (from 0) that ends or is cut here; null at the room surface. */
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
