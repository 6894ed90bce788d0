import type { Peak } from "./moisture-result.ts";
import type { MonthName, WarmSide } from "./places.ts";
import type { VerdictWord } from "./words.ts";

/** The vapour layer: which layer it is, on which side it lies, and its margin to the dew point. */
export interface VapourLayerResult {
  present: boolean;
  /** 0-based layer indices. */
  layers: number[];
  /** [m] */
  sd: number | null;
  /** The side that vapour comes from over the year, and its name: a room's, or "outdoors"; null for neither. */
  warmSide: WarmSide;
  warmSideName: string | null;
  onWarmSide: boolean | null;
  /** Count of months. */
  monthsOnWarmSide: number | null;
  /** The vapour drive month by month: the side that vapour comes from, and the pressure difference [Pa]. */
  drive: { month: MonthName; from: WarmSide; pressure: number }[];
  /** [–] */
  resistanceShareWarmSide: number | null;
  /** Least (temperature of warm face − dew point of the air on that side) over the year [K]. */
  dewPointMargin: number | null;
  dewPointMarginMonth: MonthName | null;
  /** [–] */
  sdRatioWarmToCold: number | null;
  /** A tighter layer on the cold side: indices of its layers from 0, sd [m]. */
  outerSkin: { layers: number[]; sd: number; name: string } | null;
  /** Every candidate, tightest first: indices of its layers from 0, sd [m]. */
  candidates: { layers: number[]; sd: number; side: "warm" | "cold" | "both" | "neither" }[];
  /** The plain answer in a sentence. */
  message: string;
}

/** The changed assumption of a sensitivity run. */
export type SensitivityName =
  | "one in ten colder year"
  | "one in ten warmer year"
  | "heated every day"
  | "unfavourable vapour resistance"
  | "vapour layer ten times more open"
  | "no vapour layer"
  | "wetter room";

/** The same build-up with one assumption changed. */
export interface SensitivityResult {
  name: SensitivityName;
  verdict: VerdictWord;
  withinMonthVerdict: VerdictWord;
  peak: Peak;
  /** [kg/m²] */
  carriedOver: number;
  /** True when the verdict is worse than the reported one, or the peak is higher by more than a trace. */
  worse: boolean;
  /** One plain sentence. */
  message: string;
}
