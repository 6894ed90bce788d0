import type { EdgeInsulation, Soil, UnderfloorVoid } from "../project/types.ts";
import type { MonthName, SectionId } from "./places.ts";
import type { HeatFlowDirection } from "./words.ts";

/** What a floor to ISO 13370 was worked out from, for whoever works it again. */
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

/** The heat side: resistances [m²·K/W], transmittances [W/(m²·K)], temperature factors [–], with their working. */
export interface HeatResult {
  /** Combined total resistance before corrections [m²·K/W]. */
  resistance: number;
  /** [m²·K/W] */
  upperLimit: number;
  /** [m²·K/W] */
  lowerLimit: number;
  /** U with framing and corrections [W/(m²·K)]. */
  transmittance: number;
  /** U between framing [W/(m²·K)]. */
  clearTransmittance: number;
  /** ΔU added [W/(m²·K)]. */
  correction: number;
  /** [–] */
  framingShare: number;
  /** [–] */
  temperatureFactor: number;
  /** [–] */
  requiredTemperatureFactor: number | null;
  criticalMonth: MonthName | null;
  direction: HeatFlowDirection;
  /** [m²·K/W] */
  surfaceResistanceInside: number;
  /** As used for U, and as used for temperatures and vapour [m²·K/W]. */
  surfaceResistanceOutside: number;
  /** [m²·K/W] */
  surfaceResistanceOutsideMoisture: number;
  /** [–] */
  limitsRatio: number;
  /** [–] */
  possibleError: number;
  /** The distinct ways through: share of the area [–], total resistance of each (upper limit) and of its layers [m²·K/W]. */
  paths: { id: SectionId; name: string; share: number; resistance: number; layerResistances: number[] }[];
  /** Each layer's resistance in the lower limit, with its bridging [m²·K/W]; layers by index from 0. */
  lowerLimitLayers: { layer: number | null; name: string; resistance: number }[];
  /** Corrections to ISO 6946 Annex F [W/(m²·K)]: each with its layer by index from 0, and its numbers, and whether it was left out under 3 %. */
  corrections: { name: string; layer: number; value: number; formula: string }[];
  correctionsLeftOut: boolean;
  /** Floors: the working of ISO 13370 as named values [`unit`]; null otherwise. */
  ground: { name: string; symbol: string; value: number; unit: string }[] | null;
  /** Rg, resistance of the ground below a slab, behind the layers in every temperature [m²·K/W]; null for all else. */
  groundResistance: number | null;
  /** What that working starts from; null where `ground` is. */
  groundBasis?: FloorBasis | null;
  /**
   * The two cases that a slightly ventilated air layer lies between: combined total resistances [m²·K/W] and
   * corrections [W/(m²·K)]; null without such a layer. `paths` and `lowerLimitLayers` are those of the closed case.
   */
  slightVentilation?: {
    openShare: number;
    closedResistance: number;
    openResistance: number;
    closedCorrection: number;
    openCorrection: number;
  } | null;
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
  /** The month that asks most of each, with the factor it requires [–]. */
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
  /** Room relative humidity the coldest surface would stand in its worst month [–] before mould and before drops. */
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
  /** Which case of a slightly ventilated air layer gives the lower factor, and stands here; null without such a layer. */
  slightVentilationCase?: "closed" | "open" | null;
}
