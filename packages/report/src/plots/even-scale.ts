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
 * @param options - an axis that runs upwards counts its pixels from the top; what is left free at both ends
 * @returns domain, ticks and the place of a value
 */
export function evenScale(
  values: readonly number[],
  length: number,
  { isUpright = false, margin = MARGIN }: ScaleOptions = {},
): EvenScale {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const range = areOne(values) ? Math.max(Math.abs(most), SMALLEST) * LEAST_RANGE : most - least;
  const step = roundStep((range * (1 + 2 * margin)) / USUAL_TICKS);
  const low = Math.floor((least - range * margin) / step + NOISE);
  const high = Math.ceil((most + range * margin) / step - NOISE);
  const from = least >= 0 ? Math.max(0, low) : low;
  const ticks = Array.from({ length: high - from + 1 }, (_, index) => withoutNoise((from + index) * step));
  const domain: [number, number] = [ticks[0]!, ticks[ticks.length - 1]!];
  const at = (value: number): number => {
    const share = (value - domain[0]) / (domain[1] - domain[0]);
    return (isUpright ? 1 - share : share) * length;
  };
  return { domain, ticks, at };
}

/** How a scale is laid out. */
export interface ScaleOptions {
  isUpright?: boolean;
  /** Free at both ends, as a share of the range. */
  margin?: number;
}

/**
 * Whether values are one but for their last digits: sums taken in another order differ there.
 *
 * @param values - at least one, finite
 * @returns true where a plot could not tell them apart
 * @example areOne([0.1 + 0.2, 0.3]) // true
 */
export function areOne(values: readonly number[]): boolean {
  const least = Math.min(...values);
  const most = Math.max(...values);
  return most - least <= Math.max(Math.abs(least), Math.abs(most)) * SAME_SHARE;
}

/** Values that differ by a smaller share are one. */
const SAME_SHARE = 1e-6;
const NOISE = 1e-9;
/** The range around a single nothing is made from this. */
const SMALLEST = 1e-3;

/** Free at both ends unless stated, as a share of the range. */
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
