import { MONTHS_PER_YEAR, SECONDS_PER_DAY, VAPOUR_PERMEABILITY_OF_AIR } from "../constants.ts";
import {
  carryThroughMonthDryingInside,
  type DrivenSection,
  emptyMonthState,
  type MonthState,
  WET_NODE,
} from "./month-balance.ts";

/** Dry again when no node holds more than this [kg/m²]. Source: ISO 13788:2012 clause 7 (from memory). */
export const DRY_AGAIN = 0.001;

/** Most years calculated [a]. Source: ISO 13788:2012 clause 7 (from memory). */
export const MOST_YEARS_OF_DRYING = 10;

/** Drying of a given amount of water in a section. */
export interface DryingRun {
  /** Days until no node holds more than 0.001 kg/m² [d]; null when not within ten years. */
  daysToDry: number | null;
  /** Water that left towards the room and towards the outer side, minus the water that entered there [kg/m²]. */
  toRoom: number;
  toFarSide: number;
  /** Most held by adjacent wet nodes other than the node of the water [kg/m²], and the one of them that held most. */
  mostHeldElsewhere: number;
  nodeElsewhere: number | null;
  /** Water held at each month's end and, last, at the moment the section is dry [kg/m²]: one list of nodes each. */
  held: Float64Array[];
}

/**
 * Follows water placed at a node until the section is dry again, or for ten years, with drying within the month.
 *
 * @param section - nodes and climate
 * @param node - where the water is placed; not a surface
 * @param amount - water [kg/m²], ≥ 0
 * @param startMonth - 0 to 11; the water is there from its beginning
 * @returns days to dry, where the water went and what was held meanwhile; amount = toRoom + toFarSide + water left
 * @throws RangeError when the node is a surface or the amount is negative or not a number
 * Source: ISO 13788:2012 clause 7 (from memory); solving again when a node runs dry is this project's rule.
 */
export function followTrappedWater(
  section: DrivenSection,
  node: number,
  amount: number,
  startMonth: number,
): DryingRun {
  const last = section.sd.length - 1;
  if (!(node > 0 && node < last))
    throw new RangeError(`trapped water must lie between the two surfaces, was at node ${node}`);
  if (!(amount >= 0)) throw new RangeError(`the amount of trapped water must be 0 kg/m² or more, was ${amount}`);
  const state = emptyMonthState(last + 1);
  state.held[node] = amount;
  const run: DryingRun = {
    daysToDry: null,
    toRoom: 0,
    toFarSide: 0,
    mostHeldElsewhere: 0,
    nodeElsewhere: null,
    held: [],
  };
  let seconds = 0;
  for (let step = 0; step < MOST_YEARS_OF_DRYING * MONTHS_PER_YEAR; step += 1) {
    const month = (startMonth + step) % MONTHS_PER_YEAR;
    let heldWhenDry: Float64Array | null = null;
    carryThroughMonthDryingInside(section, month, state, undefined, (stretch) => {
      if (heldWhenDry !== null) return;
      const untilDry = timeUntilDry(state, stretch);
      const counted = untilDry ?? stretch;
      addFlowsOut(run, section, state, counted);
      noteWaterElsewhere(run, state, node, counted);
      seconds += counted;
      if (untilDry !== null) heldWhenDry = state.held.map((held, index) => held + state.gain[index]! * counted);
    });
    if (heldWhenDry !== null) {
      run.held.push(heldWhenDry);
      run.daysToDry = seconds / SECONDS_PER_DAY;
      return run;
    }
    run.held.push(state.held.slice());
  }
  return run;
}

/** Time within a stretch at which every node is dry enough [s], or null; water changes linearly within the stretch. */
function timeUntilDry(state: MonthState, stretch: number): number | null {
  let from = 0;
  let until = stretch;
  for (let node = 0; node < state.held.length; node += 1) {
    const over = state.held[node]! - DRY_AGAIN;
    const gain = state.gain[node]!;
    if (over >= 0 && gain >= 0) return null;
    if (over >= 0) from = Math.max(from, over / -gain);
    else if (gain > 0) until = Math.min(until, -over / gain);
  }
  return from <= until ? from : null;
}

function addFlowsOut(run: DryingRun, { sd }: DrivenSection, { pressure }: MonthState, seconds: number): void {
  const last = sd.length - 1;
  const towardsRoom = (VAPOUR_PERMEABILITY_OF_AIR * (pressure[1]! - pressure[0]!)) / (sd[1]! - sd[0]!);
  const towardsFarSide =
    (VAPOUR_PERMEABILITY_OF_AIR * (pressure[last - 1]! - pressure[last]!)) / (sd[last]! - sd[last - 1]!);
  run.toRoom += towardsRoom * seconds;
  run.toFarSide += towardsFarSide * seconds;
}

/** Adjacent wet nodes are one zone; its water is taken at the end of a stretch. */
function noteWaterElsewhere(run: DryingRun, state: MonthState, source: number, seconds: number): void {
  let sum = 0;
  let most = 0;
  let fullest = 0;
  for (let node = 0; node < state.held.length; node += 1) {
    const held = node === source ? 0 : state.held[node]! + state.gain[node]! * seconds;
    if (held <= WET_NODE) {
      sum = 0;
      most = 0;
      continue;
    }
    sum += held;
    if (held > most) {
      most = held;
      fullest = node;
    }
    if (sum > run.mostHeldElsewhere) {
      run.mostHeldElsewhere = sum;
      run.nodeElsewhere = fullest;
    }
  }
}
