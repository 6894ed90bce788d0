import { saturationPressure } from "../air/saturation-pressure.ts";
import { MONTHS_PER_YEAR } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import { requireList, requireNumber } from "../require.ts";
import { decidingYear } from "../year/deciding-year.ts";
import { secondsOfMonth } from "../year/month-balance.ts";
import { NOTHING_HELD, sumOf } from "../year/section-year.ts";
import { NO_WATER, type WaterOfYear } from "../year/types.ts";
import { startingMonths, WET_MONTH } from "../year/wet-months.ts";
import { cornerNet } from "./corner-net.ts";
import { requireAirMonths, requireField } from "./given.ts";
import { cellAt } from "./mesh.ts";
import { type MonthDrive, type PlaneMonth, solvePlaneMonth } from "./month-in-the-plane.ts";
import { type HeatField, temperaturesOf } from "./plane-heat.ts";
import { unlimitedPressure, type VapourNet, vapourNet } from "./vapour-net.ts";

/** A year of vapour in the plane that begins at `startMonth`; its lists are in calendar order. */
export interface PlaneYear extends WaterOfYear {
  /** Water of every node a year after the twelve months [kg/m]; null where it dries. */
  yearLater: Float64Array | null;
  /** One list of nodes for each calendar month: θ [°C], psat [Pa], p [Pa], water at its end [kg/m]. */
  temperature: readonly Float64Array[];
  /** [Pa] */
  saturation: readonly Float64Array[];
  /** [Pa] */
  pressure: readonly Float64Array[];
  /** [kg/m] */
  held: readonly Float64Array[];
}

/**
 * The year of a scene's vapour, with drying within the month.
 *
 * @param field - its heat on the net of corners, with sheets drawn
 * @param airs - twelve months of each of its airs [°C, Pa]
 * @param skyOffset - subtracted from the last air's temperature, in the profile only [K]; 2 under a clear sky
 * @returns verdict, maximum accumulation, residual moisture, and every month's pressures and water
 * Source: ISO 13788:2012 clause 6 in two dimensions; start and thresholds as for a straight section (METHOD.md, Water
 *   in the year).
 */
export function planeYear(field: HeatField, airs: readonly AirMonths[], skyOffset = 0): PlaneYear {
  requireField(field);
  requireList(airs, "airs");
  for (const air of airs) requireAirMonths(air);
  if (airs.length < field.scene.airs.length)
    throw new RangeError(`airs must be ${field.scene.airs.length}, one an air`);
  requireNumber(skyOffset, "skyOffset", "K", 0, 20);
  const vapour = vapourOf(field);
  const climate = climateOf(field, vapour, airs, skyOffset);
  const nothing = new Float64Array(vapour.inner.length);
  const fromDry: PlaneMonth[] = [];
  for (const drive of climate.drives)
    fromDry.push(solvePlaneMonth(vapour, drive, nothing, fromDry.at(-1)?.wet ?? null));
  const widths = widthsOf(field);
  const starts = startingMonths(fromDry.map(({ held }) => (wettestOf(held, widths) > WET_MONTH ? 1 : 0)));
  const { temperature, saturation } = climate;
  const negligible = NOTHING_HELD * (field.mesh.xs.at(-1)! - field.mesh.xs[0]!);
  const yearFrom = (start: number): WaterMonths =>
    summaryOf(runPlaneYear(vapour, climate.drives, start, fromDry, nothing), start, negligible);
  const year = decidingYear(starts, yearFrom, negligible) ?? dryMonths(fromDry, nothing);
  const yearLater = year.verdict === "stays wet" ? heldYearLater(vapour, climate.drives, year, fromDry) : null;
  return { ...year, yearLater, temperature, saturation };
}

function heldYearLater(
  vapour: VapourNet,
  drives: readonly MonthDrive[],
  { startMonth, held }: WaterMonths,
  fromDry: readonly PlaneMonth[],
): Float64Array {
  const last = (startMonth! + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR;
  return runPlaneYear(vapour, drives, startMonth!, fromDry, held[last]!)[last]!.held;
}

/** Twelve months from given water, in calendar order. */
function runPlaneYear(
  vapour: VapourNet,
  drives: readonly MonthDrive[],
  start: number,
  fromDry: readonly PlaneMonth[],
  begin: Float64Array,
): PlaneMonth[] {
  const months: PlaneMonth[] = new Array(MONTHS_PER_YEAR);
  let before = begin;
  let wet: Uint8Array | null = null;
  for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
    const month = (start + step) % MONTHS_PER_YEAR;
    const isDry = before.every((amount) => amount === 0);
    months[month] = isDry ? fromDry[month]! : solvePlaneMonth(vapour, drives[month]!, before, wet);
    ({ held: before, wet } = months[month]!);
  }
  return months;
}

/** A year's water with every month's pressures. */
type WaterMonths = WaterOfYear & Pick<PlaneYear, "pressure" | "held">;

function dryMonths(fromDry: readonly PlaneMonth[], nothing: Float64Array): WaterMonths {
  return { ...NO_WATER, pressure: fromDry.map(({ pressure }) => pressure), held: fromDry.map(() => nothing) };
}

function summaryOf(months: readonly PlaneMonth[], start: number, negligible: number): WaterMonths {
  const totals = months.map(({ held }) => sumOf(held));
  const inOrder = totals.map((_, step) => (start + step) % MONTHS_PER_YEAR);
  const peakMonth = inOrder.reduce((most, month) => (totals[month]! > totals[most]! ? month : most), start);
  const carriedOver = totals[inOrder.at(-1)!]!;
  const driesOut = carriedOver <= negligible;
  const lastWet = inOrder.findLastIndex((month) => totals[month]! > negligible);
  return {
    verdict: driesOut ? "dries out" : "stays wet",
    startMonth: start,
    peak: totals[peakMonth]!,
    peakMonth,
    carriedOver,
    dryBy: driesOut ? (start + lastWet + 1) % MONTHS_PER_YEAR : null,
    pressure: months.map(({ pressure }) => pressure),
    held: months.map(({ held }) => held),
  };
}

/** The vapour net of a heat field; its surfaces are the nodes that reach an air. */
function vapourOf({ scene, mesh, net, fronts }: HeatField): VapourNet {
  const surface = net.active.map((_, node) => (net.toAir.some((conductances) => conductances[node]! > 0) ? 1 : 0));
  return vapourNet(cornerNet(scene, mesh, "vapour"), surface, fronts);
}

interface PlaneClimate {
  temperature: Float64Array[];
  saturation: Float64Array[];
  drives: MonthDrive[];
}

/** Temperatures, saturation and boundary conditions by month; at a surface p is the air's, at most its saturation. */
function climateOf(field: HeatField, vapour: VapourNet, airs: readonly AirMonths[], skyOffset: number): PlaneClimate {
  const climate: PlaneClimate = { temperature: [], saturation: [], drives: [] };
  const inAir = nodesInAir(field);
  const last = airs.length - 1;
  const shares = vapourShares(field, vapour);
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const temperature = temperaturesOf(
      field,
      airs.map((air, index) => air.temperature[month]! - (index === last ? skyOffset : 0)),
    );
    const saturation = new Float64Array(temperature.length);
    const limit = new Float64Array(temperature.length);
    for (let node = 0; node < limit.length; node += 1) {
      saturation[node] = saturationPressure(temperature[node]!);
      limit[node] = inAir[node] === 1 ? Number.POSITIVE_INFINITY : saturation[node]!;
    }
    climate.temperature.push(temperature);
    climate.saturation.push(saturation);
    const pressures = airs.map((air) => air.vapourPressure[month]!);
    climate.drives.push({
      limit,
      unlimited: withoutLimit(field, vapour, shares, pressures, saturation),
      seconds: secondsOfMonth(month),
    });
  }
  return climate;
}

/** Vapour pressure of every node [–] with one air at 1 and the others at 0; one list for each air. */
function vapourShares({ net }: HeatField, vapour: VapourNet): Float64Array[] {
  return net.toAir.map((conductances) =>
    unlimitedPressure(
      vapour,
      conductances.map((each) => (each > 0 ? 1 : 0)),
    ),
  );
}

/** Pressures of a month without water or limit [Pa]: superposed from the airs unless a surface is at saturation. */
function withoutLimit(
  { net }: HeatField,
  vapour: VapourNet,
  shares: readonly Float64Array[],
  pressures: readonly number[],
  saturation: Float64Array,
): Float64Array {
  const unlimited = new Float64Array(saturation.length);
  let anySaturated = false;
  for (const [air, share] of shares.entries()) {
    const pressure = pressures[air]!;
    const conductances = net.toAir[air]!;
    for (let node = 0; node < unlimited.length; node += 1) {
      unlimited[node]! += share[node]! * pressure;
      if (conductances[node]! > 0 && pressure > saturation[node]!) anySaturated = true;
    }
  }
  if (!anySaturated) return unlimited;
  const given = unlimited.map((pressure, node) =>
    vapour.surface[node] === 1 ? Math.min(pressure, saturation[node]!) : 0,
  );
  return unlimitedPressure(vapour, given);
}

/** 1 for nodes with air of the construction on all sides. */
function nodesInAir({ scene, mesh, net }: HeatField): Uint8Array {
  const besideStuff = (node: number): boolean => {
    const [column, row] = [node % net.columns, Math.floor(node / net.columns)];
    const around = [cellAt(mesh, column - 1, row - 1), cellAt(mesh, column, row - 1)];
    around.push(cellAt(mesh, column - 1, row), cellAt(mesh, column, row));
    return around.some((code) => code >= 0 && !scene.stuffs[code]!.isAir);
  };
  return net.active.map((isActive, node) => (isActive === 1 && !besideStuff(node) ? 1 : 0));
}

/** Width along x that each column of nodes stands for [m]. */
export function widthsOf({ mesh: { xs } }: HeatField): Float64Array {
  return xs.map((x, index) => ((xs[index + 1] ?? x) - (xs[index - 1] ?? x)) / 2);
}

/** Largest water per area at one node [kg/m²]. */
function wettestOf(held: Float64Array, widths: Float64Array): number {
  let most = 0;
  for (let node = 0; node < held.length; node += 1) most = Math.max(most, held[node]! / widths[node % widths.length]!);
  return most;
}
