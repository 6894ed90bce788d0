/**
 * A row of bar characters, one for each value: a tiny picture of a year.
 *
 * @param values - finite numbers
 * @param least - value of the lowest bar
 * @param greatest - value of the highest bar, above the least
 * @returns one character a value; values beyond the ends take the end's bar
 * @example sparkline([0, 5, 10], 0, 10) // "▁▅█"
 */
export function sparkline(values: readonly number[], least: number, greatest: number): string {
  const highest = BARS.length - 1;
  return values
    .map((value) => {
      const height = ((value - least) / (greatest - least)) * highest;
      return BARS[Math.min(highest, Math.max(0, Math.round(height)))]!;
    })
    .join("");
}

const BARS = ["▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"];
