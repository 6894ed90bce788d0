import { MONTH_NAMES } from "../constants.ts";
import { checkAir } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import type { AirMonths } from "../project/types.ts";
import { requireList, requireNumber } from "../require.ts";
import type { MonthName, VerdictWord } from "../result/types.ts";
import { nodeLine } from "../vapour/node-line.ts";
import { sectionClimate } from "../vapour/section-climate.ts";
import { sectionYear } from "../year/section-year.ts";
import { yearFromDry } from "../year/wet-months.ts";

/** A year of condensation in one section. */
export interface CondensationYear {
  verdict: VerdictWord;
  /** Month in which condensation begins; null when dry. */
  startMonth: MonthName | null;
  /** Maximum accumulation at a month's end, and below the residual moisture after twelve months [kg/m²]. */
  peak: number;
  /** [kg/m²] */
  carriedOver: number;
  /** Water held at the end of each month, January first [kg/m²]. */
  held: number[];
}

/**
 * A year of condensation and evaporation, from lists of numbers only.
 *
 * @param resistances - R of the layers from the room outwards [m²·K/W], 0 to 50
 * @param sds - sd of the same layers [m], 0 to 10⁷
 * @param inside - room air: twelve temperatures [°C] and vapour pressures [Pa]
 * @param outside - outdoor air, the same
 * @param surfaceInside - Rsi [m²·K/W], 0.01 to 1 (default 0.13)
 * @param surfaceOutside - Rse [m²·K/W], 0.01 to 1 (default 0.04)
 * @returns verdict and water [kg/m²] by the standard's monthly balance
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13788:2012 clause 6 (from memory); layers are divided into parts of at most 0.25 m²·K/W.
 */
export function condensationYear(
  resistances: readonly number[],
  sds: readonly number[],
  inside: AirMonths,
  outside: AirMonths,
  surfaceInside = 0.13,
  surfaceOutside = 0.04,
): CondensationYear {
  requireList(resistances, "resistances");
  requireList(sds, "sds");
  if (resistances.length === 0 || resistances.length !== sds.length)
    throw new RangeError("resistances and sds must be of one length, one layer or more");
  for (const value of resistances) requireNumber(value, "each of resistances", "m²·K/W", 0, 50);
  for (const value of sds) requireNumber(value, "each of sds", "m", 0, 1e7);
  refuseFaults([...checkAir(inside, ["inside"]), ...checkAir(outside, ["outside"])]);
  requireNumber(surfaceInside, "surfaceInside", "m²·K/W", 0.01, 1);
  requireNumber(surfaceOutside, "surfaceOutside", "m²·K/W", 0.01, 1);
  const slices = resistances.map((resistance, layer) => ({
    layer,
    part: "whole" as const,
    name: `layer ${layer + 1}`,
    material: "",
    thickness: 0,
    resistance,
    sd: sds[layer]!,
    isAir: false,
  }));
  const line = nodeLine(slices);
  if (line.count < 2) throw new RangeError("the layers must hold back some vapour: every sd is 0 m");
  const section = { sd: line.sd, climate: sectionClimate(line, inside, outside, surfaceInside, surfaceOutside, 0) };
  const year = sectionYear(section, yearFromDry(section), "standard");
  return {
    verdict: year.verdict,
    startMonth: year.startMonth === null ? null : MONTH_NAMES[year.startMonth]!,
    peak: year.peak,
    carriedOver: year.carriedOver,
    held: year.held.map((nodes) => nodes.reduce((sum, held) => sum + held, 0)),
  };
}
