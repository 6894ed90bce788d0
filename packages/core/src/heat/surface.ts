import { saturationPressure } from "../air/saturation-pressure.ts";
import { MONTH_NAMES } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { MonthName, SurfaceResult } from "../result/types.ts";
import { sectionName, sectionOfPath } from "./paths.ts";
import {
  CRITICAL_SURFACE_HUMIDITY,
  combinedTemperatureFactor,
  pathTemperatureFactor,
  requiredTemperatureFactor,
  SMALLEST_DIFFERENCE,
} from "./temperature-factor.ts";
import type { HeatCalculation, Path } from "./types.ts";

/** What the surface check needs besides the heat figures. */
export interface SurfaceQuestion {
  inside: AirMonths;
  outside: AirMonths;
  /** True where the outer side is another room, whose face is assessed as well. */
  otherRoom: boolean;
  junctions: readonly { name: string; factor: number; workedOut?: boolean }[];
  /** Factors from the plane [–], at metal channels and for the whole surface; absent where the paths give them. */
  channel?: { framing: string; lowest: number; whole: number };
}

/**
 * The inside surface: temperature factors of each heat-flow path and combined, against the factor each month requires.
 *
 * @param heat - heat figures
 * @param question - air of both sides [°C, Pa] and junction factors [–]
 * @returns factors, requirements, critical months, and the room humidity above which mould risk or condensation begins
 * Source: ISO 13788:2012 clause 5 (from memory).
 */
export function assessSurface(heat: HeatCalculation, question: SurfaceQuestion): SurfaceResult {
  const { inside, outside } = question;
  const beyond = heat.surfaceResistances.outsideForMoisture;
  const framed = heat.counted.some(({ framing }) => framing !== null);
  const alongPaths = heat.paths.map((path) => ({
    ...whereOf(path, framed),
    factor: pathTemperatureFactor(heat.counted, path, beyond),
  }));
  const { channel } = question;
  const combined = {
    where: "combined",
    sectionId: null,
    factor: channel?.whole ?? combinedTemperatureFactor(heat.counted, heat.paths, beyond),
  };
  const inPlane =
    channel === undefined
      ? []
      : [{ ...whereOf({ through: [channel.framing], share: 0 }, framed), factor: channel.lowest }];
  const temperatureFactors = framed ? [...alongPaths, ...inPlane, combined] : alongPaths;
  const required = MONTH_NAMES.map((month, index) => ({ month, ...requiredIn(inside, outside, index) }));
  const critical = {
    mould: criticalMonth(required, "mould"),
    condensation: criticalMonth(required, "condensation"),
    corrosion: criticalMonth(required, "corrosion"),
  };
  const lowest = Math.min(...temperatureFactors.map(({ factor }) => factor));
  const other = question.otherRoom ? otherFace(heat, inside, outside) : null;
  return {
    temperatureFactors,
    required,
    critical,
    reason: critical.mould === null ? "in no month is the room at least 3 K warmer than the other side" : null,
    humidityStood: critical.mould === null ? null : humidityStood(lowest, inside, outside, critical.mould.month),
    coldest: critical.mould === null ? null : surfaceAt(lowest, inside, outside, critical.mould.month),
    otherFace: other,
    junctions: junctionsAgainst(
      critical.mould === null && other !== null ? requiredOfOther(other) : critical,
      question,
    ),
    condensationMonths: monthsWithDrops(lowest, required),
    slightVentilationCase: null,
  };
}

type FactorOfFace = SurfaceResult["temperatureFactors"][number];

function whereOf(path: Path, framed: boolean): Pick<FactorOfFace, "where" | "sectionId"> {
  const sectionId = sectionOfPath(path, framed);
  return { where: sectionName(sectionId), sectionId };
}

/** The lowest temperature factor of a surface result [–]. */
export function lowestFactor(surface: SurfaceResult): FactorOfFace {
  return lowestOf(surface.temperatureFactors);
}

function lowestOf(factors: readonly FactorOfFace[]): FactorOfFace {
  return factors.reduce((lowest, entry) => (entry.factor < lowest.factor ? entry : lowest));
}

type Requirement = { mould: number | null; condensation: number | null; corrosion: number | null };

function requiredIn(inside: AirMonths, outside: AirMonths, month: number): Requirement {
  const air = { temperature: inside.temperature[month]!, vapourPressure: inside.vapourPressure[month]! };
  const need = (humidity: number): number | null =>
    requiredTemperatureFactor(air, outside.temperature[month]!, humidity);
  return {
    mould: need(CRITICAL_SURFACE_HUMIDITY.mould),
    condensation: need(CRITICAL_SURFACE_HUMIDITY.condensation),
    corrosion: need(CRITICAL_SURFACE_HUMIDITY.corrosion),
  };
}

function criticalMonth(
  required: readonly ({ month: MonthName } & Requirement)[],
  what: keyof Requirement,
): { month: MonthName; factor: number } | null {
  let critical: { month: MonthName; factor: number } | null = null;
  for (const entry of required) {
    const factor = entry[what];
    if (factor !== null && (critical === null || factor > critical.factor)) critical = { month: entry.month, factor };
  }
  return critical;
}

/**
 * Room humidity above which mould risk begins, and condensation, on the coldest surface in the worst month; of equal
 * months the critical one is taken.
 */
function humidityStood(
  factor: number,
  inside: AirMonths,
  outside: AirMonths,
  criticalMonth: MonthName,
): SurfaceResult["humidityStood"] {
  let least: SurfaceResult["humidityStood"] = null;
  for (const [index, month] of MONTH_NAMES.entries()) {
    const room = inside.temperature[index]!;
    const other = outside.temperature[index]!;
    if (!(room - other >= SMALLEST_DIFFERENCE)) continue;
    const surfaceTemperature = other + factor * (room - other);
    const condensation = Math.min(1, saturationPressure(surfaceTemperature) / saturationPressure(room));
    const mould = CRITICAL_SURFACE_HUMIDITY.mould * condensation;
    const standsLess = least === null || mould < least.mould - SAME_HUMIDITY;
    const standsAlike = least !== null && !standsLess && mould <= least.mould + SAME_HUMIDITY;
    if (standsLess || (standsAlike && month === criticalMonth)) least = { month, mould, condensation };
  }
  return least;
}

/** The coldest part of the surface in a month, and the air on it. */
function surfaceAt(factor: number, inside: AirMonths, outside: AirMonths, month: MonthName): SurfaceResult["coldest"] {
  const index = MONTH_NAMES.indexOf(month);
  const room = inside.temperature[index]!;
  const other = outside.temperature[index]!;
  const temperature = other + factor * (room - other);
  const relativeHumidity = Math.min(1, inside.vapourPressure[index]! / saturationPressure(temperature));
  return { month, temperature, relativeHumidity };
}

/** Humidities closer than this are the same [–]. */
const SAME_HUMIDITY = 1e-9;

/** The months in which water condenses on a surface with this temperature factor. */
function monthsWithDrops(factor: number, required: readonly ({ month: MonthName } & Requirement)[]): MonthName[] {
  return required
    .filter(({ condensation }) => condensation !== null && factor < condensation)
    .map(({ month }) => month);
}

/** What a junction is compared with: the critical months of the face on the warmer side. */
type JunctionRequirement = Pick<SurfaceResult["critical"], "mould" | "condensation">;

function junctionsAgainst(
  { mould, condensation }: JunctionRequirement,
  { junctions }: SurfaceQuestion,
): SurfaceResult["junctions"] {
  return junctions.map(({ name, factor, workedOut = false }) => ({
    name,
    factor,
    workedOut,
    meetsMould: mould === null ? null : factor >= mould.factor,
    meetsCondensation: condensation === null ? null : factor >= condensation.factor,
  }));
}

function requiredOfOther({ required, criticalMonth, condensation }: OtherFace): JunctionRequirement {
  return { mould: required === null ? null : { month: criticalMonth!, factor: required }, condensation };
}

type OtherFace = NonNullable<SurfaceResult["otherFace"]>;

/** The face towards the other room, assessed with that room's air as the inside air. */
function otherFace(heat: HeatCalculation, inside: AirMonths, outside: AirMonths): OtherFace {
  const beyond = heat.surfaceResistances.inside;
  const combined = combinedTemperatureFactor(heat.counted, heat.paths, beyond);
  const framed = heat.counted.some(({ framing }) => framing !== null);
  const alongPaths = heat.paths.map((path) => ({
    ...whereOf(path, framed),
    factor: pathTemperatureFactor(heat.counted, path, beyond),
  }));
  const lowest = lowestOf([...alongPaths, { where: "combined", sectionId: null, factor: combined }]);
  const required = MONTH_NAMES.map((month, index) => ({ month, ...requiredIn(outside, inside, index) }));
  const mould = criticalMonth(required, "mould");
  return {
    temperatureFactor: lowest.factor,
    where: lowest.where,
    sectionId: lowest.sectionId,
    combined,
    required: mould?.factor ?? null,
    criticalMonth: mould?.month ?? null,
    condensation: criticalMonth(required, "condensation"),
    condensationMonths: monthsWithDrops(lowest.factor, required),
  };
}
