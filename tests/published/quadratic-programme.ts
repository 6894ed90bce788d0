import { solveQP } from "quadprog";

/** A month's vapour profile as a question: sd and psat of the nodes, p at the two surfaces, which nodes hold water. */
export interface Profile {
  sd: Float64Array;
  saturation: Float64Array;
  inside: number;
  outside: number;
  isWet: Uint8Array;
}

/**
 * The month's profile as a quadratic programme: least Σ (Δp)²/Δsd under p ≤ psat, wet nodes held at psat, the two
 * surfaces given. Solved by the package `quadprog` (lists from 1), in kPa and with conductances over their largest.
 */
export function byQuadraticProgramme({ sd, saturation, inside, outside, isWet }: Profile): Float64Array {
  const last = sd.length - 1;
  const inner = Array.from({ length: last - 1 }, (_, index) => index + 1);
  const pressure = Float64Array.of(...sd);
  pressure[0] = inside;
  pressure[last] = outside;
  if (inner.length === 0) return pressure;
  const conductance = Array.from({ length: last }, (_, part) => 1 / (sd[part + 1]! - sd[part]!));
  const largest = Math.max(...conductance);
  const scaled = conductance.map((value) => value / largest);
  const fromOne = (size: number): number[] => new Array(size + 1).fill(0);
  const quadratic = [fromOne(0), ...inner.map(() => fromOne(inner.length))];
  const linear = fromOne(inner.length);
  for (const node of inner) {
    quadratic[node]![node] = scaled[node - 1]! + scaled[node]!;
    if (node > 1) quadratic[node]![node - 1] = -scaled[node - 1]!;
    if (node < last - 1) quadratic[node]![node + 1] = -scaled[node]!;
  }
  linear[1]! += (scaled[0]! * inside) / 1000;
  linear[last - 1]! += (scaled[last - 1]! * outside) / 1000;
  // Constraints −p ≥ −psat, those of wet nodes first and as equalities.
  const ordered = [...inner.filter((node) => isWet[node] === 1), ...inner.filter((node) => isWet[node] !== 1)];
  const coefficients = [fromOne(0), ...inner.map((node) => [0, ...ordered.map((other) => (other === node ? -1 : 0))])];
  const bounds = [0, ...ordered.map((node) => -saturation[node]! / 1000)];
  const wetCount = inner.filter((node) => isWet[node] === 1).length;
  const { solution, message } = solveQP(quadratic, linear, coefficients, bounds, wetCount);
  if (message !== "") throw new Error(message);
  for (const node of inner) pressure[node] = 1000 * solution[node]!;
  return pressure;
}
