import { saturationPressure } from "../air/saturation-pressure.ts";
import { MONTHS_PER_YEAR } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { NodeLine } from "./node-line.ts";
import { wholeZeros, zeros } from "./number-lists.ts";

/** Boundary conditions of a section by month: temperatures, saturation pressures, pressures at its two surfaces. */
export interface SectionClimate {
  /** θ of the nodes [°C], one list a month. */
  temperature: Float64Array[];
  /** psat of the nodes [Pa], one list a month; of a group, the lowest. */
  saturation: Float64Array[];
  /** p at the two surfaces [Pa]: that of the air, at most the surface's saturation pressure. */
  insideSurface: Float64Array;
  outsideSurface: Float64Array;
}

/** A node line in the same air with known temperatures; only its vapour resistances differ. */
export interface KnownClimate {
  line: NodeLine;
  climate: SectionClimate;
}

/**
 * Temperatures and saturation pressures of a section's nodes for the twelve months.
 *
 * @param line - the nodes
 * @param inside - room air [°C, Pa]
 * @param outside - air on the outer side [°C, Pa]
 * @param surfaceInside - Rsi [m²·K/W]
 * @param surfaceOutside - Rse [m²·K/W]
 * @param skyOffset - subtracted from the outer temperature, in the profile only [K]; 2 under a clear sky
 * @param known - gives the temperatures of nodes at the same resistance
 * @returns lists by month
 * Source: ISO 13788:2012 clauses 6.3 and 6.4 (from memory): temperatures linear in resistance.
 */
export function sectionClimate(
  line: NodeLine,
  inside: AirMonths,
  outside: AirMonths,
  surfaceInside: number,
  surfaceOutside: number,
  skyOffset: number,
  known?: KnownClimate,
): SectionClimate {
  const climate: SectionClimate = {
    temperature: [],
    saturation: [],
    insideSurface: zeros(MONTHS_PER_YEAR),
    outsideSurface: zeros(MONTHS_PER_YEAR),
  };
  const total = surfaceInside + line.totalResistance + surfaceOutside;
  const last = line.count - 1;
  const { resistanceFrom, resistanceTo } = line;
  const alike = known === undefined ? null : nodesAlike(line, known.line);
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const insideTemperature = inside.temperature[month]!;
    const outsideTemperature = outside.temperature[month]! - skyOffset;
    const fallPerResistance = (insideTemperature - outsideTemperature) / total;
    const temperature = zeros(line.count);
    const saturation = zeros(line.count);
    for (let node = 0; node <= last; node += 1) {
      if (alike !== null && alike[node]! >= 0) {
        temperature[node] = known!.climate.temperature[month]![alike[node]!]!;
        saturation[node] = known!.climate.saturation[month]![alike[node]!]!;
        continue;
      }
      // The coldest of a group of nodes: the outer one where temperature falls outwards, else the inner one.
      const resistance = fallPerResistance > 0 ? resistanceTo[node]! : resistanceFrom[node]!;
      const coldest = insideTemperature - fallPerResistance * (surfaceInside + resistance);
      temperature[node] = coldest;
      saturation[node] = saturationPressure(coldest);
    }
    climate.temperature.push(temperature);
    climate.saturation.push(saturation);
    climate.insideSurface[month] = Math.min(inside.vapourPressure[month]!, saturation[0]!);
    climate.outsideSurface[month] = Math.min(outside.vapourPressure[month]!, saturation[last]!);
  }
  return climate;
}

/** For each node, the known node at the same resistance; −1 without one. */
function nodesAlike(line: NodeLine, known: NodeLine): Int32Array {
  const alike = wholeZeros(line.count);
  let other = 0;
  for (let node = 0; node < line.count; node += 1) {
    while (other < known.count && known.resistanceFrom[other]! < line.resistanceFrom[node]!) other += 1;
    const isAlike =
      other < known.count &&
      known.resistanceFrom[other] === line.resistanceFrom[node] &&
      known.resistanceTo[other] === line.resistanceTo[node];
    alike[node] = isAlike ? other : -1;
  }
  return alike;
}
