import * as z from "zod";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { framingSchema, materialOrName } from "./schema-material.ts";
import {
  bare,
  type CustomIssue,
  custom,
  either,
  KIND_MARK,
  key,
  oneOf,
  optional,
  plainWords,
  quantity,
  type ReadValue,
  refused,
  words,
  yesOrNo,
} from "./schema-values.ts";

const TAPED_FORMS = "no, yes, or a length, for example onto the framing 20 mm";
const ONTO_THE_FRAMING = /^onto the framing (?<reach>\S.*)$/;

/** Not taped, taped over the framing from board to board, or taped onto its edges by a length. */
const taped = z
  .union([z.string(), z.boolean()], { error: `${KIND_MARK}${TAPED_FORMS}` })
  .transform((said, context): "no" | "yes" | ReadValue => {
    const plain = plainWords(String(said));
    if (plain === "no" || plain === "false") return "no";
    if (plain === "yes" || plain === "true") return "yes";
    const reach = ONTO_THE_FRAMING.exec(plain)?.groups?.reach;
    if (reach === undefined) return refused("taped-unread", {}, said, context);
    const reading = readQuantity(reach, "tape");
    if (reading.ok) return { quantity: "tape", value: reading.value };
    return refused(reading.problems[0]!.code, { ...reading.problems[0]!.details, write: null }, said, context);
  });

/** Keys that every layer may have. */
const COMMON_FIELDS = {
  name: optional("What the layer is called in the report", words("a name"), {
    usual: "its material",
    example: "lining",
  }),
  framing: optional(
    "Timber or metal that runs through the layer: a name from `framings`, or its values for this layer alone",
    either("the name of a framing, or its values in braces", [words("the name of a framing"), framingSchema]),
    { example: "studs" },
  ),
};

/** Keys that only a layer of a material may have. */
const MATERIAL_FIELDS = {
  material: optional("A name from the table of materials, or a material's values in braces", materialOrName, {
    example: "mineral wool slab",
  }),
  thickness: optional("Thickness; a sheet takes none", quantity("thickness")),
  fit: optional(
    "How well insulation fills its place: raises the U-value where there are gaps",
    oneOf(["continuous", "gaps", "gaps and air behind"]),
    { usual: "continuous" },
  ),
  fasteners: optional(
    "Metal fasteners that go through insulation",
    z.strictObject({
      "per area": key("How many there are on a square metre", quantity("fasteners per area")),
      diameter: key("Diameter of one", quantity("diameter of a fastener")),
      conductivity: key("Thermal conductivity of their metal", quantity("conductivity"), { example: "50 W/(m K)" }),
      recess: optional("How far short of the layer's face they end", quantity("recess"), { usual: "0 mm" }),
    }),
  ),
  gaps: optional(
    "What is missing of a sheet or board: its share of the area, open laps, or round holes",
    either("a share, for example 0.1 %, laps or holes in braces", [
      quantity("share missing"),
      z
        .strictObject({
          width: optional("Width of one open lap", quantity("width of a gap")),
          spacing: optional("From lap to lap", quantity("spacing"), { example: "1.2 m" }),
          diameter: optional("Diameter of one round hole", quantity("width of a gap"), { example: "10 mm" }),
          "per area": optional("How many holes there are on a square metre", quantity("fasteners per area")),
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
    ]),
    { example: "0.1 %" },
  ),
  purpose: optional(
    "What the layer is for; all but a vapour layer must stay where it is",
    oneOf(["vapour layer", "deck", "damp-proof membrane", "radon membrane", "gas membrane", "weather skin", "tanking"]),
  ),
  bonded: optional("Foam that sticks to what lies outside it all over, as sprayed foam does", yesOrNo(), {
    usual: "false",
  }),
  "gap beside framing": optional(
    "Gap between the boards and each side of the framing that interrupts them",
    quantity("gap beside framing"),
  ),
  taped: optional(
    "Tape over the joints of the boards at the framing: no, yes, or onto the framing and how far",
    taped,
    {
      example: "onto the framing 20 mm",
    },
  ),
  "facing emissivity inner": optional("Emissivity of its room face", bare("emissivity"), { usual: "the material's" }),
  "facing emissivity outer": optional("Emissivity of its outer face", bare("emissivity"), { usual: "the material's" }),
  "facing sd inner": optional("sd of the facing on its room face", quantity("sd"), { usual: "the material's" }),
  "facing sd outer": optional("sd of the facing on its outer face", quantity("sd"), { usual: "the material's" }),
};

/** Keys that only a layer of air may have. */
const AIR_FIELDS = {
  air: optional("Depth of an air layer, in place of a material", quantity("thickness of an air layer")),
  ventilation: optional(
    "How the air layer is ventilated: none where it is closed all round, well where it is open at both ends",
    oneOf(["none", "slight", "well"]),
  ),
  "ventilation area": optional(
    "Area of the openings: for each metre of length in walls, for each square metre in roofs and floors",
    words("an area of openings, for example 1000 mm2/m"),
    { example: "1000 mm2/m" },
  ),
  open: optional("Where the air layer is open to outdoors", oneOf(["both ends", "one end", "closed"])),
  resistance: optional("Thermal resistance of the air layer, where it is known", quantity("thermal resistance"), {
    usual: "calculated",
  }),
  emissivity: optional("Emissivity of the faces of the air layer", bare("emissivity"), {
    usual: "that of its neighbours",
  }),
};

/** All keys of a layer, which a change may also set. */
export const LAYER_FIELDS = { ...COMMON_FIELDS, ...MATERIAL_FIELDS, ...AIR_FIELDS };

const layerKeys = z.strictObject(LAYER_FIELDS, {
  error: `${KIND_MARK}a layer in braces, for example { material: plywood, thickness: 12 mm } or { air: 25 mm, ventilation: well }`,
});

/** A layer as written in the file, with quantities read. */
export type WrittenLayer = z.output<typeof layerKeys>;

/**
 * Finds keys of a layer that do not go together: it has exactly one of a material and air, and the keys for that.
 *
 * @param layer - its keys, each with a value of the right kind
 * @returns the faults, with paths under the layer
 */
export function faultsOfLayer(layer: WrittenLayer): CustomIssue[] {
  const isAir = layer.air !== undefined;
  if (isAir && layer.material !== undefined) return [custom("layer-both", {}, layer)];
  if (!isAir && layer.material === undefined) return [custom("layer-neither", {}, layer)];
  const foreign = Object.keys(isAir ? MATERIAL_FIELDS : AIR_FIELDS) as (keyof WrittenLayer)[];
  const code = isAir ? "key-not-for-air" : "key-not-for-material";
  const faults = foreign
    .filter((name) => layer[name] !== undefined)
    .map((name) => custom(code, { key: name }, layer, [name]));
  return isAir && layer.ventilation === undefined ? [...faults, custom("ventilation-missing", {}, layer)] : faults;
}

/** One layer. */
export const layerSchema = layerKeys
  .check(({ value, issues }) => void issues.push(...faultsOfLayer(value)))
  .meta({ id: "layer" });
