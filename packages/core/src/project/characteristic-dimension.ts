/**
 * Characteristic dimension of a floor.
 *
 * @param area - A [m²], above 0
 * @param perimeter - exposed perimeter P [m], above 0
 * @returns B [m]
 * Source: ISO 13370:2017 equation 2 (from memory).
 * @example characteristicDimension(80, 36) // 4.4444
 */
export function characteristicDimension(area: number, perimeter: number): number {
  return area / (0.5 * perimeter);
}
