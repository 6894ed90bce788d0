import * as z from "zod";
import type { ProblemPath } from "../../problems/types.ts";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { bare, custom, either, KIND_MARK, QUANTITY_MARK, quantity, twelve, yesOrNo } from "./schema-values.ts";
import type { WrittenHumidity, WrittenRoom } from "./written-project.ts";

const HUMIDITY_FORMS = "class 1 to class 5, a percentage, twelve percentages, a rule, or a moisture balance in braces";

/**
 * The humidity class that a number alone tells, where a room's humidity stands.
 *
 * @param received - the value there
 * @param path - where it stands
 * @returns 1 to 5, or null for any other value or place
 * @example humidityClassMeant(3, ["indoor", "humidity"]) // 3
 */
export function humidityClassMeant(received: unknown, path: ProblemPath): number | null {
  const [top] = path;
  const isOfRoom = path[path.length - 1] === "humidity" && (top === "indoor" || top === "rooms");
  return isOfRoom && /^\s*[1-5]\s*$/.test(String(received)) ? Number(received) : null;
}

/** Humidity as words: a class, a percentage, or a rule by outdoor temperature. */
const humidityInWords: z.ZodType<WrittenHumidity> = z
  .string({ error: `${QUANTITY_MARK}relative humidity` })
  .meta({ description: HUMIDITY_FORMS, examples: ["class 3", "55 %", "normal by outdoor temperature"] })
  .transform((text, context): WrittenHumidity => {
    const plain = text.trim().toLowerCase().replace(/\s+/g, " ");
    const [, humidityClass] = /^class ([1-5])$/.exec(plain) ?? [];
    if (humidityClass !== undefined) return { kind: "class", class: Number(humidityClass) as 1 | 2 | 3 | 4 | 5 };
    const [, level] = /^(normal|high) by outdoor temperature$/.exec(plain) ?? [];
    if (level === "normal" || level === "high") return { kind: "by outdoor temperature", level };
    if (/^[1-5]$/.test(plain)) context.issues.push(custom("humidity-class-bare", { class: plain }, text));
    else if (/^\W*\d/.test(plain)) {
      const reading = readQuantity(text, "relative humidity");
      if (reading.ok) return { kind: "constant", share: { quantity: "relative humidity", value: reading.value } };
      context.issues.push(custom(reading.problems[0]!.code, reading.problems[0]!.details, text));
    } else context.issues.push(custom("humidity-unread", {}, text));
    return z.NEVER;
  });

const humiditySchema: z.ZodType<WrittenHumidity> = either(HUMIDITY_FORMS, [
  humidityInWords,
  twelve("twelve relative humidities, January to December", quantity("relative humidity")),
  z.strictObject({
    production: quantity("moisture production"),
    volume: quantity("volume"),
    "air changes": quantity("air changes"),
  }),
]);

/** One room: how its temperature and its humidity are told. */
export const roomSchema: z.ZodType<WrittenRoom> = z
  .strictObject(
    {
      heating: quantity("temperature").optional(),
      temperature: either("a temperature, twelve temperatures, or `by outdoor temperature`", [
        z.literal("by outdoor temperature"),
        quantity("temperature"),
        twelve("twelve temperatures, January to December", quantity("temperature")),
      ]).optional(),
      unheated: z.literal(true, { error: `${KIND_MARK}true, or heating or temperature in its place` }).optional(),
      cooling: quantity("temperature").optional(),
      humidity: humiditySchema.optional(),
      "humidity when cooled": quantity("relative humidity").optional(),
      "heated days": bare("heated days").optional(),
      otherwise: quantity("temperature").optional(),
      "bursts of steam": yesOrNo().optional(),
      pool: yesOrNo().optional(),
    },
    { error: `${KIND_MARK}a room in braces, for example { heating: 20 °C, humidity: class 3 }` },
  )
  .check(({ value, issues }) => {
    const rules = (["heating", "temperature", "unheated"] as const).filter((key) => value[key] !== undefined);
    if (rules.length === 0) {
      const isCooled = value.cooling === undefined ? "no" : "yes";
      issues.push(custom("room-no-temperature", { isCooled }, value));
    }
    if (rules.length > 1) issues.push(custom("room-two-temperatures", { keys: rules }, value, [rules[1]!]));
    if (value.unheated === undefined && value.humidity === undefined)
      issues.push(custom("humidity-missing", {}, value));
    if (value.unheated !== undefined && value.humidity !== undefined) {
      issues.push(custom("humidity-of-unheated", {}, value, ["humidity"]));
    }
    if (value["humidity when cooled"] !== undefined && value.cooling === undefined)
      issues.push(custom("only-with-cooling", {}, value, ["humidity when cooled"]));
    for (const key of ["heated days", "otherwise"] as const) {
      if (value[key] !== undefined && value.heating === undefined)
        issues.push(custom("only-with-heating", { key }, value, [key]));
    }
    if (value.otherwise !== undefined && value["heated days"] === undefined && value.heating !== undefined) {
      issues.push(custom("only-with-heated-days", {}, value, ["otherwise"]));
    }
    if (value.heating !== undefined && value.cooling !== undefined && value.cooling.value < value.heating.value) {
      issues.push(custom("cooling-below-heating", {}, value, ["cooling"]));
    }
  });
