import type { ComparisonRow } from "@warmside/core";

/**
 * A row of a comparison by its number and name, as the plot has it.
 *
 * @param row - the build-up as drawn, or a variant
 * @param number - 0 for the build-up as drawn
 * @returns such as "2 deeper studs"
 */
export function rowName({ variant }: Pick<ComparisonRow, "variant">, number: number): string {
  return variant === null ? "0 as drawn" : `${number} ${variant}`;
}
