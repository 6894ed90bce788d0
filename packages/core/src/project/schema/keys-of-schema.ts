import type { ProblemPath } from "../../problems/types.ts";
import { projectJsonSchema } from "./schema-project.ts";

interface JsonSchema {
  properties?: Record<string, JsonSchema>;
  additionalProperties?: JsonSchema | boolean;
  items?: JsonSchema;
  anyOf?: JsonSchema[];
}

/**
 * The keys that a project file may have at a place, taken from its JSON Schema.
 *
 * @param path - steps into the file's data
 * @returns keys in the schema's order; empty where none are fixed
 * @example keysAt(["build-ups", 0, "leak"]) // ["length", "width", "pressure"]
 */
export function keysAt(path: ProblemPath): string[] {
  wholeSchema ??= projectJsonSchema() as JsonSchema;
  let here: JsonSchema[] = [wholeSchema];
  for (const step of path) here = here.flatMap((schema) => stepInto(schema, step)).flatMap(forms);
  return here.flatMap(({ properties }) => Object.keys(properties ?? {}));
}

/** Made when first asked for: it never changes. */
let wholeSchema: JsonSchema | null = null;

function stepInto(schema: JsonSchema, step: string | number): JsonSchema[] {
  const { properties, additionalProperties, items } = schema;
  if (typeof step === "number") return items === undefined ? [] : [items];
  const property = properties?.[step];
  if (property !== undefined) return [property];
  return typeof additionalProperties === "object" ? [additionalProperties] : [];
}

function forms(schema: JsonSchema): JsonSchema[] {
  return schema.anyOf === undefined ? [schema] : schema.anyOf.flatMap(forms);
}
