import * as z from "zod";
import type { ProblemPath } from "../../problems/types.ts";
import { readQuantity } from "../../quantities/read-quantity.ts";
import {
  bare,
  custom,
  either,
  KIND_MARK,
  key,
  optional,
  plainWords,
  QUANTITY_MARK,
  quantity,
  type ReadValue,
  readOrRefused,
  refused,
  twelve,
  yesOrNo,
} from "./schema-values.ts";

const HUMIDITY_FORMS = "class 1 to class 5, a percentage, twelve percentages, a rule, or a moisture balance in braces";

/**
 * The humidity class meant by a bare number given as a room's humidity.
 *
 * @param received - the value given
 * @param path - where it stands
 * @returns 1 to 5, or null for any other value or place
 * @example humidityClassMeant(3, ["indoor", "humidity"]) // 3
 */
export function humidityClassMeant(received: unknown, path: ProblemPath): number | null {
  const [top] = path;
  const isOfRoom = path[path.length - 1] === "humidity" && (top === "indoor" || top === "rooms");
  return isOfRoom && /^\s*[1-5]\s*$/.test(String(received)) ? Number(received) : null;
}

/** A room's humidity, when written as text. */
type HumidityInWords =
  | { kind: "class"; class: 1 | 2 | 3 | 4 | 5 }
  | { kind: "constant"; share: ReadValue }
  | { kind: "by outdoor temperature"; level: "normal" | "high" };

/** A class, a percentage, or a rule by outdoor temperature. */
const humidityInWords = z
  .string({ error: `${QUANTITY_MARK}relative humidity` })
  .meta({ examples: ["class 3", "55 %", "normal by outdoor temperature"] })
  .transform((text, context): HumidityInWords => {
    const plain = plainWords(text);
    const [, humidityClass] = /^class ([1-5])$/.exec(plain) ?? [];
    if (humidityClass !== undefined) return { kind: "class", class: Number(humidityClass) as 1 | 2 | 3 | 4 | 5 };
    const [, level] = /^(normal|high) by outdoor temperature$/.exec(plain) ?? [];
    if (level === "normal" || level === "high") return { kind: "by outdoor temperature", level };
    if (/^[1-5]$/.test(plain)) return refused("humidity-class-bare", { class: plain }, text, context);
    if (!/^\W*\d/.test(plain)) return refused("humidity-unread", {}, text, context);
    const reading = readQuantity(text, "relative humidity");
    return { kind: "constant", share: readOrRefused(reading, "relative humidity", text, context) };
  });

const humidity = either(HUMIDITY_FORMS, [
  humidityInWords,
  twelve(quantity("relative humidity")),
  z.strictObject({
    production: key("Water that people, drying clay and showers give to the air", quantity("moisture production")),
    volume: key("Volume of air in the room", quantity("volume")),
    "air changes": key("How often an hour its air is changed for outdoor air", quantity("air changes")),
  }),
]);

/** One room: its temperature and its humidity. */
export const roomSchema = z
  .strictObject(
    {
      heating: optional("Set point of the heating: the room is never colder", quantity("temperature")),
      temperature: optional(
        "Temperature that is held, in place of heating: one value, twelve from January to December, or the rule by outdoor temperature",
        either("a temperature, twelve temperatures, or `by outdoor temperature`", [
          z.literal("by outdoor temperature"),
          quantity("temperature"),
          twelve(quantity("temperature")),
        ]),
        { example: "18 °C" },
      ),
      unheated: optional(
        "The room has the air of outdoors, in place of heating",
        z.literal(true, { error: `${KIND_MARK}true, or heating or temperature in its place` }),
      ),
      cooling: optional("The temperature that cooling keeps the room below", quantity("temperature"), {
        example: "26 °C",
      }),
      humidity: optional(
        "How damp the room is: class 1 (stores) to class 5 (laundries), a relative humidity, twelve of them, a rule by outdoor temperature, or a moisture balance",
        humidity,
        { example: "class 3" },
      ),
      "humidity when cooled": optional(
        "Relative humidity in the months in which the room is cooled below outdoors",
        quantity("relative humidity"),
        { usual: "its humidity" },
      ),
      "heated days": optional("Days of the week on which the room is heated", bare("heated days"), { usual: "7" }),
      otherwise: optional("Temperature on the days without heating", quantity("temperature"), {
        usual: "as outdoors",
        example: "8 °C",
      }),
      "bursts of steam": optional("Showers, kettles or a sauna give short bursts of steam", yesOrNo(), {
        usual: "false",
      }),
      pool: optional("The room has a pool or a hot tub", yesOrNo(), { usual: "false" }),
    },
    { error: `${KIND_MARK}a room in braces, for example { heating: 20 °C, humidity: class 3 }` },
  )
  .check(({ value, issues }) => {
    const rules = (["heating", "temperature", "unheated"] as const).filter((name) => value[name] !== undefined);
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
    for (const name of ["heated days", "otherwise"] as const) {
      if (value[name] !== undefined && value.heating === undefined)
        issues.push(custom("only-with-heating", { key: name }, value, [name]));
    }
    if (value.otherwise !== undefined && value["heated days"] === undefined && value.heating !== undefined) {
      issues.push(custom("only-with-heated-days", {}, value, ["otherwise"]));
    }
    if (value.heating !== undefined && value.cooling !== undefined && value.cooling.value < value.heating.value) {
      issues.push(custom("cooling-below-heating", {}, value, ["cooling"]));
    }
  })
  .meta({ id: "room" });

/** A room as written in the file, with quantities read. */
export type WrittenRoom = z.output<typeof roomSchema>;
