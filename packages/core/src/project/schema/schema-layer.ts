import * as z from "zod";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { framingSchema, materialOrName } from "./schema-material.ts";
import { bare, custom, either, KIND_MARK, oneOf, quantity, words, yesOrNo } from "./schema-values.ts";
import type { ReadValue, WrittenLayer } from "./written-project.ts";

const TAPED_FORMS = "no, yes, or a length, for example onto the framing 20 mm";

/** Keys that only an air layer has. */
const AIR_KEYS = ["ventilation", "ventilation area", "open", "resistance", "emissivity"] as const;

/** Keys that only a layer of a material has. */
const MATERIAL_KEYS = [
  "thickness", "fit", "fasteners", "gaps", "purpose",
  "bonded", "gap beside framing", "taped",
  "facing emissivity inner", "facing emissivity outer", "facing sd inner", "facing sd outer",
] as const; // biome-ignore format: two groups

const ONTO_THE_FRAMING = /^onto the framing (?<reach>\S.*)$/;

/** Not taped, taped from board to board over the framing, or onto its edges by a length. */
const tapedSchema: z.ZodType<"no" | "yes" | ReadValue> = z
  .union([z.string(), z.boolean()], { error: `${KIND_MARK}${TAPED_FORMS}` })
  .meta({ description: TAPED_FORMS, examples: ["yes", "onto the framing 20 mm"] })
  .transform((said, context): "no" | "yes" | ReadValue => {
    const plain = String(said).trim().toLowerCase().replace(/\s+/g, " ");
    if (plain === "no" || plain === "false") return "no";
    if (plain === "yes" || plain === "true") return "yes";
    const reach = ONTO_THE_FRAMING.exec(plain)?.groups?.reach;
    if (reach === undefined) {
      context.issues.push(custom("taped-unread", {}, said));
      return z.NEVER;
    }
    const reading = readQuantity(reach, "tape");
    if (reading.ok) return { quantity: "tape", value: reading.value };
    context.issues.push(custom(reading.problems[0]!.code, { ...reading.problems[0]!.details, write: null }, said));
    return z.NEVER;
  });

/** A field of every key of a layer, each of which may be left out. */
export type LayerFields = {
  [Key in keyof Required<WrittenLayer>]: z.ZodOptional<z.ZodType<Required<WrittenLayer>[Key]>>;
};

/** The keys of a layer: what a layer has, and what a change may set. */
export const LAYER_FIELDS: LayerFields = {
  name: words("a name").optional(),
  material: materialOrName.optional(),
  thickness: quantity("thickness").optional(),
  framing: either("the name of a framing, or its values in braces", [
    words("the name of a framing"),
    framingSchema,
  ]).optional(),
  fit: oneOf(["continuous", "gaps", "gaps and air behind"]).optional(),
  fasteners: z
    .strictObject({
      "per area": quantity("fasteners per area"),
      diameter: quantity("diameter of a fastener"),
      conductivity: quantity("conductivity"),
      recess: quantity("recess").optional(),
    })
    .optional(),
  gaps: either("a share, for example 0.1 %, or width and spacing, or diameter and per area in braces", [
    quantity("share missing"),
    z
      .strictObject({
        width: quantity("width of a gap").optional(),
        spacing: quantity("spacing").optional(),
        diameter: quantity("width of a gap").optional(),
        "per area": quantity("fasteners per area").optional(),
      })
      .check(({ value, issues }) => {
        const { width, spacing, diameter, "per area": perArea } = value;
        const given = [width, spacing, diameter, perArea].filter((one) => one !== undefined).length;
        const isLaps = width !== undefined && spacing !== undefined;
        const isHoles = diameter !== undefined && perArea !== undefined;
        if (given !== 2 || isLaps === isHoles) issues.push(custom("gaps-one-form", {}, value));
        else if (isLaps && width.value >= spacing.value) issues.push(custom("laps-too-wide", {}, value, ["width"]));
        else if (isHoles && (Math.PI / 4) * diameter.value ** 2 * perArea.value >= 1)
          issues.push(custom("holes-too-many", {}, value, ["diameter"]));
      }),
  ]).optional(),
  purpose: oneOf([
    "vapour layer",
    "deck",
    "damp-proof membrane",
    "radon membrane",
    "gas membrane",
    "weather skin",
    "tanking",
  ]).optional(),
  bonded: yesOrNo().optional(),
  "gap beside framing": quantity("gap beside framing").optional(),
  taped: tapedSchema.optional(),
  "facing emissivity inner": bare("emissivity").optional(),
  "facing emissivity outer": bare("emissivity").optional(),
  "facing sd inner": quantity("sd").optional(),
  "facing sd outer": quantity("sd").optional(),
  air: quantity("thickness of an air layer").optional(),
  ventilation: oneOf(["none", "slight", "well"]).optional(),
  "ventilation area": words("an area of openings, for example 1000 mm2/m").optional(),
  open: oneOf(["both ends", "one end", "closed"]).optional(),
  resistance: quantity("thermal resistance").optional(),
  emissivity: bare("emissivity").optional(),
};

/** One layer: exactly one of a material or air. */
export const layerSchema: z.ZodType<WrittenLayer> = z
  .strictObject(LAYER_FIELDS, {
    error: `${KIND_MARK}a layer in braces, for example { material: plywood, thickness: 12 mm } or { air: 25 mm, ventilation: well }`,
  })
  .check(({ value, issues }) => {
    const isAir = value.air !== undefined;
    if (isAir && value.material !== undefined) issues.push(custom("layer-both", {}, value));
    if (!isAir && value.material === undefined) issues.push(custom("layer-neither", {}, value));
    if (isAir === (value.material !== undefined)) return;
    const foreign = (isAir ? MATERIAL_KEYS : AIR_KEYS).filter((key) => value[key] !== undefined);
    const code = isAir ? "key-not-for-air" : "key-not-for-material";
    for (const key of foreign) issues.push(custom(code, { key }, value, [key]));
    if (isAir && value.ventilation === undefined) issues.push(custom("ventilation-missing", {}, value));
  });
