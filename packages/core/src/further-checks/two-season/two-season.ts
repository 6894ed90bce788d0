import type { BuildUpCalculation, SectionCalculation } from "../../calculate-build-up.ts";
import { MONTHS_PER_YEAR, SECONDS_PER_DAY, VAPOUR_PERMEABILITY_OF_AIR } from "../../constants.ts";
import { isRoof } from "../../project/is-roof.ts";
import type { AirMonths, BuildUp, Room } from "../../project/types.ts";
import type { Place, SectionId, TwoSeasonData } from "../../result/types.ts";
import { sectionClimate } from "../../vapour/section-climate.ts";
import { emptyMonthState, solveMonth } from "../../year/month-balance.ts";
import { facesOfSlices, placeOf, slicesTouching } from "../section-nodes/places.ts";
import { MOST_CONDENSATE } from "../water-limits.ts";
import { limitAtPlane } from "./plane-limit.ts";
import { reasonOutOfScope } from "./two-season-scope.ts";

/** Surface resistances [m²·K/W]. Source: DIN 4108-3 since 2014 (from memory); Rsi was 0.13 before. */
export const TWO_SEASON_SURFACE_INSIDE = 0.25;
export const TWO_SEASON_SURFACE_OUTSIDE = 0.04;
const EDITION = "DIN 4108-3, editions since 2014 (from memory)";

/** Each season's length [s]: 90 days. Source: DIN 4108-3 (from memory). */
export const SEASON: number = 90 * SECONDS_PER_DAY;

/** Winter air: temperature [°C] and vapour pressure [Pa]. Source: DIN 4108-3 (from memory). */
const WINTER_INSIDE = { temperature: 20, vapourPressure: 1168 };
export const WINTER_OUTSIDE = { temperature: -5, vapourPressure: 321 };

/** Summer: p on both sides; psat at the plane in walls and roofs [Pa]. Source: DIN 4108-3 (from memory). */
const SUMMER_AIR = 1200;
const SUMMER_PLANE_IN_WALL = 1700;
const SUMMER_PLANE_IN_ROOF = 2000;

/** Gain in winter below which a node is not a condensation plane [kg/m²]: 1 mg/m² (this project's rule). */
const NO_PLANE = 1e-6;

/**
 * The two-season check: condensation in a fixed winter and drying in a fixed summer, at one plane. A second method with
 * its own verdict, which never affects the monthly one.
 *
 * @param calculation - the build-up's figures
 * @param room - its room
 * @param outdoorTemperature - twelve outdoor temperatures [°C], for the humidity class
 * @param humidityMargin - factor on the vapour excess of humidity classes [–]
 * @returns condensate, limit and drying capacity of the worst section
 * Source: DIN 4108-3 (from memory).
 */
export function twoSeasonCheck(
  calculation: BuildUpCalculation,
  room: Room,
  outdoorTemperature: readonly number[],
  humidityMargin: number,
): TwoSeasonData {
  const outcomes = calculation.sections.map((section) => seasonsOf(section, calculation.buildUp));
  const worst = outcomes.reduce((a, b) => (rank(b) > rank(a) ? b : a));
  const outOfScope = reasonOutOfScope(calculation, room, outdoorTemperature, humidityMargin);
  const why = outOfScope ?? (worst.planes > 1 ? "more than one plane" : null);
  return {
    applies: why === null,
    why,
    surfaceResistanceInside: TWO_SEASON_SURFACE_INSIDE,
    edition: EDITION,
    condensate: worst.condensate,
    limit: worst.limit,
    summerCapacity: worst.summerCapacity,
    passes: why === null ? passes(worst) : null,
    sectionId: worst.section,
    place: worst.place,
  };
}

/** Result of the two seasons in a section; where there are several planes, for the wettest. */
interface Seasons {
  planes: number;
  condensate: number;
  limit: number;
  summerCapacity: number;
  section: SectionId;
  place: Place | null;
}

function seasonsOf(section: SectionCalculation, buildUp: BuildUp): Seasons {
  const { line, slices } = section;
  const condensates = winterCondensate(section);
  const planes = condensates.flatMap((amount, node) => (amount > NO_PLANE ? [{ node, amount }] : []));
  const wettest = planes.reduce<{ node: number; amount: number } | null>(
    (most, plane) => (most === null || plane.amount > most.amount ? plane : most),
    null,
  );
  if (wettest === null)
    return { planes: 0, condensate: 0, limit: MOST_CONDENSATE, summerCapacity: 0, section: section.id, place: null };
  const touching = slicesTouching(slices, facesOfSlices(line, slices), wettest.node);
  const sdInside = line.sd[wettest.node]!;
  const sdOutside = line.sd[line.count - 1]! - sdInside;
  return {
    planes: planes.length,
    condensate: planes.reduce((sum, { amount }) => sum + amount, 0),
    limit: limitAtPlane(touching, buildUp, section.path),
    summerCapacity: summerDrying(summerPlanePressure(buildUp), sdInside, sdOutside),
    section: section.id,
    place: placeOf(touching),
  };
}

/**
 * Winter condensate at every node.
 *
 * @param section - nodes of the section
 * @returns gain of each node over 90 days [kg/m²]
 * Source: DIN 4108-3 (from memory).
 */
export function winterCondensate({ line }: Pick<SectionCalculation, "line">): number[] {
  const surfaces = [TWO_SEASON_SURFACE_INSIDE, TWO_SEASON_SURFACE_OUTSIDE] as const;
  const climate = sectionClimate(line, allMonths(WINTER_INSIDE), allMonths(WINTER_OUTSIDE), ...surfaces, 0);
  const state = emptyMonthState(line.count);
  solveMonth({ sd: line.sd, climate }, 0, state);
  return Array.from(state.gain, (gain) => gain * SEASON);
}

/**
 * Water that can evaporate from a plane in summer.
 *
 * @param planePressure - saturation pressure at the plane [Pa]
 * @param sdInside - sd from the room surface to the plane [m], above 0
 * @param sdOutside - sd from the plane to the outer surface [m], above 0
 * @returns capacity over 90 days [kg/m²]
 * Source: DIN 4108-3 (from memory).
 * @example summerDrying(1700, 2, 0.5) // 1.944
 */
export function summerDrying(planePressure: number, sdInside: number, sdOutside: number): number {
  const surplus = planePressure - SUMMER_AIR;
  const flow = VAPOUR_PERMEABILITY_OF_AIR * (surplus / sdInside + surplus / sdOutside);
  return flow * SEASON;
}

/** The sun warms roofs more than walls and ceilings under roof spaces. */
function summerPlanePressure({ element, roofSpace }: BuildUp): number {
  return isRoof({ element }) && roofSpace === null ? SUMMER_PLANE_IN_ROOF : SUMMER_PLANE_IN_WALL;
}

function passes({ condensate, limit, summerCapacity }: Seasons): boolean {
  return condensate <= limit && condensate <= summerCapacity;
}

/** The worse, the higher: one plane that fails, then several planes, then more condensate. */
function rank(seasons: Seasons): number {
  if (seasons.planes <= 1 && !passes(seasons)) return 3 + seasons.condensate;
  return seasons.planes > 1 ? 2 : seasons.condensate;
}

function allMonths(air: { temperature: number; vapourPressure: number }): AirMonths {
  return {
    temperature: new Array(MONTHS_PER_YEAR).fill(air.temperature),
    vapourPressure: new Array(MONTHS_PER_YEAR).fill(air.vapourPressure),
  };
}
