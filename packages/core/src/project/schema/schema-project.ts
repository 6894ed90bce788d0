import * as z from "zod";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { buildUpSchema, MOST_BUILD_UPS } from "./schema-build-up.ts";
import { junctionSchema, MOST_JUNCTIONS } from "./schema-junction.ts";
import { MOST_PRICES, priceSchema } from "./schema-price.ts";
import { roomSchema } from "./schema-room.ts";
import { bare, custom, either, KIND_MARK, listOf, QUANTITY_MARK, quantity, words } from "./schema-values.ts";
import type { WrittenProject, WrittenSeverity } from "./written-project.ts";

const SEVERITIES = ["mean year", "one in ten colder", "one in ten warmer"] as const;

const YEAR = `${KIND_MARK}${SEVERITIES.join(", ")}, or a difference, for example +2 K`;
const DIFFERENCE = `${QUANTITY_MARK}temperature difference`;

const severitySchema: z.ZodType<WrittenSeverity> = z
  .string({ error: ({ input }) => (typeof input === "number" ? DIFFERENCE : YEAR) })
  .meta({ description: "the year to assess", examples: [...SEVERITIES, "+2 K"] })
  .transform((text, context): WrittenSeverity => {
    const plain = text.trim().toLowerCase().replace(/\s+/g, " ");
    const named = SEVERITIES.find((name) => name === plain);
    if (named !== undefined) return named;
    if (!/^\W*\d/.test(plain)) context.issues.push(custom("severity-unread", {}, text));
    else {
      const reading = readQuantity(text, "temperature difference");
      if (reading.ok) return { quantity: "temperature difference", value: reading.value };
      context.issues.push(custom(reading.problems[0]!.code, reading.problems[0]!.details, text));
    }
    return z.NEVER;
  });

/** A project file. Its JSON Schema is `project.schema.json`. */
export const projectSchema: z.ZodType<WrittenProject> = z
  .strictObject(
    {
      project: words("the project's name"),
      reference: words("a reference").optional(),
      query: z
        .strictObject({
          question: words("the question").optional(),
          to: words("whom it goes to").optional(),
          site: words("where the site is").optional(),
          "prepared by": words("who prepared it").optional(),
          date: words("a date").optional(),
          drawings: listOf("a list of drawings", words("a drawing"), 50).optional(),
        })
        .optional(),
      climate: words("the name of a place, or the path of a climate table"),
      severity: severitySchema.optional(),
      altitude: quantity("altitude").optional(),
      "lapse rate": quantity("lapse rate").optional(),
      "rain of the heating season": quantity("rain").optional(),
      "humidity margin": bare("humidity margin").optional(),
      materials: words("the path of a material table").optional(),
      prices: either("the path of a price table, or a list of prices", [
        words("the path of a price table"),
        listOf("a list of prices, each with material and per", priceSchema, MOST_PRICES),
      ]).optional(),
      currency: words("a currency").optional(),
      "hour rate": bare("hour rate").optional(),
      "heat price": quantity("heat price").optional(),
      accept: listOf("a list of notes to accept", words("the code of a note"), 50).optional(),
      "climates for place": listOf("a list of places", words("the name of a place"), 50).optional(),
      indoor: roomSchema.optional(),
      rooms: z.record(words("a name"), roomSchema, { error: `${KIND_MARK}rooms by name` }).optional(),
      "build-ups": listOf("a list of build-ups, each beginning with a hyphen", buildUpSchema, MOST_BUILD_UPS),
      junctions: listOf("a list of junctions, each in braces", junctionSchema, MOST_JUNCTIONS).optional(),
    },
    { error: `${KIND_MARK}the keys of a project: project, climate, indoor, build-ups` },
  )
  .check(({ value, issues }) => {
    if (value["lapse rate"] !== undefined && value.altitude === undefined)
      issues.push(custom("only-with-altitude", {}, value, ["lapse rate"]));
  });

/**
 * The JSON Schema of a project file, as committed beside the package.
 *
 * @returns the schema of what may be written
 */
export function projectJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(projectSchema, { io: "input", unrepresentable: "any" });
  return { ...schema, title: "warmside project file" };
}
