import type { Taping } from "../../project/types.ts";
import type { MonthName, Place } from "../places.ts";
import type { ChannelResult } from "../plane-result.ts";
import type { VerdictWord } from "../words.ts";
import type { LimitReason, WaterLevel } from "./water.ts";

/** Water in the strip of 50 mm that holds most, compared with its limit: amounts in kg/m². */
export interface StripFigures {
  level: WaterLevel;
  verdict: VerdictWord;
  /** Maximum accumulation over the whole build-up, and in the strip [kg/m²]. */
  mean: number;
  /** [kg/m²] */
  strip: number;
  /** Null where it stays dry, as are the figures below. */
  month: MonthName | null;
  dryBy: MonthName | null;
  place: Place | null;
  /** [kg/m²] */
  limit: number | null;
  limitBy: LimitReason | null;
  /** Yearly growth [kg/m² a year]: 0 where the water settles, null where all of it dries. */
  growthPerYear: number | null;
  /** [a] */
  yearsToGather: number | null;
}

/** The result with the joints in another state. */
export interface OtherJoints {
  verdict: VerdictWord;
  /** Maximum accumulation in the strip [kg/m²]. */
  strip: number;
}

/** Figures of findings in the plane, by code. */
export interface PlaneFindings {
  "interrupted-layer": StripFigures & {
    framing: string;
    /** The tight layers that end at the framing, from 0. */
    layers: number[];
    /** Gap beside the framing [m] and tape over it, as calculated, and whether the file states them. */
    gap: number;
    taped: Taping;
    isSaid: { gap: boolean; taped: boolean };
    withTape: OtherJoints | null;
    /** The result with a gap, and that gap [m]. */
    withGap: (OtherJoints & { gap: number }) | null;
  };
  "plane-too-wet": Record<string, never>;
  "water-at-channel": StripFigures & { framing: string };
  "channel-in-the-plane": ChannelResult & {
    framing: string;
    /** U between the channels [W/(m²·K)]. */
    clearTransmittance: number;
  };
}
