/**
 * Relative humidity at a node of a solved profile.
 *
 * @param pressure - p of the nodes [Pa]
 * @param saturation - psat of the nodes [Pa]
 * @param node - node number
 * @returns φ as a fraction [–]; the profile keeps p ≤ psat, so the limit of 1 removes only rounding errors
 */
export function humidityAtNode(pressure: Float64Array, saturation: Float64Array, node: number): number {
  return Math.min(1, pressure[node]! / saturation[node]!);
}
