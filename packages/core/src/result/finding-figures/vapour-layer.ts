import type { Side } from "../places.ts";
import type { VerdictWord } from "../words.ts";
import type { WaterLevel } from "./water.ts";

/** The water with the vapour layer more open or left out: amounts in kg/m². */
export interface WaterWithout {
  verdict: VerdictWord;
  level: WaterLevel;
  /** [kg/m²] */
  amount: number;
  /** [kg/m²]; null without water. */
  limit: number | null;
  /** [a] */
  yearsToGather: number | null;
}

/** A tight layer that a finding is about. */
export interface TightLayerFigures {
  name: string;
  /** Layer indices, from 0. */
  layers: readonly number[];
  /** [m] */
  sd: number;
}

/** The figures for the design's dependence on its vapour layer. */
export interface DependenceFigures extends TightLayerFigures {
  /** The usual share of gaps [–] and the water they bring [kg/m²]; null where not calculated. */
  usualShare: number | null;
  /** [kg/m²] */
  usualAmount: number | null;
  whenOpened: WaterWithout;
  /** Null where it was not calculated, which is never so in a result. */
  whenLeftOut: WaterWithout | null;
  /** What to seal: joints of boards, or laps of a sheet. */
  joints: "boards" | "sheet";
}

/** Figures of findings on vapour layers and other tight layers, by code. */
export interface VapourLayerFindings {
  "vapour-layer-cold-side": TightLayerFigures & {
    warmSide: Side;
    /** Number of months with 80 % relative humidity or more at its warm face. */
    dampMonths: number;
  };
  "no-vapour-layer-warm-side": {
    /** Whether masonry or logs that rain may wet lie outermost: a tighter room side would hold the rain in. */
    holdsRain: boolean;
    warmSide: Side;
    /** The layer there that is too open to be a vapour layer; null without any. */
    tooOpen: TightLayerFigures | null;
  };
  "depends-on-vapour-layer": DependenceFigures;
  "forgives-gaps": DependenceFigures;
  "tight-outer-skin": TightLayerFigures & {
    level: WaterLevel;
    /** [kg/m²] */
    amount: number;
    /** [kg/m² a year] */
    growthPerYear: number | null;
    /** [a] */
    yearsToGather: number | null;
    /** A weather skin whose tabulated sd is under 10 m: sheets as laid are tighter than the polymer. */
    countsAsTight: boolean;
    isWeatherSkinOfRoof: boolean;
    /** Whether plastic foam lies against it. */
    isOnFoam: boolean;
  };
  "two-tight-layers": {
    /** Indices, from 0, of the two, and of the layers between them that can hold water. */
    inner: readonly number[];
    /** Indices from 0. */
    outer: readonly number[];
    /** Indices from 0. */
    between: readonly number[];
    /** [m] */
    sdInner: number;
    /** [m] */
    sdOuter: number;
    /** Whether stated water does not dry within a year. */
    neverDries: boolean;
  };
  "tight-sheet-under-floor": {
    /** Index of the sheet, from 0, and of the layers on its room side that can hold water. */
    layer: number;
    /** Index from 0. */
    above: readonly number[];
  };
}
