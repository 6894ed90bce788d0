import type { Peak } from "./moisture-result.ts";
import type { MonthName, WarmSide } from "./places.ts";
import type { JudgementWord, VerdictWord } from "./words.ts";

/** Position of the vapour layer in a cell of the placement study; the outer side is outdoors, a void or a room. */
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
  /** The layer that is moved, and its sd [m]; null where the build-up is left out. */
  layer: { name: string; sd: number; added: boolean } | null;
  /** Why the build-up is left out; null where it is not. */
  leftOut: string | null;
  /** The positions, in the order of the cells, in words, and whether the file has the layer there. */
  positions: { position: PlacementPosition; words: string; isDrawn: boolean }[];
  rows: PlacementRow[];
  /** The result of the grid in one sentence; null where the build-up is left out. */
  message: string | null;
}

/** One climate and use of the placement study. */
export interface PlacementRow {
  climate: string;
  use: "heated" | "cooled" | "unheated";
  /** The room's rules in words. */
  temperatureRule: string;
  humidityRule: string;
  /** The side that vapour comes from, and its name: a room's, or "outdoors"; null where the row has no cells. */
  warmSide: WarmSide | null;
  warmSideName: string | null;
  /** Why the row has no cells: the room is impossible there, or the same as in the row before; null otherwise. */
  leftOut: string | null;
  cells: PlacementCell[];
}

/** The result of the build-up with the vapour layer in one position. */
export interface PlacementCell {
  position: PlacementPosition;
  judgement: JudgementWord;
  /** Null, like the figures below, where the case is beyond the method. */
  verdict: VerdictWord | null;
  peak: Peak | null;
  /** [kg/m²] */
  carriedOver: number | null;
  /** Least (temperature of the layer − dew point of the air on the warm side) over the year [K]; null without a layer. */
  dewPointMargin: number | null;
  dewPointMarginMonth: MonthName | null;
}
