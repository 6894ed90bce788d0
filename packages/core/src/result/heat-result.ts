import type { EdgeInsulation, Soil, UnderfloorVoid } from "../project/types.ts";
import type { MonthName, SectionId } from "./places.ts";
import type { HeatFlowDirection } from "./words.ts";

/** Input of the calculation of a floor to ISO 13370, for a hand check. */
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
  /** Data of the void below a suspended floor, with its wind shielding factor fw [–]; null for a slab on ground. */
  void:
    | (Pick<
        UnderfloorVoid,
        "height" | "wallTransmittance" | "openings" | "windSpeed" | "shelter" | "groundInsulation"
      > & {
        windShielding: number;
        /** True where the file states the void's air; otherwise its temperatures follow from the transmittances. */
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

/** A named value [`unit`] of a longer calculation, for a hand check. */
export interface WorkingValue {
  name: string;
  symbol: string;
  /** [`unit`] */
  value: number;
  unit: string;
}

/** The two cases that bound a slightly ventilated air layer: closed and well ventilated. */
export interface SlightVentilation {
  /** Weight of the well-ventilated case, (Av − 500)/1000 with Av in mm² [–], 0 to 1. */
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

/** Heat figures as calculated: resistances [m²·K/W], transmittances [W/(m²·K)]. */
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
  /** True where they are under 3 % of U and are left out. */
  correctionsLeftOut: boolean;
  /** [–] */
  framingShare: number;
  /** Floors: the working of ISO 13370; null otherwise. */
  ground: readonly WorkingValue[] | null;
  /** Rg, resistance of the ground below a slab, included in all temperatures [m²·K/W]; null for all else. */
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
  /** The heat-flow paths: share of the area [–], total resistance (upper limit) and those of the layers [m²·K/W]. */
  paths: { id: SectionId; name: string; share: number; resistance: number; layerResistances: number[] }[];
  /** Each layer's resistance in the lower limit, with its bridging [m²·K/W]; layers by index from 0. */
  lowerLimitLayers: { layer: number | null; name: string; resistance: number }[];
  /** Input of `ground`; null where that is null. */
  groundBasis: FloorBasis | null;
  /** Heat loss over the year [kWh/m²]; null where there is none. */
  heatPerYear: number | null;
  heatPerYearNote: string | null;
}

/** The inside surface: temperature factors [–], and those required against mould, condensation and corrosion. */
export interface SurfaceResult {
  /** Factors [–]; `sectionId` is null for the face as a whole; `where` is the name in words. */
  temperatureFactors: { where: string; sectionId: SectionId | null; factor: number }[];
  /** Required factor each month for mould, condensation and corrosion; null where the month does not count. */
  required: { month: MonthName; mould: number | null; condensation: number | null; corrosion: number | null }[];
  /** The critical month for each, with the factor it requires [–]. */
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
  /** Room humidity above which mould risk, and condensation, begins on the coldest surface in the worst month [–]. */
  humidityStood: { month: MonthName; mould: number; condensation: number } | null;
  /** The coldest part of the surface in the critical month [°C], with the humidity on it [–]; null without such a month. */
  coldest: { month: MonthName; temperature: number; relativeHumidity: number } | null;
  /**
   * The other face of a partition, assessed with the other room's air; null otherwise. `temperatureFactor` is the
   * lowest, at `where`; `required` and `criticalMonth` are for mould.
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
    /** Factor that prevents condensation [–], and its month. */
    condensation: { month: MonthName; factor: number } | null;
    condensationMonths: MonthName[];
  } | null;
  /** Junctions compared with the requirement of this face, or of the other face where only that room is warmer. */
  junctions: {
    name: string;
    /** [–] */
    factor: number;
    workedOut: boolean;
    meetsMould: boolean | null;
    meetsCondensation: boolean | null;
  }[];
  /** Months with condensation on the room surface. */
  condensationMonths: MonthName[];
  /** The case of a slightly ventilated air layer reported here, with the lower factor; null without such a layer. */
  slightVentilationCase?: "closed" | "open" | null;
}
