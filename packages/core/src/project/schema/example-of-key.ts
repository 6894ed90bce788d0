import type { QuantityName } from "../../quantities/quantity-names.ts";
import { VOCABULARY } from "../../quantities/vocabulary.ts";
import { type KeySchema, quantityOfRef } from "./project-json-schema.ts";

/**
 * An example of a value as a project file has it: the schema's own, else that of its quantity, the first of its words
 * or true.
 *
 * @param schema - what the schema tells of the value
 * @returns as YAML; null where the value is a thing with keys of its own, or a text without an example
 * @example exampleOf({ type: "boolean" }) // "true"
 */
export function exampleOf(schema: KeySchema): string | null {
  const example = schema.example ?? exampleOfKind(schema);
  return example === undefined ? null : inYaml(example);
}

/**
 * A thing in braces, with the keys that it needs, or its first two where it needs none.
 *
 * @param schema - the part of the schema that tells the thing
 * @returns as YAML; null where one of these has no example
 * @example exampleInBraces({ required: ["tape"], properties: { tape: { type: "boolean" } } }) // "{ tape: true }"
 */
export function exampleInBraces({ properties = {}, required = [] }: KeySchema): string | null {
  const shown = required.length > 0 ? required : Object.keys(properties).slice(0, 2);
  const examples = shown.map((key) => ({ key, example: exampleOf(properties[key]!) }));
  if (examples.length === 0 || examples.some(({ example }) => example === null)) return null;
  return `{ ${examples.map(({ key, example }) => `${key}: ${example}`).join(", ")} }`;
}

/** The quantity that a value is, or may be; null where it is none. */
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
