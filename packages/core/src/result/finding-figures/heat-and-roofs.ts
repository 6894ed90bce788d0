/** U and its target [W/(m²·K)]. */
export interface TargetFigures {
  /** [W/(m²·K)] */
  transmittance: number;
  /** [W/(m²·K)] */
  target: number;
  /** Without framing [W/(m²·K)]. */
  clearTransmittance: number;
}

/** What a cold flat roof lacks. */
export type RoofAirFault =
  | "no air"
  | "low"
  | "closed"
  | "one end"
  | "small openings"
  | "slight"
  | "openings not told"
  | "span too long";

/** Figures of findings on heat and on flat roofs, by code. */
export interface HeatFindings {
  "target-met": TargetFigures;
  "target-missed": TargetFigures;
  /** Ratio of the upper to the lower limit of R, and the largest error of their mean [–]. */
  "limits-far-apart": { limitsRatio: number; possibleError: number };
  /** Layer indices, from 0. */
  "foil-without-air": { layers: readonly number[] };
  "insulation-beyond-ventilation": {
    /** Indices from 0. */
    layers: readonly number[];
    /** Whether all the insulation lies there. */
    isAll: boolean;
  };
  /** Index from 0. */
  "openings-not-told": { layer: number };
  /** Layers of insulation, by index from 0. */
  "air-behind-insulation": { layers: readonly number[] };
  "inverted-roof-rain": {
    /** Index from 0. */
    layer: number;
    /** U without rain, and the target, null without one [W/(m²·K)]. */
    transmittance: number;
    /** [W/(m²·K)] */
    target: number | null;
  };
  /** Heights [m] */
  "cold-flat-roof-ventilated": { height: number; needed: number };
  "cold-flat-roof-unventilated": {
    fault: RoofAirFault;
    /** [m] */
    height: number;
    /** [m] */
    needed: number;
    /** [m² per m² of roof]; null where none is stated. */
    openings: number | null;
    /** [m²/m] */
    openingsNeeded: number;
  };
  /** Pitch below which a roof is flat [°]; `matters` where the judgement would differ for a flat roof. */
  "pitch-not-said": { flatUnder: number; matters: boolean };
  /** Shares of the resistance [–]. */
  "insulation-below-deck": { shareBelow: number; usual: number };
}
