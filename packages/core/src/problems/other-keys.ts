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

/** Other names of keys, and the keys that each may stand for. Common practice. */
const OTHER_KEYS: ReadonlyMap<string, readonly string[]> = new Map([
  ["depth", ["thickness"]],
  ["thick", ["thickness"]],
  ["t", ["thickness"]],
  ["d", ["thickness"]],
  ["centres", ["spacing"]],
  ["centers", ["spacing"]],
  ["crs", ["spacing"]],
  ["c/c", ["spacing"]],
  ["type", ["element", "kind"]],
  ["inside", ["indoor", "room"]],
  ["interior", ["indoor", "room"]],
  ["internal", ["indoor", "room"]],
  ["indoors", ["indoor", "room"]],
  ["from", ["room"]],
  ["outside", ["faces", "climate"]],
  ["outdoor", ["faces", "climate"]],
  ["outdoors", ["faces", "climate"]],
  ["exterior", ["faces", "climate"]],
  ["weather", ["climate"]],
  ["location", ["climate"]],
  ["place", ["climate"]],
  ["title", ["project", "name"]],
  ["id", ["name"]],
  ["elements", ["build-ups"]],
  ["walls", ["build-ups"]],
  ["constructions", ["build-ups"]],
  ["lambda", ["conductivity"]],
  ["λ", ["conductivity"]],
  ["k", ["conductivity"]],
  ["k value", ["conductivity"]],
  ["thermal conductivity", ["conductivity"]],
  ["mu", ["vapour resistance factor"]],
  ["μ", ["vapour resistance factor"]],
  ["µ", ["vapour resistance factor"]],
  ["mu value", ["vapour resistance factor"]],
  ["vapor resistance factor", ["vapour resistance factor"]],
  ["vapor resistance", ["vapour resistance"]],
  ["rho", ["density"]],
  ["ρ", ["density"]],
  ["heat capacity", ["specific heat"]],
  ["specific heat capacity", ["specific heat"]],
  ["ventilation area", ["openings"]],
  ["vents", ["openings"]],
  ["ventilated", ["ventilation"]],
  ["vented", ["ventilation"]],
  ["cavity", ["air"]],
  ["gap", ["air"]],
  ["air gap", ["air"]],
  ["air layer", ["air"]],
  ["air space", ["air"]],
  ["airspace", ["air"]],
  ["void", ["air"]],
  ["insulation", ["material"]],
  ["board", ["material"]],
  ["sheet", ["material"]],
  ["membrane", ["material"]],
  ["vapour layer", ["material"]],
  ["vapour barrier", ["material"]],
  ["vapor barrier", ["material"]],
  ["vcl", ["material"]],
  ["product", ["material"]],
  ["u", ["target"]],
  ["u value", ["target"]],
  ["r", ["resistance"]],
  ["r value", ["resistance"]],
  ["slope", ["pitch"]],
  ["angle", ["pitch"]],
  ["studs", ["framing", "framings"]],
  ["rafters", ["framing", "framings"]],
  ["joists", ["framing", "framings"]],
  ["rh", ["humidity"]],
  ["relative humidity", ["humidity"]],
  ["moisture", ["humidity"]],
  ["set point", ["heating"]],
  ["heat", ["heating"]],
  ["heated", ["heating"]],
  ["cool", ["cooling"]],
  ["cooled", ["cooling"]],
  ["temp", ["temperature"]],
]);
