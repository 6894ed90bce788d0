import * as z from "zod";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { buildUpSchema, MOST_BUILD_UPS } from "./schema-build-up.ts";
import { junctionSchema, MOST_JUNCTIONS } from "./schema-junction.ts";
import { MOST_PRICES, priceSchema } from "./schema-price.ts";
import { roomSchema } from "./schema-room.ts";
import {
  bare,
  custom,
  either,
  KIND_MARK,
  key,
  listOf,
  named,
  optional,
  plainWords,
  QUANTITY_MARK,
  quantity,
  type ReadValue,
  readOrRefused,
  refused,
  words,
} from "./schema-values.ts";

const SEVERITIES = ["mean year", "one in ten colder", "one in ten warmer"] as const;

const YEAR = `${KIND_MARK}${SEVERITIES.join(", ")}, or a difference, for example +2 K`;
const DIFFERENCE = `${QUANTITY_MARK}temperature difference`;

/** A year by name, or its offset from the mean year. */
const severity = z
  .string({ error: ({ input }) => (typeof input === "number" ? DIFFERENCE : YEAR) })
  .meta({ examples: [...SEVERITIES, "+2 K"] })
  .transform((text, context): (typeof SEVERITIES)[number] | ReadValue => {
    const plain = plainWords(text);
    const name = SEVERITIES.find((one) => one === plain);
    if (name !== undefined) return name;
    if (!/^\W*\d/.test(plain)) return refused("severity-unread", {}, text, context);
    return readOrRefused(readQuantity(text, "temperature difference"), "temperature difference", text, context);
  });

/** A project file. `project.schema.json` is its JSON Schema; `KEYS.md` explains its keys. */
export const projectSchema = z
  .strictObject(
    {
      project: key("The name of the project", words("the project's name"), { example: "Alder Row pottery studio" }),
      reference: optional("A reference of your own, printed on every page", words("a reference"), { example: "AR-7" }),
      query: optional(
        "What is asked and of whom, printed on the first page",
        z.strictObject({
          question: optional("What is asked, in a sentence", words("the question"), {
            example: "May the walls be closed as drawn?",
          }),
          to: optional("Whom it goes to", words("whom it goes to"), { example: "Building control" }),
          site: optional("Where the site is", words("where the site is"), { example: "Alder Row" }),
          "prepared by": optional("Who prepared it", words("who prepared it"), { example: "the owner" }),
          date: optional("The date that is printed on it", words("a date"), { example: "2024-05-01" }),
          drawings: optional("The drawings it belongs to", listOf("a list of drawings", words("a drawing"), 50), {
            example: ["101", "AR-7/02"],
          }),
        }),
      ),
      climate: key(
        "The place, by a name that comes with warmside, or the path of a climate table",
        words("the name of a place, or the path of a climate table"),
        { example: "de-bilt" },
      ),
      severity: optional(
        "The year of the calculation: mean year, one in ten colder, one in ten warmer, or a difference in K",
        severity,
        { usual: "mean year", example: "one in ten colder" },
      ),
      altitude: optional("Height of the site, where it differs from the station's", quantity("altitude"), {
        usual: "the station's",
      }),
      "lapse rate": optional("How fast the air cools with height", quantity("lapse rate"), { usual: "6.5 K/km" }),
      "rain of the heating season": optional(
        "Mean rain of the heating season: cools an inverted roof",
        quantity("rain"),
      ),
      "humidity margin": optional("Factor on the vapour excess of humidity classes", bare("humidity margin"), {
        usual: "1",
      }),
      materials: optional("Path of a table of your own materials", words("the path of a material table"), {
        example: "my-materials.csv",
      }),
      prices: optional(
        "Your own prices: the path of a price table, or a list",
        either("the path of a price table, or a list of prices", [
          words("the path of a price table"),
          listOf("a list of prices, each with material and per", priceSchema, MOST_PRICES),
        ]),
        { example: "my-prices.csv" },
      ),
      currency: optional("The currency of all prices", words("a currency"), { example: "£" }),
      "hour rate": optional("What an hour of work costs", bare("hour rate")),
      "heat price": optional("What a kilowatt hour of heat costs", quantity("heat price")),
      accept: optional(
        "Codes of notes that you have read and accept",
        listOf("a list of notes to accept", words("the code of a note"), 50),
        { example: ["odd-thickness"] },
      ),
      "climates for place": optional(
        "Other places for the study of where the vapour layer may lie",
        listOf("a list of places", words("the name of a place"), 50),
        { usual: "all that come with warmside", example: ["oslo", "rome"] },
      ),
      indoor: optional("The room of every build-up that names none", roomSchema),
      rooms: optional("Other rooms, by names of your own", named("rooms by name", roomSchema)),
      "build-ups": key(
        "The walls, roofs, floors and partitions to assess",
        listOf("a list of build-ups, each beginning with a hyphen", buildUpSchema, MOST_BUILD_UPS),
      ),
      junctions: optional(
        "Corners, edges and window sides to look at",
        listOf("a list of junctions, each in braces", junctionSchema, MOST_JUNCTIONS),
      ),
    },
    { error: `${KIND_MARK}the keys of a project: project, climate, indoor, build-ups` },
  )
  .check(({ value, issues }) => {
    if (value["lapse rate"] !== undefined && value.altitude === undefined)
      issues.push(custom("only-with-altitude", {}, value, ["lapse rate"]));
  });

/** A project file as data, as it may be written. */
export type ProjectFile = z.input<typeof projectSchema>;

/** The project as written in the file, with quantities read to SI and names not yet looked up. */
export type WrittenProject = z.output<typeof projectSchema>;
