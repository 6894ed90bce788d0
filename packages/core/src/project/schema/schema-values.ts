import * as z from "zod";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../../constants.ts";
import type { Problem } from "../../problems/types.ts";
import type { QuantityName } from "../../quantities/quantity-names.ts";
import { readBareNumber, readQuantity } from "../../quantities/read-quantity.ts";
import { quantityOf } from "../../quantities/vocabulary.ts";
import type { ReadValue } from "./written-project.ts";

/**
 * Building blocks of the schema. The `error` of a block is a mark that `problem-of-issue.ts` reads:
 * it says what was expected, not what to tell the reader.
 */

/** Marks: what stands before the colon says how to read the rest. */
export const QUANTITY_MARK = "quantity:";
export const KIND_MARK = "kind:";

/** Form of every quantity with a unit, for the JSON Schema: number, space, unit. */
const QUANTITY_PATTERN = "^[+\\-−]?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?[ \\u00a0\\u202f]\\S.*$";

/** A quantity with its unit, read to SI. */
export function quantity(name: QuantityName): z.ZodType<ReadValue> {
  const { kind, example } = quantityOf(name);
  return z
    .string({ error: `${QUANTITY_MARK}${name}` })
    .meta({ description: kind, examples: [example], pattern: QUANTITY_PATTERN })
    .transform((text, context): ReadValue => {
      const reading = readQuantity(text, name);
      if (reading.ok) return { quantity: name, value: reading.value };
      context.issues.push(issueOf(reading.problems, text));
      return z.NEVER;
    });
}

/** A number without unit. */
export function bare(name: QuantityName): z.ZodType<ReadValue> {
  const { kind, example, possible } = quantityOf(name);
  const limits = possible === null ? {} : { minimum: possible.low, maximum: possible.high };
  return z
    .number({ error: `${QUANTITY_MARK}${name}` })
    .meta({ description: kind, examples: [Number(example)], ...limits })
    .transform((number, context): ReadValue => {
      const reading = readBareNumber(number, name);
      if (reading.ok) return { quantity: name, value: reading.value };
      context.issues.push(issueOf(reading.problems, number));
      return z.NEVER;
    });
}

/** Words of the reader's own. */
export function words(what: string): z.ZodType<string> {
  return z
    .string({ error: `${KIND_MARK}${what}` })
    .trim()
    .min(1)
    .max(LONGEST_TEXT)
    .meta({ description: what });
}

/** One of a few words. */
export function oneOf<const Word extends string>(options: readonly Word[]): z.ZodType<Word> {
  return z.enum(options);
}

/** A yes or no of the file, written `true` or `false`. */
export function yesOrNo(): z.ZodType<boolean> {
  return z.boolean({ error: `${KIND_MARK}true or false` });
}

/** One of several forms; `what` says them in words. */
export function either<Forms extends readonly z.ZodType[]>(what: string, forms: Forms): z.ZodUnion<Forms> {
  return z.union(forms, { error: `${KIND_MARK}${what}` });
}

/** A list of one value a month. */
export function twelve(what: string, value: z.ZodType<ReadValue>): z.ZodType<ReadValue[]> {
  return z
    .array(value, { error: `${KIND_MARK}a list of twelve values` })
    .meta({ description: what, minItems: MONTHS_PER_YEAR, maxItems: MONTHS_PER_YEAR })
    .check((context) => {
      if (context.value.length === MONTHS_PER_YEAR) return;
      context.issues.push(custom("twelve-values", { count: context.value.length }, context.value));
    });
}

/** A list with a greatest length. */
export function listOf<Item>(what: string, item: z.ZodType<Item>, most: number): z.ZodType<Item[]> {
  return z
    .array(item, { error: `${KIND_MARK}${what}` })
    .min(1)
    .max(most);
}

/** A month by its English name or its first three letters; January is 0. */
export function month(): z.ZodType<number> {
  return z
    .string({ error: `${KIND_MARK}a month` })
    .meta({ description: "a month", examples: ["October"] })
    .transform((text, context): number => {
      const wanted = text.trim().toLowerCase();
      const index = MONTH_NAMES.findIndex((name) =>
        [name, name.slice(0, 3)].some((form) => form.toLowerCase() === wanted),
      );
      if (index === -1) context.issues.push(custom("month-unknown", {}, text));
      return index;
    });
}

/** An issue that carries a problem's code and details through zod. */
export function custom(
  code: string,
  details: Problem["details"],
  input: unknown,
  path: (string | number)[] = [],
): {
  code: "custom";
  message: string;
  params: { code: string; details: Problem["details"] };
  input: unknown;
  path: (string | number)[];
} {
  return { code: "custom", message: code, params: { code, details }, input, path };
}

function issueOf(problems: readonly Problem[], input: unknown): ReturnType<typeof custom> {
  const [problem] = problems;
  if (problem === undefined) throw new Error("a refused quantity carries a problem");
  return custom(problem.code, problem.details, input);
}

/** Longest text of the reader's own [characters]. */
export const LONGEST_TEXT = 400;
