import type { EdgeInsulation, Soil, UnderfloorVoid } from "../project/types.ts";
import type { MonthName, SectionId } from "./places.ts";
import type { HeatFlowDirection } from "./words.ts";

/** The input of a floor to ISO 13370, for retracing it. */
export interface FloorBasis {
  /** A [m²] and exposed perimeter P [m] */
  area: number;
  /** [m] */
  perimeter: number;
  /** dw, thickness of the walls around it [m] */
  wallThickness: number;
  soil: Soil;
  /** λg [W/(m·K)] */
  soilConductivity: number;
  /** Rf, the floor's layers with framing, without surfaces [m²·K/W] */
  floorResistance: number;
  /** Rsi and Rse of ISO 13370 [m²·K/W] */
  surfaceResistanceInside: number;
  /** [m²·K/W] */
  surfaceResistanceOutside: number;
  /** Insulation along the edge of a slab; null without. */
  edgeInsulation: EdgeInsulation | null;
  /** What is known of the void below a suspended floor, with fw, its wind shielding [–]; null for a slab on the ground. */
  void:
    | (Pick<
        UnderfloorVoid,
        "height" | "wallTransmittance" | "openings" | "windSpeed" | "shelter" | "groundInsulation"
      > & {
        windShielding: number;
        /** True where the file states the void's air; its temperatures follow from the transmittances otherwise. */
        isAirStated: boolean;
      })
    | null;
}

/** The combined method's figures [m²·K/W]; ratio and error are fractions. */
export interface CombinedResistance {
  /** Combined total resistance before corrections [m²·K/W]. */
  resistance: number;
  /** [m²·K/W] */
  upperLimit: number;
  /** [m²·K/W] */
  lowerLimit: number;
  /** [–] */
  limitsRatio: number;
  /** [–] */
  possibleError: number;
}

/** A correction of U to ISO 6946 Annex F, with its formula in figures. */
export interface HeatCorrection {
  name: string;
  /** Index of the layer, from 0. */
  layer: number;
  /** ΔU [W/(m²·K)] */
  value: number;
  /** The formula with its numbers. */
  formula: string;
}

/** A named value [`unit`] of a longer working, for people who retrace it. */
export interface WorkingValue {
  name: string;
  symbol: string;
  /** [`unit`] */
  value: number;
  unit: string;
}

/** The two cases that a slightly ventilated air layer lies between, closed and well ventilated. */
export interface SlightVentilation {
  /** How far it is from the one to the other, (Av − 500)/1000 with Av in mm² [–], 0 to 1. */
  openShare: number;
  /** Combined total resistance [m²·K/W]. */
  closedResistance: number;
  /** [m²·K/W] */
  openResistance: number;
  /** Corrections ΔU [W/(m²·K)]. */
  closedCorrection: number;
  /** [W/(m²·K)] */
  openCorrection: number;
}

/** Figures of heat as they are worked out: resistances [m²·K/W], transmittances [W/(m²·K)]. */
export interface HeatFigures extends CombinedResistance {
  direction: HeatFlowDirection;
  /** U with framing and corrections [W/(m²·K)]. */
  transmittance: number;
  /** U between framing [W/(m²·K)]. */
  clearTransmittance: number;
  /** ΔU added: the sum of the corrections, 0 where they are left out [W/(m²·K)]. */
  correction: number;
  /** Corrections to ISO 6946 Annex F. */
  corrections: readonly HeatCorrection[];
  /** True where they come to under 3 % and are left out. */
  correctionsLeftOut: boolean;
  /** [–] */
  framingShare: number;
  /** Floors: the working of ISO 13370; null otherwise. */
  ground: readonly WorkingValue[] | null;
  /** Rg, resistance of the ground below a slab, behind the layers in every temperature [m²·K/W]; null for all else. */
  groundResistance: number | null;
  /** Null without a slightly ventilated layer; with one `paths` and `lowerLimitLayers` are those of the closed case. */
  slightVentilation: SlightVentilation | null;
}

/** The heat side of a build-up, with its working. */
export interface HeatResult extends HeatFigures {
  /** Lowest temperature factor of the inside surface [–]. */
  temperatureFactor: number;
  /** [–] */
  requiredTemperatureFactor: number | null;
  criticalMonth: MonthName | null;
  /** [m²·K/W] */
  surfaceResistanceInside: number;
  /** As used for U, and as used for temperatures and vapour [m²·K/W]. */
  surfaceResistanceOutside: number;
  /** [m²·K/W] */
  surfaceResistanceOutsideMoisture: number;
  /** The distinct ways through: share of the area [–], total resistance of each (upper limit) and of its layers [m²·K/W]. */
  paths: { id: SectionId; name: string; share: number; resistance: number; layerResistances: number[] }[];
  /** Each layer's resistance in the lower limit, with its bridging [m²·K/W]; layers by index from 0. */
  lowerLimitLayers: { layer: number | null; name: string; resistance: number }[];
  /** What the working of `ground` starts from; null where that is. */
  groundBasis: FloorBasis | null;
  /** Heat over the heating year [kWh/m²]; null where there is none. */
  heatPerYear: number | null;
  heatPerYearNote: string | null;
}

/** The inside surface: temperature factors [–] against what mould, drops and corrosion require. */
export interface SurfaceResult {
  /** Factors [–]; `sectionId` is null for the face as a whole; `where` is the name in words. */
  temperatureFactors: { where: string; sectionId: SectionId | null; factor: number }[];
  /** Required factor each month for mould, condensation and corrosion; null where the month does not count. */
  required: { month: MonthName; mould: number | null; condensation: number | null; corrosion: number | null }[];
  /** The month with the highest requirement of each kind, with its factor [–]. */
  critical: {
    /** [–] */
    mould: { month: MonthName; factor: number } | null;
    /** [–] */
    condensation: { month: MonthName; factor: number } | null;
    /** [–] */
    corrosion: { month: MonthName; factor: number } | null;
  };
  /** Why a critical month is null. */
  reason: string | null;
  /** Room relative humidity that the coldest surface would withstand in its worst month [–], before mould and before drops. */
  humidityStood: { month: MonthName; mould: number; condensation: number } | null;
  /** The coldest part of the surface in the critical month [°C], with the humidity on it [–]; null without such a month. */
  coldest: { month: MonthName; temperature: number; relativeHumidity: number } | null;
  /**
   * The other face of a partition, judged by the other room's air; null otherwise. `temperatureFactor` is the lowest,
   * at `where`; `required` and `criticalMonth` keep mould away, `condensation` drops.
   */
  otherFace: {
    /** [–] */
    temperatureFactor: number;
    where: string;
    sectionId: SectionId | null;
    /** [–] */
    combined: number;
    /** [–] */
    required: number | null;
    criticalMonth: MonthName | null;
    /** Factor [–] that keeps drops away. */
    condensation: { month: MonthName; factor: number } | null;
    condensationMonths: MonthName[];
  } | null;
  /** Junctions against what this face asks, or the other one where only that room is the warmer. */
  junctions: {
    name: string;
    /** [–] */
    factor: number;
    workedOut: boolean;
    meetsMould: boolean | null;
    meetsCondensation: boolean | null;
  }[];
  /** Months in which the room surface itself is at saturation. */
  condensationMonths: MonthName[];
  /** The case of a slightly ventilated air layer that gives the lower factor, given here; null without such a layer. */
  slightVentilationCase?: "closed" | "open" | null;
}
