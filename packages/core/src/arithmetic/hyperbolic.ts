import { exponential } from "./exponential.ts";

/**
 * The hyperbolic cosine, the same to the last bit on every machine.
 *
 * @param angle - x [–]
 * @returns cosh x
 * Source: definition.
 * @example hyperbolicCosine(1) // 1.543081
 */
export function hyperbolicCosine(angle: number): number {
  return (exponential(angle) + exponential(-angle)) / 2;
}

/**
 * The hyperbolic tangent, the same to the last bit on every machine.
 *
 * @param angle - x [–]
 * @returns tanh x; near 0, where the exponentials would lose digits, by its continued fraction
 * Source: definition; continued fraction of tanh.
 * @example hyperbolicTangent(1) // 0.7615942
 */
export function hyperbolicTangent(angle: number): number {
  if (Math.abs(angle) > FLAT) return Math.sign(angle);
  const square = angle * angle;
  if (Math.abs(angle) > SMALL) return 1 - 2 / (exponential(2 * angle) + 1);
  return angle / (1 + square / (3 + square / (5 + square / (7 + square / (9 + square / 11)))));
}

/** Above the first, tanh is 1 to the last place [–]; up to the second, the continued fraction is used [–]. */
const FLAT = 20;
const SMALL = 0.5;
