import { MONTHS_PER_YEAR } from "../../constants.ts";
import { decidingYear } from "../../year/deciding-year.ts";
import { carryThroughMonth, emptyMonthState, type MonthState, secondsOfMonth } from "../../year/month-balance.ts";
import { NOTHING_HELD, sumOf } from "../../year/section-year.ts";
import type { WaterOfYear } from "../../year/types.ts";
import { startingMonths, WET_MONTH } from "../../year/wet-months.ts";
import { type FixedPoint, fixedPointOfMonth } from "./fixed-point.ts";
import type { VaryingSection } from "./varying-section.ts";

/** A year in which every month has its own resistances. */
export interface VaryingYear extends Omit<WaterOfYear, "dryBy"> {
  writtenOff: number;
  /** The months' fixed points in calendar order, and water held at their ends [kg/m²]. */
  months: FixedPoint[];
  held: Float64Array[];
}

/**
 * The standard's year with resistances by humidity: starting month and monthly steps as usual, each month with its own
 * fixed point.
 *
 * @param section - the section
 * @returns verdict and months of the governing year
 * Source: ISO 13788:2012 clause 6.4 (from memory) for the year; resistance by humidity is this project's rule.
 */
export function varyingYear(section: VaryingSection): VaryingYear {
  const nodes = section.intervalSd.length + 1;
  const own = Float64Array.from(section.slices, ({ sd }) => sd);
  const dry = Array.from({ length: MONTHS_PER_YEAR }, (_, month) => {
    const state = emptyMonthState(nodes);
    const point = fixedPointOfMonth(section, month, state, own);
    return { point, isWet: state.gain.some((gain) => gain * secondsOfMonth(month) > WET_MONTH) };
  });
  const starts = startingMonths(dry.map(({ isWet }) => (isWet ? 1 : 0)));
  return (
    decidingYear(starts, (start) => runFrom(section, start, own), 0) ??
    dryYear(
      dry.map(({ point }) => point),
      nodes,
    )
  );
}

function runFrom(section: VaryingSection, startMonth: number, own: Float64Array): VaryingYear {
  const state: MonthState = emptyMonthState(section.intervalSd.length + 1);
  const months: FixedPoint[] = new Array(MONTHS_PER_YEAR);
  const held: Float64Array[] = new Array(MONTHS_PER_YEAR);
  let peak = 0;
  let peakMonth: number | null = null;
  for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
    const month = (startMonth + step) % MONTHS_PER_YEAR;
    const point = fixedPointOfMonth(section, month, state, own);
    carryThroughMonth(point.driven, month, state);
    months[month] = point;
    held[month] = state.held.slice();
    const total = sumOf(state.held);
    if (total > peak) {
      peak = total;
      peakMonth = month;
    }
  }
  const carriedOver = sumOf(state.held);
  const verdict = carriedOver <= NOTHING_HELD ? "dries out" : "stays wet";
  return { verdict, startMonth, peak, peakMonth, carriedOver, writtenOff: state.writtenOff, months, held };
}

function dryYear(months: FixedPoint[], nodes: number): VaryingYear {
  const held = months.map(() => new Float64Array(nodes));
  return { verdict: "dry", startMonth: null, peak: 0, peakMonth: null, carriedOver: 0, writtenOff: 0, months, held };
}
