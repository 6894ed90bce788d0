import * as z from "zod";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../../constants.ts";
import type { Problem, Reading } from "../../problems/types.ts";
import type { ProblemCode } from "../../problems/wordings.ts";
import { readBareNumber, readQuantity } from "../../quantities/read-quantity.ts";
import { type QuantityName, quantityOf } from "../../quantities/vocabulary.ts";

/**
 * Building blocks of the schema. The `error` of a block is a mark for `fault-of-kind.ts`: it says what was expected,
 * and is not shown to the user. The description of a key is what `KEYS.md` and editors show.
 */

/** How a mark begins: this says how to read the rest of it. */
export const QUANTITY_MARK = "quantity:";
export const KIND_MARK = "kind:";

/** A quantity that was read: its name, and its value in SI. */
export interface ReadValue {
  quantity: QuantityName;
  value: number;
}

/** More about a key: the value that counts if it is left out, and an example. */
interface MoreOfKey {
  usual?: string;
  example?: unknown;
}

/** A required key, with its meaning. */
export function key<Schema extends z.ZodType>(
  means: string,
  schema: Schema,
  { usual, example }: MoreOfKey = {},
): Schema {
  return schema.meta({ description: means, ...(usual && { usual }), ...(example !== undefined && { example }) });
}

/** An optional key, with its meaning. */
export function optional<Schema extends z.ZodType>(
  means: string,
  schema: Schema,
  more?: MoreOfKey,
): z.ZodOptional<Schema> {
  return key(means, schema, more).optional();
}

/** Pattern of every quantity with a unit, for the JSON Schema: number, space, unit. */
const QUANTITY_PATTERN = "[0-9]\\S*[ \\u00a0\\u202f]\\S";

/** The schema of each quantity, made once, so that each is one part of the JSON Schema. */
const QUANTITIES = new Map<QuantityName, z.ZodType<ReadValue, string>>();
const BARE_NUMBERS = new Map<QuantityName, z.ZodType<ReadValue, number>>();

/** A quantity with its unit, read to SI. */
export function quantity(name: QuantityName): z.ZodType<ReadValue, string> {
  return madeOnce(QUANTITIES, name, () =>
    z
      .string({ error: `${QUANTITY_MARK}${name}` })
      .meta({ ...partOf(name), pattern: QUANTITY_PATTERN })
      .transform((text, context) => readOrRefused(readQuantity(text, name), name, text, context)),
  );
}

/** A number without unit. */
export function bare(name: QuantityName): z.ZodType<ReadValue, number> {
  return madeOnce(BARE_NUMBERS, name, () => {
    const { possible } = quantityOf(name);
    const limits = possible === null ? {} : { minimum: possible.low, maximum: possible.high };
    return z
      .number({ error: `${QUANTITY_MARK}${name}` })
      .meta({ ...partOf(name), ...limits })
      .transform((number, context) => readOrRefused(readBareNumber(number, name), name, number, context));
  });
}

function madeOnce<Made>(made: Map<QuantityName, Made>, name: QuantityName, make: () => Made): Made {
  const schema = made.get(name) ?? make();
  made.set(name, schema);
  return schema;
}

function partOf(name: QuantityName): { id: string; examples: (string | number)[] } {
  const { example, unit } = quantityOf(name);
  return {
    id: name.replace(/ /g, "-"),
    examples: [unit.written === "" ? Number(example) : example],
  };
}

/** The value of a reading; if it has a problem, adds the problem to the issues of the schema. */
export function readOrRefused(
  reading: Reading<number>,
  name: QuantityName,
  input: unknown,
  context: z.core.ParsePayload,
): ReadValue {
  if (reading.ok) return { quantity: name, value: reading.value };
  const [problem] = reading.problems;
  if (problem === undefined) throw new Error("a refused quantity carries a problem");
  return refused(problem.code, problem.details, input, context);
}

/** Adds a problem to the issues of the schema. */
export function refused(
  code: ProblemCode,
  details: Problem["details"],
  input: unknown,
  context: z.core.ParsePayload,
): never {
  context.issues.push(custom(code, details, input));
  return z.NEVER;
}

/** A text in the user's own words. */
export function words(what: string): z.ZodType<string, string> {
  return z
    .string({ error: `${KIND_MARK}${what}` })
    .trim()
    .min(1)
    .max(LONGEST_TEXT);
}

/** One of a few words. */
export function oneOf<const Word extends string>(options: readonly Word[]): z.ZodType<Word, Word> {
  return z.enum(options);
}

/** A yes or no of the file, written `true` or `false`. */
export function yesOrNo(): z.ZodType<boolean, boolean> {
  return z.boolean({ error: `${KIND_MARK}true or false` });
}

/** One of several forms; `what` describes them in words. */
export function either<Forms extends readonly z.ZodType[]>(what: string, forms: Forms): z.ZodUnion<Forms> {
  return z.union(forms, { error: `${KIND_MARK}${what}` });
}

/** A list of one value a month. */
export function twelve(value: z.ZodType<ReadValue, string>): z.ZodType<ReadValue[], string[]> {
  return z
    .array(value, { error: `${KIND_MARK}a list of twelve values` })
    .meta({ minItems: MONTHS_PER_YEAR, maxItems: MONTHS_PER_YEAR })
    .check((context) => {
      if (context.value.length === MONTHS_PER_YEAR) return;
      context.issues.push(custom("twelve-values", { count: context.value.length }, context.value));
    });
}

/** A list with a greatest length. */
export function listOf<Item extends z.ZodType>(what: string, item: Item, most: number): z.ZodArray<Item> {
  return z
    .array(item, { error: `${KIND_MARK}${what}` })
    .min(1)
    .max(most);
}

/** Objects by names that the user chooses. */
export function named<Thing extends z.ZodType>(
  what: string,
  thing: Thing,
): z.ZodRecord<z.ZodType<string, string>, Thing> {
  return z.record(words("a name"), thing, { error: `${KIND_MARK}${what}` });
}

/** A month by its English name or its first three letters; January is 0. */
export function month(): z.ZodType<number, string> {
  return z.string({ error: `${KIND_MARK}a month` }).transform((text, context): number => {
    const wanted = text.trim().toLowerCase();
    const index = MONTH_NAMES.findIndex((name) =>
      [name, name.slice(0, 3)].some((form) => form.toLowerCase() === wanted),
    );
    return index === -1 ? refused("month-unknown", {}, text, context) : index;
  });
}

/** An issue that carries a problem's code and details through zod. */
export type CustomIssue = {
  code: "custom";
  message: string;
  params: { code: ProblemCode; details: Problem["details"] };
  input: unknown;
  path: (string | number)[];
};

/** A problem as an issue of the schema; the path is counted from the value in which it is found. */
export function custom(
  code: ProblemCode,
  details: Problem["details"],
  input: unknown,
  path: (string | number)[] = [],
): CustomIssue {
  return { code: "custom", message: code, params: { code, details }, input, path };
}

/** A text in lower case, with single spaces. */
export function plainWords(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, " ");
}

/** Longest text in the user's own words [characters]. */
export const LONGEST_TEXT = 400;
