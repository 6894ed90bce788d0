import { type DrivenSection, type MonthState, markWetNodes, solveMonth } from "../../year/month-balance.ts";
import { humidityOfSlices, stretchedSd, type VaryingSection } from "./varying-section.ts";

/** Largest relative change of an sd in a settled round [–] (this project's rule). */
export const FIXED_POINT_TOLERANCE = 1e-8;

/** Rounds after which a month counts as not settled (this project's rule). */
export const MOST_ROUNDS = 1000;

/** Share of the way to the new sd taken in a round [–]: first and least; factors after a better and a worse round. */
const FIRST_STEP = 0.5;
const LEAST_STEP = 0.01;
const GROWTH_AFTER_BETTER = 1.1;
const CUT_AFTER_WORSE = 0.5;

/** A month's resistances, settled or not. */
export interface FixedPoint {
  driven: DrivenSection;
  /** sd [m] and mean relative humidity [–] of the slices. */
  sliceSd: Float64Array;
  humidity: Float64Array;
  rounds: number;
  converged: boolean;
}

/**
 * A month's resistances at the fixed point: each layer's sd fits the mean humidity that results from it, with the water
 * held at the month's beginning. The state's pressures and gains are those of the fixed point.
 *
 * @param section - the section
 * @param month - 0 to 11
 * @param state - water held, which does not change; its wet marks, pressures and gains do
 * @param start - initial sd of the slices [m]
 * @returns sd, humidity, rounds and whether it settled
 * Source: this project's rule (METHOD.md, Vapour resistance of layers): damped iteration, with a smaller step after a
 *   worse round.
 */
export function fixedPointOfMonth(
  section: VaryingSection,
  month: number,
  state: MonthState,
  start: Float64Array,
): FixedPoint {
  markWetNodes(state);
  const sliceSd = start.slice();
  let step = FIRST_STEP;
  let changeBefore = Number.POSITIVE_INFINITY;
  for (let rounds = 1; ; rounds += 1) {
    const driven = { sd: stretchedSd(section, sliceSd), climate: section.climate };
    solveMonth(driven, month, state);
    const humidity = humidityOfSlices(section, month, state.pressure);
    const wanted = sliceSd.map((sd, slice) => sdWanted(section, slice, humidity[slice]!, sd));
    const change = greatestChange(sliceSd, wanted);
    const converged = change <= FIXED_POINT_TOLERANCE;
    if (converged || rounds === MOST_ROUNDS) return { driven, sliceSd, humidity, rounds, converged };
    step =
      change < changeBefore ? Math.min(1, step * GROWTH_AFTER_BETTER) : Math.max(LEAST_STEP, step * CUT_AFTER_WORSE);
    changeBefore = change;
    for (let slice = 0; slice < sliceSd.length; slice += 1) {
      sliceSd[slice] = sliceSd[slice]! + step * (wanted[slice]! - sliceSd[slice]!);
    }
  }
}

/** A slice too thin to have its own humidity keeps its sd. */
function sdWanted({ follow }: VaryingSection, slice: number, humidity: number, sd: number): number {
  const rule = follow[slice]!;
  return rule === null || Number.isNaN(humidity) ? sd : rule(humidity);
}

function greatestChange(from: Float64Array, to: Float64Array): number {
  return from.reduce((most, sd, slice) => (sd > 0 ? Math.max(most, Math.abs(to[slice]! - sd) / sd) : most), 0);
}
