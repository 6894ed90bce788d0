/** A scale whose pixels are known before anything is drawn. */
export interface EvenScale {
  domain: [number, number];
  ticks: number[];
  /** Place of a value [px from the start]. */
  at: (value: number) => number;
}

/**
 * A scale over values, from and to round figures, so that words can be placed before the plot is drawn.
 *
 * @param values - at least one, finite
 * @param length - of the axis [px], above 0
 * @param isUpright - true for an axis that runs upwards: pixels count from the top
 * @returns domain, ticks and the place of a value
 */
export function evenScale(values: readonly number[], length: number, isUpright = false): EvenScale {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const range = most - least || Math.max(Math.abs(most), 1) * LEAST_RANGE;
  const step = roundStep((range * (1 + 2 * MARGIN)) / USUAL_TICKS);
  const low = Math.floor((least - range * MARGIN) / step);
  const high = Math.ceil((most + range * MARGIN) / step);
  const from = least >= 0 ? Math.max(0, low) : low;
  const ticks = Array.from({ length: high - from + 1 }, (_, index) => withoutNoise((from + index) * step));
  const domain: [number, number] = [ticks[0]!, ticks[ticks.length - 1]!];
  const at = (value: number): number => {
    const share = (value - domain[0]) / (domain[1] - domain[0]);
    return (isUpright ? 1 - share : share) * length;
  };
  return { domain, ticks, at };
}

/** Free at both ends, as a share of the range. */
const MARGIN = 0.08;
/** Range shown where all values are one, as a share of it. */
const LEAST_RANGE = 0.2;
const USUAL_TICKS = 5;

/** The least of 1, 2 and 5 times a power of ten that is no smaller. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const factor = [1, 2, 5, 10].find((one) => one * power >= least * (1 - 1e-9)) ?? 10;
  return withoutNoise(factor * power);
}

function withoutNoise(value: number): number {
  return Number(value.toPrecision(12));
}
