import * as z from "zod";
import type { WettedByRain } from "../types.ts";
import { layerSchema } from "./schema-layer.ts";
import { framingSchema } from "./schema-material.ts";
import {
  bare,
  custom,
  either,
  KIND_MARK,
  listOf,
  month,
  oneOf,
  quantity,
  twelve,
  words,
  yesOrNo,
} from "./schema-values.ts";
import { MOST_VARIANTS, variantSchema } from "./schema-variant.ts";
import type { WrittenBuildUp, WrittenGround, WrittenTrappedWater, WrittenVoid } from "./written-project.ts";

/** Layers in a build-up, and build-ups in a file, at most. */
export const MOST_LAYERS = 100;
export const MOST_BUILD_UPS = 100;

const soil = oneOf(["clay or silt", "sand or gravel", "rock", "unknown"]);

/** A slab on the ground. */
export const groundSchema: z.ZodType<WrittenGround> = z.strictObject({
  area: quantity("area"),
  perimeter: quantity("length"),
  "wall thickness": quantity("thickness of a wall").optional(),
  soil: soil.optional(),
  "edge insulation": z
    .strictObject({
      resistance: quantity("thermal resistance"),
      thickness: quantity("thickness"),
      width: quantity("extent").optional(),
      depth: quantity("extent").optional(),
    })
    .check(({ value, issues }) => {
      if ((value.width === undefined) === (value.depth === undefined)) issues.push(custom("edge-one-of", {}, value));
    })
    .optional(),
  membrane: yesOrNo().optional(),
});

/** A ventilated void under a floor, or its climate. */
export const voidSchema: z.ZodType<WrittenVoid> = z
  .strictObject({
    area: quantity("area").optional(),
    perimeter: quantity("length").optional(),
    "wall thickness": quantity("thickness of a wall").optional(),
    soil: soil.optional(),
    height: quantity("height").optional(),
    "wall transmittance": quantity("transmittance").optional(),
    openings: quantity("openings of a void").optional(),
    wind: quantity("wind speed").optional(),
    shelter: oneOf(["sheltered", "average", "exposed"]).optional(),
    "ground insulation": quantity("thermal resistance").optional(),
    temperature: either("a temperature, or twelve", [
      quantity("temperature"),
      twelve("twelve temperatures, January to December", quantity("temperature")),
    ]).optional(),
    humidity: either("a percentage, or twelve", [
      quantity("relative humidity"),
      twelve("twelve relative humidities, January to December", quantity("relative humidity")),
    ]).optional(),
  })
  .check(({ value, issues }) => {
    const stated = [value.temperature, value.humidity].filter((given) => given !== undefined).length;
    if (stated === 1) issues.push(custom("void-half-climate", {}, value));
    if (stated > 0) return;
    for (const key of ["area", "perimeter"] as const) {
      if (value[key] === undefined) issues.push(custom("void-needs", { key }, value));
    }
  });

/** `true` and `false` are read as yes and no. */
const wettedByRain: z.ZodType<WettedByRain> = z
  .preprocess((said) => (typeof said === "boolean" ? (said ? "yes" : "no") : said), oneOf(["no", "sheltered", "yes"]))
  .meta({
    description: "whether driving rain reaches the outside",
    anyOf: [{ enum: ["no", "sheltered", "yes"] }, { type: "boolean" }],
  });

const trappedWaterSchema: z.ZodType<WrittenTrappedWater> = z
  .strictObject({
    layer: either("a layer's name, material or number", [
      words("a layer's name or material"),
      z.number().int().min(1).max(MOST_LAYERS),
    ]),
    amount: quantity("water held").optional(),
    reading: quantity("moisture reading").optional(),
    start: month().optional(),
  })
  .check(({ value, issues }) => {
    if (value.amount !== undefined && value.reading !== undefined) {
      issues.push(custom("trapped-water-twice", {}, value, ["reading"]));
    }
  });

/** One build-up as it stands in the file. */
export const buildUpSchema: z.ZodType<WrittenBuildUp> = z.strictObject(
  {
    name: words("a name, for example Studio wall"),
    element: oneOf(["wall", "flat roof", "pitched roof", "floor", "partition"]),
    room: words("a room's name").optional(),
    faces: words("outdoors, ground, void or a room's name").optional(),
    target: quantity("transmittance").optional(),
    pitch: quantity("pitch").optional(),
    span: quantity("span").optional(),
    "clear sky": yesOrNo().optional(),
    area: quantity("area").optional(),
    openings: quantity("area").optional(),
    length: quantity("length").optional(),
    "wetted by rain": wettedByRain.optional(),
    "unheated skin": yesOrNo().optional(),
    framings: z.record(words("a name"), framingSchema, { error: `${KIND_MARK}framings by name` }).optional(),
    layers: listOf("a list of layers, each beginning with a hyphen", layerSchema, MOST_LAYERS),
    ground: groundSchema.optional(),
    void: voidSchema.optional(),
    space: z
      .strictObject({
        area: quantity("area"),
        external: listOf(
          "a list of outer parts, each with area and transmittance",
          z.strictObject({ area: quantity("area"), transmittance: quantity("transmittance") }),
          50,
        ),
        "air changes": quantity("air changes"),
        volume: quantity("volume"),
      })
      .optional(),
    "roof space": oneOf(["tiles without underlay", "felt or boards", "felt or boards, low emissivity"]).optional(),
    "junction factors": listOf(
      "a list of junctions, each with name and factor",
      z.strictObject({ name: words("a name"), factor: bare("temperature factor") }),
      50,
    ).optional(),
    "two-season check": yesOrNo().optional(),
    leak: z
      .strictObject({
        length: quantity("length"),
        width: quantity("width of a gap"),
        pressure: quantity("pressure").optional(),
      })
      .optional(),
    "trapped water": either("where water is trapped, in braces, or a list of such", [
      trappedWaterSchema,
      listOf("a list of places where water is trapped", trappedWaterSchema, 20),
    ]).optional(),
    "variable resistance": yesOrNo().optional(),
    variants: listOf("a list of variants, each with name and changes", variantSchema, MOST_VARIANTS).optional(),
  },
  { error: `${KIND_MARK}a build-up with name, element and layers, each on a line of its own` },
);
