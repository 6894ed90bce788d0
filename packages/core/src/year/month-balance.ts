import { DAYS_IN_MONTH, SECONDS_PER_DAY } from "../constants.ts";
import { zeroMarks, zeros } from "../vapour/number-lists.ts";
import type { SectionClimate } from "../vapour/section-climate.ts";
import { solveVapourProfile } from "../vapour/vapour-profile.ts";

/** A node is wet while it holds more than this [kg/m²] (this project's rule, METHOD.md, Water in the year). */
export const WET_NODE = 1e-9;

/** A section ready to be solved: sd of its nodes, and its boundary conditions. */
export interface DrivenSection {
  sd: Float64Array;
  climate: SectionClimate;
}

/** State of the water in a month, updated by both month rules. */
export interface MonthState {
  /** Water held [kg/m²]: at the start on entry, at the end on return. */
  held: Float64Array;
  /** Vapour pressure of the last solution [Pa]. */
  pressure: Float64Array;
  /** Gain rates of the last solution [kg/(m²·s)]. */
  gain: Float64Array;
  isWet: Uint8Array;
  writtenOff: number;
}

/** An empty month state for a section with this number of nodes. */
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

/** Solves the month's profile for the nodes marked wet; returns whether it bends, so that nodes gain or lose. */
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
 * Carries the water through a month as the standard does: one solution for the month. Nodes below zero are then set to
 * zero, and the amount ignored is added to `writtenOff`.
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
 * Carries the water through a month with drying within the month: whenever a node runs dry, the rest of the month is
 * solved again. Water is conserved.
 *
 * @param section - nodes and climate
 * @param month - 0 to 11
 * @param state - water held; changed in place
 * @param seconds - duration [s], default the whole month
 * @param observe - called after each solution, before the water changes, with the time it covers [s]
 * @throws Error after 2n + 3 solutions for n nodes (a fault of the program)
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
