/** The formulas again, from the standards and from the page itself, for someone who has only the page. */

export const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
export const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** ISO 13788:2012 Annex E, as the hand check prints it (from memory) [°C] → [Pa]. */
export function saturation(temperature: number): number {
  return temperature >= 0
    ? 610.5 * Math.exp((17.269 * temperature) / (237.3 + temperature))
    : 610.5 * Math.exp((21.875 * temperature) / (265.5 + temperature));
}

/** The temperature at which air is saturated with a pressure, found by halving [Pa] → [°C]. */
export function dewPointOf(pressure: number): number {
  let [low, high] = [-60, 80];
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (saturation(middle) < pressure) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** fRsi that keeps the surface under 80 %: ISO 13788:2012 clause 5.3 (from memory); null where the room is hardly warmer. */
export function requiredFactor(inside: number, pressure: number, outside: number): number | null {
  if (!(inside - outside >= 3)) return null;
  return Math.max(0, (dewPointOf(pressure / 0.8) - outside) / (inside - outside));
}

/** What a floor lies on, by the symbols of the page: lengths [m], areas [m²], λ [W/(m·K)], R [m²·K/W], U [W/(m²·K)]. */
export type FloorGiven = (symbol: string) => number;

/**
 * U of a floor on the ground or over a void: ISO 13370:2017 (from memory).
 *
 * @param value - what the page prints for a symbol
 * @param resistance - R of the floor with its surfaces, as the page prints it
 * @param edge - insulation along the edge, level or upright; null without
 * @param isOverVoid - whether a void lies below
 */
export function floorTransmittance(
  value: FloorGiven,
  resistance: number,
  edge: "level" | "upright" | null,
  isOverVoid: boolean,
): number {
  const dimension = value("A") / (0.5 * value("P"));
  const ground = value("λg");
  const thicknessOf = (insulation: number): number => value("dw") + ground * (value("Rsi") + insulation + value("Rse"));
  if (isOverVoid) {
    const throughGround = uOfGround(ground, thicknessOf(value("Rg")), dimension);
    const throughWalls = (2 * value("h") * value("Uw")) / dimension;
    const byVents = (1450 * value("ε") * value("v") * value("fw")) / dimension;
    return 1 / (resistance + 1 / (throughGround + throughWalls + byVents));
  }
  const thickness = thicknessOf(resistance - value("Rsi") - value("Rse"));
  const whole = uOfGround(ground, thickness, dimension);
  if (edge === null) return whole;
  const added = (value("Rn") - value("dn") / ground) * ground;
  const depth = value("D") * (edge === "level" ? 1 : 2);
  const along = Math.log(depth / thickness + 1) - Math.log(depth / (thickness + added) + 1);
  return whole - ((2 / dimension) * ground * along) / Math.PI;
}

function uOfGround(ground: number, thickness: number, dimension: number): number {
  return thickness < dimension
    ? ((2 * ground) / (Math.PI * dimension + thickness)) * Math.log((Math.PI * dimension) / thickness + 1)
    : ground / (0.457 * dimension + thickness);
}

/** A node of the path: sd from the room surface [m]. */
export interface MonthAtNodes {
  saturation: number[];
  pressure: number[];
  /** gc at every node [g/m²]. */
  rates: number[];
  /** Ma at every node at the month's end [g/m²]. */
  held: number[];
}

/**
 * One month: pressure is saturation where water lies, and between such places the curve pulled tight under saturation
 * (ISO 13788:2012 clause 6, from memory); δ0 = 2·10⁻¹⁰ kg/(m·s·Pa).
 */
export function monthOf(
  sd: readonly number[],
  saturated: readonly number[],
  inside: number,
  outside: number,
  before: readonly number[],
  days: number,
): MonthAtNodes {
  const last = sd.length - 1;
  const limit = saturated.map((value, node) =>
    node === 0 ? Math.min(inside, value) : node === last ? Math.min(outside, value) : value,
  );
  const fixedNodes = [...sd.keys()].filter((node) => node === 0 || node === last || before[node]! > 0);
  const bends = [0];
  for (let index = 1; index < fixedNodes.length; index += 1)
    bends.push(...tightUnder(sd, limit, fixedNodes[index - 1]!, fixedNodes[index]!));
  const pressure = sd.map((at, node) => {
    const after = bends.findIndex((bend) => bend >= node);
    const [from, to] = [bends[Math.max(0, after - 1)]!, bends[after]!];
    if (to === node) return limit[node]!;
    return limit[from]! + ((limit[to]! - limit[from]!) * (at - sd[from]!)) / (sd[to]! - sd[from]!);
  });
  const perPascal = 2e-10 * days * 86_400 * 1000;
  const flow = (from: number, to: number): number => (perPascal * (limit[from]! - limit[to]!)) / (sd[to]! - sd[from]!);
  const rates = sd.map(() => 0);
  bends.slice(1, -1).forEach((bend, index) => {
    rates[bend] = Math.max(flow(bends[index]!, bend) - flow(bend, bends[index + 2]!), -before[bend]!);
  });
  return { saturation: [...saturated], pressure, rates, held: rates.map((rate, node) => before[node]! + rate) };
}

/** The nodes that the curve touches between two fixed ones, the second counted: the lower hull of the limits. */
function tightUnder(sd: readonly number[], limit: readonly number[], from: number, to: number): number[] {
  const hull = [from];
  for (let node = from + 1; node <= to; node += 1) {
    if (sd[node]! - sd[hull.at(-1)!]! < 1e-9) {
      if (node === to && hull.length > 1) hull[hull.length - 1] = node;
      continue;
    }
    while (hull.length > 1 && slope(hull.at(-2)!, hull.at(-1)!) >= slope(hull.at(-1)!, node)) hull.pop();
    hull.push(node);
  }
  return hull.slice(1);

  function slope(one: number, other: number): number {
    return (limit[other]! - limit[one]!) / (sd[other]! - sd[one]!);
  }
}

/** Equilibrium moisture content as the annex prints it, φ as a fraction, % of dry mass. */
export function woodMoisture(temperature: number, humidity: number): number {
  const t = Math.max(temperature, -1.1);
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = (0.805 + 0.000736 * t - 0.00000273 * t ** 2) * humidity;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  return ((100 * 18) / w) * (k / (1 - k) + (k1 * k + 2 * k1 * k2 * k ** 2) / (1 + k1 * k + k1 * k2 * k ** 2));
}
