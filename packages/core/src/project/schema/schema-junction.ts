import * as z from "zod";
import { custom, either, KIND_MARK, key, listOf, optional, quantity, words } from "./schema-values.ts";

/** The kinds of junction, and the keys that go with each. */
export const JUNCTION_KINDS = {
  "outer corner": ["posts"],
  "floor edge": ["rim", "plates"],
  "roof edge": ["blocking", "plates"],
  "window side": ["trimmers", "frame"],
} as const;

/** The kinds, in the order in which they are listed. */
export const KINDS_OF_JUNCTION = Object.keys(JUNCTION_KINDS) as (keyof typeof JUNCTION_KINDS)[];

/** Most junctions in a file. */
export const MOST_JUNCTIONS = 50;

const twoNames = listOf("two build-ups, for example [Studio wall, Raised floor]", words("the name of a build-up"), 2);
const count = z
  .number({ error: `${KIND_MARK}a whole number of timbers, 0 to 10` })
  .int()
  .min(0)
  .max(10);

/** A corner, an edge or a window side: exactly one kind, with the keys that go with it. */
export const junctionSchema = z
  .strictObject(
    {
      name: key("What the junction is called", words("a name, for example North corner"), { example: "North corner" }),
      "outer corner": optional(
        "The wall, or the two walls, that meet in an outer corner",
        either("a wall, or two walls in brackets", [words("the name of a wall"), twoNames]),
        { example: ["Studio wall", "Workshop wall"] },
      ),
      "floor edge": optional("The wall and the floor that meet", twoNames, {
        example: ["Studio wall", "Raised floor"],
      }),
      "roof edge": optional("The wall and the roof that meet", twoNames, {
        example: ["Studio wall", "Cold flat roof"],
      }),
      "window side": optional("The wall that a window or door stands in", words("the name of a wall"), {
        example: "Studio wall",
      }),
      posts: optional(
        "Timber posts in the corner: 2, 3, or solid timber all through",
        either("2, 3 or solid", [z.literal(2), z.literal(3), z.literal("solid")]),
        { example: 3 },
      ),
      rim: optional("Thickness of the rim joist at the edge of the floor", quantity("width")),
      blocking: optional("Thickness of the blocking between rafters or joists over the wall", quantity("width")),
      plates: optional("How many plates of timber the wall has there", count, { example: 2 }),
      trimmers: optional("How many studs stand together beside the window", count, { example: 2 }),
      frame: optional(
        "The frame of the window or door",
        z.strictObject({
          width: key("Width of the frame, seen from the room", quantity("width"), { example: "70 mm" }),
          depth: key("Depth of the frame, from its room face to its outer face", quantity("width"), {
            example: "68 mm",
          }),
          conductivity: optional("Thermal conductivity of the frame, all through", quantity("conductivity"), {
            example: "0.13 W/(m K)",
          }),
          "set back": optional("From the outer face of the wall's framing to that of the frame", quantity("set back")),
        }),
      ),
    },
    { error: `${KIND_MARK}a junction in braces, for example { name: Corner, outer corner: Studio wall, posts: 3 }` },
  )
  .check(({ value, issues }) => {
    const [kind, second] = KINDS_OF_JUNCTION.filter((name) => value[name] !== undefined);
    if (kind === undefined) issues.push(custom("junction-no-kind", {}, value));
    if (second !== undefined) issues.push(custom("junction-two-kinds", { kinds: [kind!, second] }, value, [second]));
    if (kind === undefined || second !== undefined) return;
    const known: readonly string[] = ["name", kind, ...JUNCTION_KINDS[kind]];
    for (const name of Object.keys(value).filter((one) => !known.includes(one)))
      issues.push(custom("junction-key", { key: name, kind, known }, value, [name]));
    if (kind === "window side" && value.frame === undefined) issues.push(custom("junction-no-frame", {}, value));
  })
  .meta({ id: "junction" });

/** A junction as written in the file, with quantities read. */
export type WrittenJunction = z.output<typeof junctionSchema>;
