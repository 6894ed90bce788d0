import { MONTHS_PER_YEAR } from "../constants.ts";
import { zeros } from "../vapour/number-lists.ts";
import { type DrivenSection, emptyMonthState, secondsOfMonth, solveMonth } from "./month-balance.ts";

/** A month is wet if some node of the dry section gains more than this [kg/m²]: 1 mg/m² (this project's rule). */
export const WET_MONTH = 1e-6;

/** The effect of each month on a dry section. */
export interface DryYear {
  /** 1 for a wet month. */
  wet: Uint8Array;
  /** 1 for a month in which some node would gain anything at all. */
  adds: Uint8Array;
  /** Vapour pressure of the dry section [Pa], one list a month. */
  pressure: Float64Array[];
}

/**
 * Which months are wet: those in which some node of the dry section gains over 1 mg/m².
 *
 * @param section - nodes and climate
 * @returns marks by month, and the dry section's vapour pressure [Pa]
 * Source: ISO 13788:2012 clause 6.4 (from memory); the threshold is this project's.
 */
export function yearFromDry(section: DrivenSection): DryYear {
  const wet = new Uint8Array(MONTHS_PER_YEAR);
  const adds = new Uint8Array(MONTHS_PER_YEAR);
  const pressure: Float64Array[] = [];
  const nodes = section.sd.length;
  const state = emptyMonthState(nodes);
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    state.pressure = zeros(nodes);
    const bends = solveMonth(section, month, state);
    const most = bends ? greatestOf(state.gain) : 0;
    wet[month] = most * secondsOfMonth(month) > WET_MONTH ? 1 : 0;
    adds[month] = most > 0 ? 1 : 0;
    pressure.push(state.pressure);
  }
  return { wet, adds, pressure };
}

function greatestOf(values: Float64Array): number {
  let greatest = 0;
  for (let index = 0; index < values.length; index += 1) if (values[index]! > greatest) greatest = values[index]!;
  return greatest;
}

/**
 * Months in which the year may begin: every wet month that follows a dry one, in calendar order; January when all are wet.
 *
 * @param wet - marks by month
 * @returns month indices 0 to 11; empty when no month is wet
 * Source: ISO 13788:2012 clause 6.4 (from memory) takes the first wet month; trying all is this project's rule.
 * @example startingMonths([1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1]) // [10]
 */
export function startingMonths(wet: ArrayLike<number>): number[] {
  const starts: number[] = [];
  let anyDry = false;
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const before = (month + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR;
    if (wet[month] !== 1) anyDry = true;
    else if (wet[before] !== 1) starts.push(month);
  }
  return anyDry ? starts : [0];
}
