/**
 * The exponential function, the same to the last bit on every machine. The engines' own functions differ in the last
 * bit, and the browser must give the command's result. It uses only sums and products, which are the same everywhere.
 *
 * @param power - x [–]
 * @returns eˣ; 0 below about −745.1, infinite above about 709.8, NaN for NaN
 * Source: eˣ = 2ᵏ·eʳ with x = k·ln 2 + r, k in sixteenths, and the power series of eʳ.
 * @example exponential(1) // 2.718281828459045
 */
export function exponential(power: number): number {
  if (power > HIGHEST) return Number.POSITIVE_INFINITY;
  if (power < LOWEST) return 0;
  const sixteenths = Math.round(power * SIXTEENTHS_IN_ONE);
  const rest = power - sixteenths * SIXTEENTH_HIGH - sixteenths * SIXTEENTH_LOW;
  const remainder = sixteenths & 15;
  const higher = 1 / 120 + rest * (1 / 720 + rest * (1 / 5040));
  const series = rest * (1 + rest * (1 / 2 + rest * (1 / 6 + rest * (1 / 24 + rest * higher))));
  const root = ROOTS_OF_TWO[remainder]!;
  return (root + root * series) * powerOfTwo(sixteenths >> 4);
}

/**
 * The natural logarithm, the same to the last bit on every machine.
 *
 * @param number - x, above 0 [–]
 * @returns ln x; −∞ for 0, NaN for a negative number or NaN
 * Source: ln x = k·ln 2 + 2·artanh s with s = (m − 1)/(m + 1), x = m·2ᵏ, and the power series of artanh.
 * @example logarithm(10) // 2.302585092994046
 */
export function logarithm(number: number): number {
  if (!(number > 0)) return number === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (number === Number.POSITIVE_INFINITY) return number;
  let mantissa = number;
  let doublings = 0;
  for (; mantissa > Math.SQRT2; doublings += 1) mantissa /= 2;
  for (; mantissa < Math.SQRT1_2; doublings -= 1) mantissa *= 2;
  const ratio = (mantissa - 1) / (mantissa + 1);
  const square = ratio * ratio;
  let series = 0;
  for (let term = LAST_ODD; term >= 3; term -= 2) series = square * (series + 1 / term);
  return doublings * LN2_HIGH + (2 * ratio + (2 * ratio * series + doublings * LN2_LOW));
}

/** An exact power of two; NaN for NaN. */
function powerOfTwo(doublings: number): number {
  return POWERS_OF_TWO[doublings + MOST_DOUBLINGS] ?? Number.NaN;
}

/** ln 2 in two parts; the first is short enough for its products with whole numbers to be exact. Source: definition. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
/** A sixteenth of each part; the division is exact. */
const SIXTEENTH_HIGH = LN2_HIGH / 16;
const SIXTEENTH_LOW = LN2_LOW / 16;
const SIXTEENTHS_IN_ONE = 16 / Math.LN2;
/** Two to the power of 0, 1/16, 2/16 … Source: definition. */
const ROOTS_OF_TWO: Float64Array = new Float64Array([
  1.0, 1.0442737824274138, 1.0905077326652577, 1.1387886347566916, 1.189207115002721, 1.241857812073484, 1.2968395546510096, 1.3542555469368927, Math.SQRT2, 1.4768261459394993, 1.5422108254079407, 1.6104903319492543, 1.681792830507429, 1.7562521603732995, 1.8340080864093424, 1.9152065613971474,
]); // biome-ignore format: a row of numbers
/** All powers of two that a number can hold; each is twice the one before. Source: definition. */
const MOST_DOUBLINGS = 1075;
const POWERS_OF_TWO: Float64Array = new Float64Array(2 * MOST_DOUBLINGS);
POWERS_OF_TWO[MOST_DOUBLINGS] = 1;
for (let power = 1; power < MOST_DOUBLINGS; power += 1) {
  POWERS_OF_TWO[MOST_DOUBLINGS + power] = POWERS_OF_TWO[MOST_DOUBLINGS + power - 1]! * 2;
  POWERS_OF_TWO[MOST_DOUBLINGS - power] = POWERS_OF_TWO[MOST_DOUBLINGS - power + 1]! / 2;
}
/** Terms after this one are below the last place. */
const LAST_ODD = 23;
/** Outside these powers the result overflows or falls to 0 [–]. */
const HIGHEST = 709.782712893384;
const LOWEST = -745.1332191019412;
