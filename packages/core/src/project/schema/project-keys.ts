import { MONTHS_PER_YEAR } from "../../constants.ts";
import { inSpeech } from "../../problems/wording.ts";
import { kindInWords, rangeInWords } from "../../quantities/read-quantity.ts";
import { type QuantityName, VOCABULARY } from "../../quantities/vocabulary.ts";
import { exampleOf, quantityIn } from "./example-of-key.ts";
import { projectKeySchema, sharedPart } from "./keys-of-schema.ts";
import { type KeySchema, quantityOfRef } from "./project-json-schema.ts";

/** One key of the project file, with what the reference says of it. */
export interface ProjectKey {
  /** The object it belongs to and its name, such as "layer/thickness"; at the top of the file, its name alone. */
  path: string;
  /** The object it belongs to, such as "layer" or "layer/fasteners"; empty at the top of the file. */
  thing: string;
  key: string;
  meaning: string;
  isNeeded: boolean;
  /** What may be written, in words. */
  takes: string;
  /** Its quantity, which has a unit and a range; null if it is not a quantity. */
  quantity: QuantityName | null;
  /** The unit that it is written with; null if it has none. */
  unit: string | null;
  /** The possible values, in words, with the unit; null if it is not a quantity. */
  range: string | null;
  /** What counts if it is left out, in words; null if nothing does. */
  usual: string | null;
  /** An example as the file has it; null if the value is an object with keys of its own. */
  example: string | null;
  /** The objects with keys of their own that it leads to. */
  leadsTo: readonly string[];
}

/**
 * Every key that a project file may have, made from its schema.
 *
 * @returns the keys, object by object in the schema's order; an object used in several places appears once
 */
export function projectKeys(): readonly ProjectKey[] {
  const keys: ProjectKey[] = [];
  const met = new Set<string>();
  const visit = (thing: string, { properties = {}, required = [] }: KeySchema): void => {
    if (met.has(thing)) return;
    met.add(thing);
    const inside: Inside[] = [];
    for (const [key, schema] of Object.entries(properties)) {
      if (isLayerKeyOfChange(schema)) continue;
      const path = thing === "" ? key : `${thing}/${key}`;
      const things = thingsIn(schema, path);
      keys.push(keyOf(thing, key, path, schema, required.includes(key), things));
      inside.push(...things);
    }
    for (const one of inside) visit(one.thing, one.schema);
  };
  visit("", projectKeySchema());
  return keys;
}

/** An object with keys of its own, and the part of the schema that has them. */
interface Inside {
  thing: string;
  schema: KeySchema;
}

function keyOf(
  thing: string,
  key: string,
  path: string,
  schema: KeySchema,
  isNeeded: boolean,
  things: readonly Inside[],
): ProjectKey {
  const quantity = quantityIn(schema);
  const example = exampleOf(schema);
  return {
    path,
    thing,
    key,
    meaning: schema.description ?? "",
    isNeeded,
    takes: formsInWords(schema, path),
    quantity,
    unit: quantity === null ? null : VOCABULARY[quantity].unit.written || null,
    range: quantity === null ? null : rangeInWords(quantity),
    usual: schema.usual ?? null,
    example: example === null ? null : `${key}: ${example}`,
    leadsTo: [...new Set(things.map((one) => one.thing))],
  };
}

/** Whether a key of a change is one that it takes from the layer; those are listed under the layer. */
function isLayerKeyOfChange({ $ref }: KeySchema): boolean {
  return $ref?.startsWith("#/$defs/layer/properties/") ?? false;
}

/** The objects that a part of the schema leads to; a shared one has its own name. */
function thingsIn(schema: KeySchema, path: string): Inside[] {
  const { $ref, anyOf, items, additionalProperties, properties } = schema;
  if ($ref !== undefined) return thingsIn(sharedPart($ref), nameOfShared($ref));
  if (properties !== undefined) return [{ thing: path, schema }];
  const inside = [...(anyOf ?? []), ...(items ? [items] : [])];
  if (typeof additionalProperties === "object") inside.push(additionalProperties);
  return inside.flatMap((one) => thingsIn(one, path));
}

function nameOfShared(ref: string): string {
  return ref.slice(ref.lastIndexOf("/") + 1).replace(/-(?!up)/g, " ");
}

/** The forms that a value may have, in words. */
function formsInWords(schema: KeySchema, path: string): string {
  const forms = (schema.anyOf ?? [schema]).map((form) => formInWords(form, path));
  return inSpeech(
    [...new Set(forms)].map((form) => form.replace(/,/g, ";")),
    "or",
  ).replace(/;/g, ",");
}

function formInWords(schema: KeySchema, path: string): string {
  const { $ref, enum: options, const: only, type, items, minItems, prefixItems, additionalProperties } = schema;
  const quantity = quantityOfRef($ref);
  if (quantity !== null) return kindInWords(quantity);
  if ($ref === "#/$defs/text") return "text";
  if (options !== undefined) return inSpeech(options.map(String), "or");
  if (only !== undefined) return String(only);
  if (minItems === MONTHS_PER_YEAR) return "twelve of these";
  if (prefixItems !== undefined) return `a pair of ${prefixItems.map((one) => formInWords(one, path)).join(" and ")}`;
  if (items !== undefined) return `a list of ${formsInWords(items, path)}`;
  if (type === "string" || Array.isArray(type)) return "text";
  if (type === "boolean") return "true or false";
  if (type === "integer") return "a whole number";
  if (typeof additionalProperties === "object")
    return `${nameOfThing(additionalProperties, path)} by names of your own`;
  return `keys of ${nameOfThing(schema, path)}`;
}

function nameOfThing(schema: KeySchema, path: string): string {
  const [first] = thingsIn(schema, path);
  return first === undefined ? "its own" : `\`${first.thing}\``;
}
