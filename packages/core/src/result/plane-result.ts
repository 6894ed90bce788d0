import type { CornerPosts, Taping } from "../project/types.ts";
import type { MonthName } from "./places.ts";
import type { PlanePicture } from "./plane-picture.ts";
import type { VerdictWord } from "./words.ts";

/** Water in the strip of 50 mm that holds most [kg/m²]. */
export interface StripResult {
  /** Maximum accumulation at a month's end [kg/m²], and its month. */
  amount: number;
  month: MonthName;
  /** Middle of the strip from the middle of a framing member [m]. */
  middle: number;
  /** Residual moisture after twelve months [kg/m²], and growth in the next year. */
  left: number;
  /** [kg/m² a year] */
  growthPerYear: number;
}

/** A year of vapour in the plane. */
export interface PlaneRunResult {
  /** Gap beside the framing [m], and tape over it. */
  gap: number;
  taped: Taping;
  verdict: VerdictWord;
  /** Maximum accumulation over the whole build-up [kg/m²]; month null where it stays dry. */
  peak: { amount: number; month: MonthName | null };
  /** [kg/m²] */
  carriedOver: number;
  dryBy: MonthName | null;
  /** Null where it stays dry. */
  strip: StripResult | null;
  /** Water at every month's end [kg/m²], over the whole build-up and in its worst strip. */
  months: { month: MonthName; mean: number; strip: number }[];
}

/** Channels in the plane: U without corrections, its bounds [W/(m²·K)]; fRsi at the channel and of the whole [–]. */
export interface ChannelResult {
  /** [W/(m²·K)] */
  transmittance: number;
  /** [W/(m²·K)] */
  lower: number;
  /** [W/(m²·K)] */
  upper: number;
  /** [–] */
  temperatureFactor: number;
  /** [–] */
  wholeTemperatureFactor: number;
}

/** The result of the plane for a build-up. */
export interface PlaneResult {
  framing: string;
  /** Indices, from 0, of the tight layers that the framing interrupts. */
  interrupted: number[];
  /** Whether the file states the gap and the tape of their joints. */
  isSaid: { gap: boolean; taped: boolean };
  asBuilt: PlaneRunResult;
  /** For comparison, with tape over the framing and with a gap of 2 mm; null where not applicable. */
  withTape: PlaneRunResult | null;
  withGap: PlaneRunResult | null;
  channel: ChannelResult | null;
  /** For the month with most water in a strip, or January. */
  picture: PlanePicture;
  pictureMonth: MonthName;
}

/** A dimension of a junction that the file does not state, with the unfavourable value assumed. */
export type AssumedMeasure =
  | { key: "posts"; value: CornerPosts }
  /** Timbers [–]. */
  | { key: "plates" | "trimmers"; value: number }
  /** [m] */
  | { key: "rim" | "blocking" | "set back"; value: number }
  /** [W/(m·K)] */
  | { key: "conductivity"; value: number };

/** A change that makes a junction warmer; dimensions in m. */
export type JunctionChange =
  | { kind: "posts"; posts: CornerPosts }
  | { kind: "rim" | "blocking" | "set back"; measure: number }
  | { kind: "insulation outside" | "insulation in the reveal"; thickness: number };

/** A junction of build-ups, calculated in the plane. */
export interface JunctionResult {
  name: string;
  kind: "outer corner" | "floor edge" | "roof edge" | "window side";
  /** Slugs of the build-ups that meet, the wall first. */
  buildUps: string[];
  /** The finding in one sentence and in full; the advice; the source. */
  short: string;
  message: string;
  advice: string | null;
  source: string;
  /** Why it is not calculated; null where it is. */
  beyond: "other rooms" | "not outdoors" | "metal" | null;
  assumed: AssumedMeasure[];
  /** The figures; null where it is not calculated. */
  figures: {
    /** Lowest fRsi of the room's surfaces [–]. */
    temperatureFactor: number;
    /** The factor [–] required against mould in the critical month; null where no month requires one. */
    required: { factor: number; month: MonthName } | null;
    meetsMould: boolean | null;
    /** ψ for external dimensions [W/(m·K)], and the distance of its bounds. */
    linearTransmittance: number;
    /** [–] */
    uncertainty: number;
    /** The effect of other framing or a thermal break: the lowest fRsi with each [–]. */
    alternatives: { change: JunctionChange; temperatureFactor: number; meetsMould: boolean | null }[];
    picture: PlanePicture;
  } | null;
}
