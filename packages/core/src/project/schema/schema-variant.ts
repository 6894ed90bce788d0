import * as z from "zod";
import { LAYER_FIELDS, layerSchema } from "./schema-layer.ts";
import { custom, KIND_MARK, listOf, words } from "./schema-values.ts";
import type { WrittenChange, WrittenVariant } from "./written-project.ts";

/** Variants of a build-up, and changes of a variant, at most. */
export const MOST_VARIANTS = 50;
export const MOST_CHANGES = 50;

/** What a change can do. */
export const VERBS = ["swap", "set", "add", "remove", "move"] as const;

/** What goes with each verb beside the verb itself; `set` goes with the keys of a layer. */
const GOES_WITH: Readonly<Record<(typeof VERBS)[number], readonly string[]>> = {
  swap: ["for"],
  set: Object.keys(LAYER_FIELDS),
  add: ["before", "after"],
  remove: [],
  move: ["before", "after"],
};

const layerName = words("a layer's name, or its material where that occurs once");

/** One change: exactly one verb, naming a layer of the build-up. */
export const changeSchema: z.ZodType<WrittenChange> = z
  .strictObject(
    {
      swap: layerName.optional(),
      for: layerSchema.optional(),
      set: layerName.optional(),
      add: layerSchema.optional(),
      remove: layerName.optional(),
      move: layerName.optional(),
      before: layerName.optional(),
      after: layerName.optional(),
      ...LAYER_FIELDS,
    },
    { error: `${KIND_MARK}a change in braces, for example { set: mineral wool slab, thickness: 200 mm }` },
  )
  .check(({ value, issues }) => {
    if (issues.some(({ code }) => code === "unrecognized_keys")) return;
    const verbs = VERBS.filter((verb) => value[verb] !== undefined);
    const [verb, second] = verbs;
    if (verb === undefined) issues.push(custom("change-no-verb", {}, value));
    if (second !== undefined) issues.push(custom("change-two-verbs", { verbs }, value, [second]));
    if (verb === undefined || second !== undefined) return;
    const known = GOES_WITH[verb];
    const given = Object.keys(value).filter((key) => key !== verb);
    const fitting = given.filter((key) => known.includes(key));
    for (const key of given.filter((one) => !known.includes(one)))
      issues.push(custom("change-key", { key, verb, known }, value, [key]));
    if (known.length > 0 && given.length === 0) issues.push(custom("change-alone", { verb, known }, value));
    if (known.includes("before") && fitting.length > 1)
      issues.push(custom("change-two-places", { verb }, value, ["after"]));
  });

/** One variant: a name and what is changed. */
export const variantSchema: z.ZodType<WrittenVariant> = z.strictObject(
  {
    name: words("a name, for example deeper studs"),
    changes: listOf("a list of changes, each in braces", changeSchema, MOST_CHANGES),
  },
  { error: `${KIND_MARK}a variant with name and changes` },
);
