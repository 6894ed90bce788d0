import { comparable } from "./near-names.ts";

/**
 * Keys that a word of the trade may stand for.
 *
 * @param key - as the user wrote it
 * @param known - the keys allowed in its place
 * @returns those of them that it may stand for; empty where it is not another name for any
 * @example keysAlsoCalled("depth", ["material", "thickness"]) // ["thickness"]
 */
export function keysAlsoCalled(key: string, known: readonly string[]): string[] {
  return keysCalled(key).filter((candidate) => known.includes(candidate));
}

/** Keys, wherever they stand, that a word of the trade may stand for. */
export function keysCalled(key: string): readonly string[] {
  return OTHER_KEYS.get(comparable(key)) ?? [];
}

/** Keys, and the other names that may stand for them. Common practice. */
const NAMES: readonly [keys: readonly string[], names: string][] = [
  [["thickness"], "depth, thick, t, d"],
  [["spacing"], "centres, centers, crs, c/c"],
  [["element", "kind"], "type"],
  [["indoor", "room"], "inside, interior, internal, indoors"],
  [["room"], "from"],
  [["faces", "climate"], "outside, outdoor, outdoors, exterior"],
  [["climate"], "weather, location, place"],
  [["project", "name"], "title"],
  [["name"], "id"],
  [["build-ups"], "elements, walls, constructions"],
  [["conductivity"], "lambda, λ, k, k value, thermal conductivity"],
  [["vapour resistance factor"], "mu, μ, µ, mu value, vapor resistance factor"],
  [["vapour resistance"], "vapor resistance"],
  [["density"], "rho, ρ"],
  [["specific heat"], "heat capacity, specific heat capacity"],
  [["openings"], "ventilation area, vents"],
  [["ventilation"], "ventilated, vented"],
  [["air"], "cavity, gap, air gap, air layer, air space, airspace, void"],
  [["material"], "insulation, board, sheet, membrane, vapour layer, vapour barrier, vapor barrier, vcl, product"],
  [["target"], "u, u value"],
  [["resistance"], "r, r value"],
  [["pitch"], "slope, angle"],
  [["framing", "framings"], "studs, rafters, joists"],
  [["humidity"], "rh, relative humidity, moisture"],
  [["heating"], "set point, heat, heated"],
  [["cooling"], "cool, cooled"],
  [["temperature"], "temp"],
];

const OTHER_KEYS: ReadonlyMap<string, readonly string[]> = new Map(
  NAMES.flatMap(([keys, names]) => names.split(", ").map((name) => [name, keys])),
);
