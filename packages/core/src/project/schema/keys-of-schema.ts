import type { ProblemPath } from "../../problems/types.ts";
import { type KeySchema, schemaOfKeys } from "./project-json-schema.ts";

/**
 * The keys that a project file may have at a place, taken from its JSON Schema.
 *
 * @param path - steps into the file's data
 * @returns keys in the schema's order; empty where none are fixed
 * @example keysAt(["build-ups", 0, "leak"]) // ["length", "width", "pressure"]
 */
export function keysAt(path: ProblemPath): string[] {
  return formsAt(path).flatMap(({ properties }) => Object.keys(properties ?? {}));
}

/**
 * For a key that means nothing at a place: the keys at that place which it may stand under.
 *
 * @param key - the key
 * @param path - steps into the file's data
 * @returns keys in the schema's order; empty where it belongs under none
 * @example keysAbove("soil", ["build-ups", 0]) // ["ground", "void"]
 */
export function keysAbove(key: string, path: ProblemPath): string[] {
  return formsAt(path).flatMap((form) => keysBelow(form).get(key) ?? []);
}

/** For each key one level below a form, the keys of the form that it stands under. */
function keysBelow(form: KeySchema): ReadonlyMap<string, string[]> {
  const known = keysBelowForms.get(form);
  if (known !== undefined) return known;
  const above = new Map<string, string[]>();
  for (const [key, schema] of Object.entries(form.properties ?? {}))
    for (const below of formsOf(schema).flatMap(({ properties }) => Object.keys(properties ?? {})))
      above.set(below, [...(above.get(below) ?? []), key]);
  keysBelowForms.set(form, above);
  return above;
}

/** Made on first use; the schema never changes. */
const keysBelowForms = new WeakMap<KeySchema, ReadonlyMap<string, string[]>>();

/**
 * The forms that a project file may have at a place.
 *
 * @param path - steps into the file's data
 * @returns parts of the project's JSON Schema; none where it has nothing for the place
 */
export function formsAt(path: ProblemPath): KeySchema[] {
  let here = formsOf(projectKeySchema());
  for (const step of path) here = here.flatMap((schema) => stepInto(schema, step)).flatMap(formsOf);
  return here;
}

/** The schema of a project file, with the usual values and examples of its keys. */
export function projectKeySchema(): KeySchema {
  wholeSchema ??= schemaOfKeys();
  return wholeSchema;
}

/** Made on first use; it never changes. */
let wholeSchema: KeySchema | null = null;

function stepInto(schema: KeySchema, step: string | number): KeySchema[] {
  const { properties, additionalProperties, items } = schema;
  if (typeof step === "number") return items === undefined ? [] : [items];
  if (properties !== undefined && Object.hasOwn(properties, step)) return [properties[step]!];
  return typeof additionalProperties === "object" ? [additionalProperties] : [];
}

/**
 * The alternative forms that a part of the schema allows, with shared parts looked up.
 *
 * @param schema - a part of the project's JSON Schema
 * @returns each alternative, or the part itself if it has none
 */
export function formsOf(schema: KeySchema): KeySchema[] {
  if (schema.$ref !== undefined) return formsOf(sharedPart(schema.$ref));
  return schema.anyOf === undefined ? [schema] : schema.anyOf.flatMap(formsOf);
}

/**
 * The part of the schema that a reference leads to.
 *
 * @param ref - for example "#/$defs/layer"
 * @returns the part of the project's JSON Schema
 */
export function sharedPart(ref: string): KeySchema {
  const steps = ref.split("/").slice(1).map(decodeURIComponent);
  const part = steps.reduce<unknown>((here, step) => (here as Record<string, unknown>)[step], projectKeySchema());
  return part as KeySchema;
}
