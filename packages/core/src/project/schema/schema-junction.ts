import * as z from "zod";
import { custom, either, KIND_MARK, listOf, quantity, words } from "./schema-values.ts";
import type { WrittenJunction } from "./written-project.ts";

/** What a junction can be, and the keys that go with each. */
export const JUNCTION_KINDS = {
  "outer corner": ["posts"],
  "floor edge": ["rim", "plates"],
  "roof edge": ["blocking", "plates"],
  "window side": ["trimmers", "frame"],
} as const;

/** The kinds in the order they are told. */
export const KINDS_OF_JUNCTION = Object.keys(JUNCTION_KINDS) as (keyof typeof JUNCTION_KINDS)[];

/** Junctions in a file at most. */
export const MOST_JUNCTIONS = 50;

const twoNames = listOf("two build-ups, for example [Studio wall, Raised floor]", words("the name of a build-up"), 2);
const count = z
  .number({ error: `${KIND_MARK}a whole number of timbers, 0 to 10` })
  .int()
  .min(0)
  .max(10);

/** A corner, an edge or a window side: exactly one kind, with what goes with it. */
export const junctionSchema: z.ZodType<WrittenJunction> = z
  .strictObject(
    {
      name: words("a name, for example North corner"),
      "outer corner": either("a wall, or two walls in brackets", [words("the name of a wall"), twoNames]).optional(),
      "floor edge": twoNames.optional(),
      "roof edge": twoNames.optional(),
      "window side": words("the name of a wall").optional(),
      posts: either("2, 3 or solid", [z.literal(2), z.literal(3), z.literal("solid")]).optional(),
      rim: quantity("width").optional(),
      blocking: quantity("width").optional(),
      plates: count.optional(),
      trimmers: count.optional(),
      frame: z
        .strictObject({
          width: quantity("width"),
          depth: quantity("width"),
          conductivity: quantity("conductivity").optional(),
          "set back": quantity("set back").optional(),
        })
        .optional(),
    },
    { error: `${KIND_MARK}a junction in braces, for example { name: Corner, outer corner: Studio wall, posts: 3 }` },
  )
  .check(({ value, issues }) => {
    const [kind, second] = KINDS_OF_JUNCTION.filter((key) => value[key] !== undefined);
    if (kind === undefined) issues.push(custom("junction-no-kind", {}, value));
    if (second !== undefined) issues.push(custom("junction-two-kinds", { kinds: [kind!, second] }, value, [second]));
    if (kind === undefined || second !== undefined) return;
    const known: readonly string[] = ["name", kind, ...JUNCTION_KINDS[kind]];
    for (const key of Object.keys(value).filter((one) => !known.includes(one)))
      issues.push(custom("junction-key", { key, kind, known }, value, [key]));
    if (kind === "window side" && value.frame === undefined) issues.push(custom("junction-no-frame", {}, value));
  });
