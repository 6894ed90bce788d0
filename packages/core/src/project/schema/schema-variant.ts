import * as z from "zod";
import { LAYER_FIELDS, layerSchema } from "./schema-layer.ts";
import { custom, KIND_MARK, key, listOf, optional, words } from "./schema-values.ts";

/** Most variants of a build-up, and most changes in a variant. */
export const MOST_VARIANTS = 50;
export const MOST_CHANGES = 50;

/** What a change can do. */
export const VERBS = ["swap", "set", "add", "remove", "move"] as const;

/** The other keys that go with each verb; `set` takes the keys of a layer. */
const GOES_WITH: Readonly<Record<(typeof VERBS)[number], readonly string[]>> = {
  swap: ["for"],
  set: Object.keys(LAYER_FIELDS),
  add: ["before", "after"],
  remove: [],
  move: ["before", "after"],
};

const layerName = words("a layer's name, or its material where that occurs once");
const example = "mineral wool slab";

/** One change: exactly one verb, naming a layer of the build-up. */
export const changeSchema = z
  .strictObject(
    {
      swap: optional("The layer to replace by the one under `for`", layerName, { example }),
      for: optional("The layer that replaces it", layerSchema),
      set: optional("The layer whose keys are changed; their new values stand beside it", layerName, { example }),
      add: optional("The layer to add, before or after another", layerSchema),
      remove: optional("The layer to take out", layerName, { example }),
      move: optional("The layer to move, before or after another", layerName, { example }),
      before: optional("The layer on whose room side it comes", layerName, { example }),
      after: optional("The layer on whose outer side it comes", layerName, { example }),
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
    const given = Object.keys(value).filter((name) => name !== verb);
    const fitting = given.filter((name) => known.includes(name));
    for (const name of given.filter((one) => !known.includes(one)))
      issues.push(custom("change-key", { key: name, verb, known }, value, [name]));
    if (known.length > 0 && given.length === 0) issues.push(custom("change-alone", { verb, known }, value));
    if (known.includes("before") && fitting.length > 1)
      issues.push(custom("change-two-places", { verb }, value, ["after"]));
  })
  .meta({ id: "change" });

/** A change as written in the file, with quantities read. */
export type WrittenChange = z.output<typeof changeSchema>;

/** One variant: its name and its changes. */
export const variantSchema = z.strictObject(
  {
    name: key("What the variant is called", words("a name, for example deeper studs"), { example: "deeper studs" }),
    changes: key(
      "What it changes, one thing after the other",
      listOf("a list of changes, each in braces", changeSchema, MOST_CHANGES),
    ),
  },
  { error: `${KIND_MARK}a variant with name and changes` },
);
