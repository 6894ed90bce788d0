import * as z from "zod";
import type { WettedByRain } from "../types.ts";
import { layerSchema } from "./schema-layer.ts";
import { framingSchema } from "./schema-material.ts";
import {
  bare,
  custom,
  either,
  KIND_MARK,
  key,
  listOf,
  month,
  named,
  oneOf,
  optional,
  quantity,
  twelve,
  words,
  yesOrNo,
} from "./schema-values.ts";
import { MOST_VARIANTS, variantSchema } from "./schema-variant.ts";

/** Most layers in a build-up, and most build-ups in a file. */
export const MOST_LAYERS = 100;
export const MOST_BUILD_UPS = 100;

/** Keys shared by a slab on the ground and a void over it. */
const soil = optional(
  "What the floor stands on; sets how well the ground conducts heat",
  oneOf(["clay or silt", "sand or gravel", "rock", "unknown"]),
  { usual: "unknown" },
);
const wallThickness = optional("Thickness of the walls around the floor", quantity("thickness of a wall"), {
  usual: "0.3 m",
});
const FLOOR_AREA = "Area of the floor";
const PERIMETER = "Length of the floor's edge that is exposed to outdoors";

/** A slab on the ground. */
export const groundSchema = z
  .strictObject({
    area: key(FLOOR_AREA, quantity("area"), { example: "80 m2" }),
    perimeter: key(PERIMETER, quantity("length"), { example: "36 m" }),
    "wall thickness": wallThickness,
    soil,
    "edge insulation": optional(
      "Insulation along the edge of the slab: level with a width, or upright with a depth",
      z
        .strictObject({
          resistance: key("Thermal resistance of the edge insulation", quantity("thermal resistance"), {
            example: "1.5 m2 K/W",
          }),
          thickness: key("Thickness of the edge insulation", quantity("thickness"), { example: "50 mm" }),
          width: optional("Width of insulation that lies level, from the edge inwards", quantity("extent")),
          depth: optional("Depth of insulation that stands upright, from the slab downwards", quantity("extent")),
        })
        .check(({ value, issues }) => {
          if ((value.width === undefined) === (value.depth === undefined))
            issues.push(custom("edge-one-of", {}, value));
        }),
    ),
    membrane: optional("A membrane keeps the ground's water from the floor", yesOrNo(), { usual: "false" }),
  })
  .meta({ id: "ground" });

const monthsOf = (what: string, name: "temperature" | "relative humidity") =>
  either(`${what}, or twelve`, [quantity(name), twelve(quantity(name))]);

/** A ventilated void under a floor, or its climate. */
export const voidSchema = z
  .strictObject({
    area: optional(FLOOR_AREA, quantity("area"), { example: "80 m2" }),
    perimeter: optional(PERIMETER, quantity("length"), { example: "36 m" }),
    "wall thickness": wallThickness,
    soil,
    height: optional("From the ground outside up to the underside of the floor", quantity("height"), {
      usual: "0.3 m",
    }),
    "wall transmittance": optional("U-value of the walls of the void", quantity("transmittance"), {
      usual: "1.5 W/(m2 K)",
      example: "1.7 W/(m2 K)",
    }),
    openings: optional("Area of its vents for each metre of the edge", quantity("openings of a void"), {
      usual: "1500 mm2/m",
    }),
    wind: optional("Mean wind speed of the place, 10 m above ground", quantity("wind speed"), { usual: "4 m/s" }),
    shelter: optional("How the site is sheltered from wind", oneOf(["sheltered", "average", "exposed"]), {
      usual: "average",
    }),
    "ground insulation": optional("Thermal resistance of insulation on the ground", quantity("thermal resistance"), {
      usual: "0 m2 K/W",
      example: "0.5 m2 K/W",
    }),
    temperature: optional(
      "Temperature of the void, where it is known: one value, or twelve from January to December",
      monthsOf("a temperature", "temperature"),
      { example: "8 °C" },
    ),
    humidity: optional(
      "Relative humidity of the void, where it is known: one value, or twelve from January to December",
      monthsOf("a percentage", "relative humidity"),
      { example: "90 %" },
    ),
  })
  .check(({ value, issues }) => {
    const stated = [value.temperature, value.humidity].filter((given) => given !== undefined).length;
    if (stated === 1) issues.push(custom("void-half-climate", {}, value));
    if (stated > 0) return;
    for (const name of ["area", "perimeter"] as const) {
      if (value[name] === undefined) issues.push(custom("void-needs", { key: name }, value));
    }
  })
  .meta({ id: "void" });

const RAIN: readonly WettedByRain[] = ["no", "sheltered", "yes"];

/** `true` and `false` are read as yes and no. */
const wettedByRain = z
  .union([oneOf(RAIN), z.boolean()], { error: `${KIND_MARK}no, sheltered or yes` })
  .transform((said): WettedByRain => (typeof said === "boolean" ? (said ? "yes" : "no") : said));

const trappedWaterSchema = z
  .strictObject({
    layer: key(
      "The layer that holds the water: its name, its material where that occurs once, or its number from 1",
      either("a layer's name, material or number", [
        words("a layer's name or material"),
        z.number().int().min(1).max(MOST_LAYERS),
      ]),
      { example: "mineral wool slab" },
    ),
    amount: optional("Water in a square metre of it, in place of a reading", quantity("water held"), {
      usual: "1 kg/m2",
    }),
    reading: optional("What a moisture meter shows in its timber", quantity("moisture reading")),
    start: optional("The month in which it is there", month(), { usual: "October", example: "October" }),
  })
  .check(({ value, issues }) => {
    if (value.amount !== undefined && value.reading !== undefined) {
      issues.push(custom("trapped-water-twice", {}, value, ["reading"]));
    }
  })
  .meta({ id: "trapped-water" });

/** Water trapped in one layer, as written in the file. */
export type WrittenTrappedWater = z.output<typeof trappedWaterSchema>;

/** One build-up as written in the file. */
export const buildUpSchema = z
  .strictObject(
    {
      name: key("What the build-up is called", words("a name, for example Studio wall"), { example: "Studio wall" }),
      element: key("What the build-up is", oneOf(["wall", "flat roof", "pitched roof", "floor", "partition"])),
      room: optional("The room where its layers begin", words("a room's name"), {
        usual: "indoor",
        example: "damp room",
      }),
      faces: optional(
        "What lies on its outer side: outdoors, ground, void, or a room",
        words("outdoors, ground, void or a room's name"),
        { usual: "outdoors", example: "store" },
      ),
      target: optional("The U-value that the build-up has to reach", quantity("transmittance")),
      pitch: optional("Pitch of a roof, from level", quantity("pitch")),
      span: optional("Span of a ventilated roof, from opening to opening", quantity("span")),
      "clear sky": optional("A roof that sees the clear night sky is colder than the air", yesOrNo(), {
        usual: "false",
      }),
      area: optional("Area with its openings, for quantities and prices", quantity("area")),
      openings: optional("Area of the windows and doors in it", quantity("area"), {
        usual: "none",
        example: "3 m2",
      }),
      length: optional("Its length, for counting studs and laps", quantity("length")),
      "wetted by rain": optional(
        "Whether driving rain reaches the outside: no, sheltered by an overhang or another building, or yes",
        wettedByRain,
        { usual: "not said: asked where it decides", example: "sheltered" },
      ),
      "unheated skin": optional("The outer skin is thin metal over an unheated room", yesOrNo(), { usual: "false" }),
      framings: optional(
        "Framing that runs through several layers, by names of your own",
        named("framings by name", framingSchema),
      ),
      layers: key(
        "Its layers, from the room outwards",
        listOf("a list of layers, each beginning with a hyphen", layerSchema, MOST_LAYERS),
      ),
      ground: optional("The slab on the ground, with `faces: ground`", groundSchema),
      void: optional("The void under a floor, with `faces: void`", voidSchema),
      space: optional(
        "The unheated space next door, as a resistance; with `faces` and an unheated room",
        z.strictObject({
          area: key("Area between room and space", quantity("area")),
          external: key(
            "The parts between the space and outdoors",
            listOf(
              "a list of outer parts, each with area and transmittance",
              z.strictObject({
                area: key("Area of the part", quantity("area"), { example: "30 m2" }),
                transmittance: key("U-value of the part", quantity("transmittance"), { example: "0.5 W/(m2 K)" }),
              }),
              50,
            ),
          ),
          "air changes": key("How often an hour the air of the space is changed", quantity("air changes"), {
            example: "1 /h",
          }),
          volume: key("Volume of the space", quantity("volume"), { example: "60 m3" }),
        }),
      ),
      "roof space": optional(
        "The roof void above a ceiling, counted as a resistance",
        oneOf(["tiles without underlay", "felt or boards", "felt or boards, low emissivity"]),
      ),
      "junction factors": optional(
        "Temperature factors of junctions, known from elsewhere",
        listOf(
          "a list of junctions, each with name and factor",
          z.strictObject({
            name: key("What the junction is called", words("a name"), { example: "window reveal" }),
            factor: key("Temperature factor fRsi of its coldest place", bare("temperature factor")),
          }),
          50,
        ),
      ),
      "two-season check": optional("Also run the check of one wet and one dry season", yesOrNo(), { usual: "false" }),
      leak: optional(
        "A gap in each square metre through which room air leaks in",
        z.strictObject({
          length: key("Length of the gap in a square metre", quantity("length"), { example: "1 m" }),
          width: key("Width of the gap", quantity("width of a gap"), { example: "1 mm" }),
          pressure: optional("Pressure that drives the air", quantity("pressure"), { usual: "2 Pa" }),
        }),
      ),
      "trapped water": optional(
        "Water in a layer when the build-up is closed, which must dry",
        either("where water is trapped, in braces, or a list of such", [
          trappedWaterSchema,
          listOf("a list of places where water is trapped", trappedWaterSchema, 20),
        ]),
      ),
      "variable resistance": optional("Also run with each sheet's sd at the humidity it meets", yesOrNo(), {
        usual: "false",
      }),
      variants: optional(
        "Variants of the build-up to compare",
        listOf("a list of variants, each with name and changes", variantSchema, MOST_VARIANTS),
      ),
    },
    { error: `${KIND_MARK}a build-up with name, element and layers, each on a line of its own` },
  )
  .meta({ id: "build-up" });

/** A build-up as written in the file, with quantities read. */
export type WrittenBuildUp = z.output<typeof buildUpSchema>;
export type WrittenGround = z.output<typeof groundSchema>;
export type WrittenVoid = z.output<typeof voidSchema>;
