import { solveQP } from "quadprog";
import {
  DAYS_IN_MONTH,
  MONTHS_PER_YEAR,
  SECONDS_PER_DAY,
  VAPOUR_PERMEABILITY_OF_AIR,
} from "../../packages/core/src/constants.ts";
import { type DrivenSection, WET_NODE } from "../../packages/core/src/year/month-balance.ts";
import { startingMonths, WET_MONTH } from "../../packages/core/src/year/wet-months.ts";

/**
 * The standard's year of a section with every month's profile from a general-purpose solver of quadratic programmes
 * (package `quadprog`): the same rules, nothing of our own solver.
 *
 * @param section - nodes and climate
 * @returns greatest month-end total and what is left [kg/m²]; null and zeros from a dry section
 * Source: ISO 13788:2012 clause 6.4 (from memory); the profile is the least Σ (Δp)²/Δsd under p ≤ psat.
 */
export function yearByQuadprog(section: DrivenSection): {
  startMonth: number | null;
  peak: number;
  carriedOver: number;
} {
  const nodes = section.sd.length;
  const nothing = new Float64Array(nodes);
  const wet = Uint8Array.from({ length: MONTHS_PER_YEAR }, (_, month) =>
    gains(section, month, nothing).some((gain) => gain * secondsOf(month) > WET_MONTH) ? 1 : 0,
  );
  let wettest = { startMonth: null as number | null, peak: 0, carriedOver: 0 };
  for (const startMonth of startingMonths(wet)) {
    const held = new Float64Array(nodes);
    let peak = 0;
    for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
      const month = (startMonth + step) % MONTHS_PER_YEAR;
      const gain = gains(section, month, held);
      for (let node = 0; node < nodes; node += 1)
        held[node] = Math.max(0, held[node]! + gain[node]! * secondsOf(month));
      peak = Math.max(peak, total(held));
    }
    const carriedOver = total(held);
    if (carriedOver <= WET_MONTH) return { startMonth, peak, carriedOver };
    if (wettest.startMonth === null || carriedOver > wettest.carriedOver) wettest = { startMonth, peak, carriedOver };
  }
  return wettest;
}

function secondsOf(month: number): number {
  return DAYS_IN_MONTH[month]! * SECONDS_PER_DAY;
}

function total(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** What every node gains in a month [kg/(m²·s)]; lists of the solver count from 1, pressures in kPa. */
function gains({ sd, climate }: DrivenSection, month: number, held: Float64Array): Float64Array {
  const last = sd.length - 1;
  const inner = Array.from({ length: last - 1 }, (_, index) => index + 1);
  const conductance = Array.from({ length: last }, (_, part) => 1 / (sd[part + 1]! - sd[part]!));
  const largest = Math.max(...conductance);
  const fromOne = (size: number): number[] => new Array(size + 1).fill(0);
  const quadratic = [fromOne(0), ...inner.map(() => fromOne(inner.length))];
  const linear = fromOne(inner.length);
  for (const node of inner) {
    quadratic[node]![node] = (conductance[node - 1]! + conductance[node]!) / largest;
    if (node > 1) quadratic[node]![node - 1] = -conductance[node - 1]! / largest;
    if (node < last - 1) quadratic[node]![node + 1] = -conductance[node]! / largest;
  }
  linear[1]! += (conductance[0]! * climate.insideSurface[month]!) / largest / PASCALS_PER_KILOPASCAL;
  linear[last - 1]! += (conductance[last - 1]! * climate.outsideSurface[month]!) / largest / PASCALS_PER_KILOPASCAL;
  const isWet = (node: number): boolean => held[node]! > WET_NODE;
  const ordered = [...inner.filter(isWet), ...inner.filter((node) => !isWet(node))];
  const coefficients = [fromOne(0), ...inner.map((node) => [0, ...ordered.map((other) => (other === node ? -1 : 0))])];
  const bounds = [0, ...ordered.map((node) => -climate.saturation[month]![node]! / PASCALS_PER_KILOPASCAL)];
  const { solution, message } = solveQP(quadratic, linear, coefficients, bounds, inner.filter(isWet).length);
  if (message !== "") throw new Error(message);
  const pressure = Float64Array.from(sd, (_, node) => (solution[node] ?? 0) * PASCALS_PER_KILOPASCAL);
  pressure[0] = climate.insideSurface[month]!;
  pressure[last] = climate.outsideSurface[month]!;
  const gain = new Float64Array(last + 1);
  for (const node of inner) {
    const before = conductance[node - 1]! * (pressure[node]! - pressure[node - 1]!);
    const after = conductance[node]! * (pressure[node + 1]! - pressure[node]!);
    // The solver leaves the balance of a free node at a millionth of the flow: that is nothing.
    const atSaturation = isWet(node) || pressure[node]! > climate.saturation[month]![node]! - 1e-6;
    gain[node] = atSaturation ? VAPOUR_PERMEABILITY_OF_AIR * (after - before) : 0;
  }
  return gain;
}

const PASCALS_PER_KILOPASCAL = 1000;
