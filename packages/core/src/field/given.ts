import { MONTHS_PER_YEAR } from "../constants.ts";
import { requireFinite, requireNumber, requireNumbers, requireObject } from "../require.ts";

/** Rejects a value that is not a scene with air on two sides. */
export function requireScene(value: unknown): void {
  requireObject(value, "scene", ["stuffs", "airs", "rectangles"]);
  const { airs, rectangles } = value as Readonly<Record<string, readonly unknown[]>>;
  if (airs!.length < 2 || rectangles!.length < 3) throw new RangeError("scene must have stuff between two airs");
}

/** Rejects a value that is not a mesh. */
export function requireMesh(value: unknown): void {
  requireObject(value, "mesh", ["xs", "ys", "columns", "rows", "cells"]);
}

/** Rejects a value that is not a rule for a mesh. */
export function requireMeshRule(value: unknown): void {
  requireObject(value, "rule", ["first", "growth", "greatest", "leastSteps"]);
  const { first, growth, greatest, leastSteps } = value as Readonly<Record<string, unknown>>;
  requireNumber(first, "first", "m", 1e-6, 10);
  requireNumber(growth, "growth", "", 1, 100);
  requireNumber(greatest, "greatest", "m", 1e-6, 100);
  requireNumber(leastSteps, "leastSteps", "", 1, 1000);
}

/** Rejects a value that is not a field. */
export function requireField(value: unknown): void {
  requireObject(value, "field", ["scene", "mesh", "net", "shares", "conductance"]);
}

/** Rejects a value that is not a Float64Array with a number for every node of a field or mesh. */
export function requireOfNodes(value: unknown, name: string, nodes: number): void {
  if (!(value instanceof Float64Array)) throw new TypeError(`${name} must be a Float64Array with a number a node`);
  if (value.length !== nodes)
    throw new RangeError(`${name} must have ${nodes} numbers, one a node, had ${value.length}`);
}

/** Rejects what is not twelve months of air. Not by `given/`, which would make this entry half as large again. */
export function requireAirMonths(value: unknown): void {
  requireObject(value, "each of airs", ["temperature", "vapourPressure"]);
  const { temperature, vapourPressure } = value as Readonly<Record<string, unknown>>;
  requireNumbers(temperature, "temperature", "°C", MONTHS_PER_YEAR);
  requireNumbers(vapourPressure, "vapour pressure", "Pa", MONTHS_PER_YEAR);
}

/** Rejects a value that is not a side of a junction. */
export function requireSide(value: unknown, name: string): void {
  requireResistances(value, name);
  requireObject(value, name, ["plies", "frame", "member", "thickness"]);
}

/** Rejects a value without the resistances straight through a side. */
export function requireResistances(value: unknown, name: string): void {
  requireObject(value, name, ["resistance", "inside", "outside", "outsideForMoisture"]);
  for (const [key, resistance] of Object.entries(value as object))
    if (typeof resistance === "number") requireFinite(resistance, `${name}.${key}`);
}

/** Rejects a value without surface resistances of both sides of a junction. */
export function requireJunctionSurfaces(value: unknown): void {
  requireObject(value, "surfaces", ["inside", "outside"]);
  const { inside, outside } = value as Readonly<Record<string, unknown>>;
  requireObject(inside, "surfaces.inside", ["level", "upright"]);
  requireObject(outside, "surfaces.outside", ["level", "upright"]);
}

/** Rejects a value that a cell cannot be drawn from. */
export function requireCellQuestion(value: unknown): void {
  requireObject(value, "question", ["counted", "framing", "surfaces", "sheets"]);
  const { framing, surfaces } = value as Readonly<Record<string, unknown>>;
  requireObject(framing, "question.framing", ["name", "material", "origin"]);
  requireObject(surfaces, "question.surfaces", ["inside", "outside"]);
}
