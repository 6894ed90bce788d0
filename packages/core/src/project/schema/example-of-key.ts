import { type QuantityName, VOCABULARY } from "../../quantities/vocabulary.ts";
import { type KeySchema, quantityOfRef } from "./project-json-schema.ts";

/**
 * An example of a value, as a project file has it: from the schema, or else from its quantity, the first of its words,
 * or true.
 *
 * @param schema - the part of the schema for the value
 * @returns the example in YAML; null for an object with keys of its own, or for a text without an example
 * @example exampleOf({ type: "boolean" }) // "true"
 */
export function exampleOf(schema: KeySchema): string | null {
  const example = schema.example ?? exampleOfKind(schema);
  return example === undefined ? null : inYaml(example);
}

/**
 * An example of an object in braces: with the keys that it needs, or with its first two if it needs none.
 *
 * @param schema - the part of the schema for the object
 * @returns the example in YAML; null if one of these keys has no example
 * @example exampleInBraces({ required: ["tape"], properties: { tape: { type: "boolean" } } }) // "{ tape: true }"
 */
export function exampleInBraces({ properties = {}, required = [] }: KeySchema): string | null {
  const shown = required.length > 0 ? required : Object.keys(properties).slice(0, 2);
  const examples = shown.map((key) => ({ key, example: exampleOf(properties[key]!) }));
  if (examples.length === 0 || examples.some(({ example }) => example === null)) return null;
  return `{ ${examples.map(({ key, example }) => `${key}: ${example}`).join(", ")} }`;
}

/** The quantity that a value is, or may be; null if none. */
export function quantityIn({ $ref, anyOf }: KeySchema): QuantityName | null {
  return quantityOfRef($ref) ?? anyOf?.map(quantityIn).find((one) => one !== null) ?? null;
}

function exampleOfKind(schema: KeySchema): unknown {
  const quantity = quantityIn(schema);
  if (quantity !== null) return VOCABULARY[quantity].example;
  const [form] = schema.anyOf ?? [schema];
  if (form?.enum !== undefined) return form.enum[0];
  return form?.const ?? (form?.type === "boolean" ? true : undefined);
}

function inYaml(value: unknown): string {
  return Array.isArray(value) ? `[${value.map(inYaml).join(", ")}]` : String(value);
}
