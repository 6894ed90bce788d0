import * as z from "zod";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { type QuantityName, VOCABULARY } from "../../quantities/vocabulary.ts";
import { LAYER_FIELDS } from "./schema-layer.ts";
import { projectSchema } from "./schema-project.ts";
import { LONGEST_TEXT } from "./schema-values.ts";

/** The parts of JSON Schema that are used to describe a project file. */
export interface KeySchema {
  $ref?: string;
  $defs?: Record<string, KeySchema>;
  type?: string | string[];
  description?: string;
  default?: unknown;
  examples?: unknown[];
  enum?: unknown[];
  const?: unknown;
  minLength?: number;
  maxLength?: number;
  minItems?: number;
  properties?: Record<string, KeySchema>;
  required?: string[];
  additionalProperties?: KeySchema | boolean;
  items?: KeySchema;
  prefixItems?: KeySchema[];
  anyOf?: KeySchema[];
  /** What counts if the key is left out, in words. It becomes `default` in the JSON Schema, if it can be written so. */
  usual?: string;
  /** Becomes `examples` in the JSON Schema. */
  example?: unknown;
}

/**
 * The JSON Schema of a project file, as committed beside the package.
 *
 * @returns the schema of what may be written; each shared part appears once
 */
export function projectJsonSchema(): Record<string, unknown> {
  return schemaOfKeys(tellAsJsonSchema) as Record<string, unknown>;
}

/**
 * The schema of a project file, with the usual values and examples of its keys.
 *
 * @param tell - called last on each part, which it may change
 * @returns the schema; each shared part appears once, under `$defs`
 */
export function schemaOfKeys(tell: (schema: KeySchema) => void = () => {}): KeySchema {
  const schema = z.toJSONSchema(projectSchema, {
    io: "input",
    unrepresentable: "any",
    override: ({ jsonSchema }) => {
      shareText(jsonSchema as KeySchema);
      tell(jsonSchema as KeySchema);
    },
  }) as KeySchema;
  const { change } = schema.$defs!;
  for (const name of Object.keys(LAYER_FIELDS)) {
    change!.properties![name] = { $ref: `#/$defs/layer/properties/${encodeURIComponent(name)}` };
  }
  const text: KeySchema = { type: "string", minLength: 1, maxLength: LONGEST_TEXT };
  return { ...schema, title: "warmside project file", $defs: { ...schema.$defs, text } } as KeySchema;
}

/** Makes free text a shared part. */
function shareText(schema: KeySchema): void {
  if (schema.maxLength !== LONGEST_TEXT) return;
  schema.$ref = "#/$defs/text";
  for (const key of ["type", "minLength", "maxLength"] as const) delete schema[key];
}

/** Moves the usual value and the example of a key to the names that JSON Schema has for them. */
function tellAsJsonSchema(schema: KeySchema): void {
  const { usual, example, description } = schema;
  const written = usual === undefined ? undefined : asWritten(usual, schema);
  if (written !== undefined) schema.default = written;
  else if (usual !== undefined) schema.description = `${description}. Left out: ${usual}`;
  if (example !== undefined) schema.examples = [example];
  delete schema.usual;
  delete schema.example;
}

/** The usual value as a file would have it; undefined where the words are not a value. */
function asWritten(usual: string, { $ref, type, enum: options }: KeySchema): unknown {
  if (type === "boolean") return usual === "true";
  if (options !== undefined) return options.includes(usual) ? usual : undefined;
  const quantity = quantityOfRef($ref);
  if (quantity === null) return type === "string" ? usual : undefined;
  if (VOCABULARY[quantity].unit.written !== "") return readQuantity(usual, quantity).ok ? usual : undefined;
  return Number.isFinite(Number(usual)) ? Number(usual) : undefined;
}

/**
 * The quantity that a shared part of the schema stands for.
 *
 * @param ref - a reference within the schema
 * @returns its name; null for any other part
 */
export function quantityOfRef(ref: string | undefined): QuantityName | null {
  const name = ref?.replace(/^#\/\$defs\//, "").replace(/-/g, " ") ?? "";
  return Object.hasOwn(VOCABULARY, name) ? (name as QuantityName) : null;
}
