import type { CornerPosts, Taping } from "../project/types.ts";
import type { MonthName } from "./places.ts";
import type { PlanePicture } from "./plane-picture.ts";
import type { VerdictWord } from "./words.ts";

/** Water in the strip of 50 mm that holds most [kg/m²]. */
export interface StripResult {
  /** Greatest month-end amount, and its month [kg/m²]. */
  amount: number;
  month: MonthName;
  /** Middle of the strip from the middle of a framing member [m]. */
  middle: number;
  /** Left after twelve months, and what the next year adds [kg/m²]. */
  left: number;
  /** [kg/m² a year] */
  growthPerYear: number;
}

/** A year of vapour in the plane. */
export interface PlaneRunResult {
  /** Gap beside the framing [m], and the tape over it. */
  gap: number;
  taped: Taping;
  verdict: VerdictWord;
  /** Greatest month-end amount over the whole build-up [kg/m²]; month null where it stays dry. */
  peak: { amount: number; month: MonthName | null };
  /** [kg/m²] */
  carriedOver: number;
  dryBy: MonthName | null;
  /** Null where it stays dry. */
  strip: StripResult | null;
  /** Water at every month's end [kg/m²], over the whole build-up and in its worst strip. */
  months: { month: MonthName; mean: number; strip: number }[];
}

/** Channels in the plane: U [W/(m²·K)] without corrections and its bounds, fRsi [–] over the channel and as a whole. */
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

/** What the plane tells of a build-up. */
export interface PlaneResult {
  framing: string;
  /** Tight layers that the framing interrupts, from 0. */
  interrupted: number[];
  /** What the file says of their joints. */
  isSaid: { gap: boolean; taped: boolean };
  asBuilt: PlaneRunResult;
  /** With tape over the framing, and with a gap of 2 mm, told beside it; null where that is no question. */
  withTape: PlaneRunResult | null;
  withGap: PlaneRunResult | null;
  channel: ChannelResult | null;
  /** In the month with most water in a strip, or January. */
  picture: PlanePicture;
  pictureMonth: MonthName;
}

/** A measure of a junction that the file does not say, with the unfavourable value that it was run with. */
export type AssumedMeasure =
  | { key: "posts"; value: CornerPosts }
  /** Timbers [–]. */
  | { key: "plates" | "trimmers"; value: number }
  /** [m] */
  | { key: "rim" | "blocking" | "set back"; value: number }
  /** [W/(m·K)] */
  | { key: "conductivity"; value: number };

/** A change that makes a junction warmer; measures in m. */
export type JunctionChange =
  | { kind: "posts"; posts: CornerPosts }
  | { kind: "rim" | "blocking" | "set back"; measure: number }
  | { kind: "insulation outside" | "insulation in the reveal"; thickness: number };

/** A junction of build-ups, worked out in the plane. */
export interface JunctionResult {
  name: string;
  kind: "outer corner" | "floor edge" | "roof edge" | "window side";
  /** Slugs of the build-ups that meet, the wall first. */
  buildUps: string[];
  /** What is so in a sentence, and in full with what follows; what to do; the source. */
  short: string;
  message: string;
  advice: string | null;
  source: string;
  /** Why it is not worked out; null where it is. */
  beyond: "other rooms" | "not outdoors" | "metal" | null;
  assumed: AssumedMeasure[];
  /** The figures; null where it is not worked out. */
  figures: {
    /** Lowest fRsi of the room's surfaces [–]. */
    temperatureFactor: number;
    /** The factor [–] that keeps mould away in the critical month; null where no month asks. */
    required: { factor: number; month: MonthName } | null;
    meetsMould: boolean | null;
    /** ψ by outer dimensions [W/(m·K)], and how far the bounds lie from it. */
    linearTransmittance: number;
    /** [–] */
    uncertainty: number;
    /** What other framing or a thermal break would do: the lowest fRsi with each [–]. */
    alternatives: { change: JunctionChange; temperatureFactor: number; meetsMould: boolean | null }[];
    picture: PlanePicture;
  } | null;
}
