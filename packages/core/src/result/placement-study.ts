import type { Peak } from "./moisture-result.ts";
import type { MonthName, WarmSide } from "./places.ts";
import type { JudgementWord, VerdictWord } from "./words.ts";

/** Where the vapour layer lies in a cell of the placement study; the far side is outdoors, a void or another room. */
export type PlacementPosition =
  | "towards the room"
  | "within the insulation"
  | "towards the outer side"
  | "none"
  | "both faces";

/** The vapour layer of every build-up in each sensible position, in several climates, heated and cooled. */
export interface PlacementStudy {
  /** The project's own climate first. */
  climates: { name: string; kind: string; severity: string }[];
  buildUps: PlacementOfBuildUp[];
}

/** The placement study of one build-up. */
export interface PlacementOfBuildUp {
  name: string;
  slug: string;
  /** The layer that is moved about, and its sd [m]; null where the build-up is left out. */
  layer: { name: string; sd: number; added: boolean } | null;
  /** Why the build-up is left out; null where it is not. */
  leftOut: string | null;
  /** The positions, in the order of the cells, with their words and whether the file draws it so. */
  positions: { position: PlacementPosition; words: string; isDrawn: boolean }[];
  rows: PlacementRow[];
  /** One sentence that says what the grid shows; null where the build-up is left out. */
  message: string | null;
}

/** One climate and use of the placement study. */
export interface PlacementRow {
  climate: string;
  use: "heated" | "cooled" | "unheated";
  /** The room's rules in words. */
  temperatureRule: string;
  humidityRule: string;
  /** The side that vapour is pushed from, and its name: a room's, or "outdoors"; null where the row has no cells. */
  warmSide: WarmSide | null;
  warmSideName: string | null;
  /** Why the row has no cells: a room that cannot exist there, or that is the same as in the row before; null otherwise. */
  leftOut: string | null;
  cells: PlacementCell[];
}

/** What the build-up comes to with the vapour layer in one position. */
export interface PlacementCell {
  position: PlacementPosition;
  judgement: JudgementWord;
  /** Null where the case is beyond the method, as the figures beside it are. */
  verdict: VerdictWord | null;
  peak: Peak | null;
  /** [kg/m²] */
  carriedOver: number | null;
  /** Least (temperature of the layer − dew point of the air on the warm side) over the year [K]; null without a layer. */
  dewPointMargin: number | null;
  dewPointMarginMonth: MonthName | null;
}
