import { DAYS_IN_MONTH, SECONDS_PER_DAY } from "../constants.ts";
import { zeroMarks, zeros } from "../vapour/number-lists.ts";
import type { SectionClimate } from "../vapour/section-climate.ts";
import { solveVapourProfile } from "../vapour/vapour-profile.ts";

/** A node is wet while it holds more than this [kg/m²] (this project's rule, METHOD.md, Water in the year). */
export const WET_NODE = 1e-9;

/** A section as the months need it: sd of its nodes, and its climate. */
export interface DrivenSection {
  sd: Float64Array;
  climate: SectionClimate;
}

/** The state of the water, changed in place by the two ways of carrying it through a month. */
export interface MonthState {
  /** Water held [kg/m²]: at the start on entry, at the end on return. */
  held: Float64Array;
  /** Vapour pressure with which the month began [Pa]. */
  pressure: Float64Array;
  /** Gain rates of the last solution [kg/(m²·s)]. */
  gain: Float64Array;
  isWet: Uint8Array;
  writtenOff: number;
}

/** An empty month state for a section of so many nodes. */
export function emptyMonthState(nodes: number): MonthState {
  return {
    held: zeros(nodes),
    pressure: zeros(nodes),
    gain: zeros(nodes),
    isWet: zeroMarks(nodes),
    writtenOff: 0,
  };
}

/** Seconds of a calendar month [s]. */
export function secondsOfMonth(month: number): number {
  return DAYS_IN_MONTH[month]! * SECONDS_PER_DAY;
}

/** Solves the month's profile for the water held now. Returns whether it bends, that is, whether any node gains or loses water. */
export function solveMonth(section: DrivenSection, month: number, state: MonthState): boolean {
  const { climate, sd } = section;
  return solveVapourProfile(
    sd,
    climate.saturation[month]!,
    climate.insideSurface[month]!,
    climate.outsideSurface[month]!,
    state.isWet,
    state.pressure,
    state.gain,
  );
}

/**
 * Carries the water through a month as the standard does: one solution for the month, then nodes under zero are set to
 * zero, and what that writes off is added up.
 *
 * @param section - nodes and climate
 * @param month - 0 to 11
 * @param state - water held; changed in place
 * Source: ISO 13788:2012 clause 6.4 (from memory).
 */
export function carryThroughMonth(section: DrivenSection, month: number, state: MonthState): void {
  markWetNodes(state);
  solveMonth(section, month, state);
  const seconds = secondsOfMonth(month);
  const { held, gain } = state;
  for (let node = 0; node < held.length; node += 1) {
    if (gain[node] === 0) continue;
    const atEnd = held[node]! + gain[node]! * seconds;
    if (atEnd < 0) state.writtenOff -= atEnd;
    held[node] = Math.max(0, atEnd);
  }
}

/**
 * Carries the water through a month with drying inside the month: to the first moment a node runs dry or the month
 * ends, then solved again. Water is conserved.
 *
 * @param section - nodes and climate
 * @param month - 0 to 11
 * @param state - water held; changed in place
 * @param seconds - length of the time to carry through [s], default the whole month
 * @param observe - called before each stretch between two solutions is carried out, with its length [s]
 * @throws Error when nodes run dry more often than there are nodes (a fault of the program)
 * Source: beyond ISO 13788:2012 (this project's rule, METHOD.md, Drying within the month).
 */
export function carryThroughMonthDryingInside(
  section: DrivenSection,
  month: number,
  state: MonthState,
  seconds: number = secondsOfMonth(month),
  observe?: (stretch: number) => void,
): void {
  let remaining = seconds;
  const mostRounds = 2 * state.held.length + 2;
  markWetNodes(state);
  for (let round = 0; remaining > 0; round += 1) {
    if (round > mostRounds)
      throw new Error("a month ended without settling: nodes ran dry more often than there are nodes");
    solveMonth(section, month, state);
    const { step, driest } = timeToFirstDry(state, remaining);
    observe?.(step);
    for (let node = 0; node < state.held.length; node += 1) {
      if (state.gain[node] !== 0) state.held[node] = Math.max(0, state.held[node]! + state.gain[node]! * step);
    }
    if (driest >= 0) state.held[driest] = 0;
    markWetNodes(state);
    remaining = driest >= 0 ? remaining - step : 0;
  }
}

function timeToFirstDry(state: MonthState, remaining: number): { step: number; driest: number } {
  let step = remaining;
  let driest = -1;
  for (let node = 0; node < state.held.length; node += 1) {
    const gain = state.gain[node]!;
    if (state.isWet[node] === 1 && gain < 0) {
      const time = state.held[node]! / -gain;
      if (time < step) {
        step = time;
        driest = node;
      }
    }
  }
  return { step, driest };
}

/** A node that holds water is wet. */
export function markWetNodes({ held, isWet }: MonthState): void {
  for (let node = 0; node < held.length; node += 1) isWet[node] = held[node]! > WET_NODE ? 1 : 0;
}
