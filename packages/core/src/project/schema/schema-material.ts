import * as z from "zod";
import { bare, custom, either, KIND_MARK, key, listOf, oneOf, optional, quantity, words } from "./schema-values.ts";

/** Keys that each give the vapour resistance of a sheet. */
export const SHEET_KEYS = ["sd", "vapour resistance", "permeance", "vapour transmission", "sd by humidity"] as const;

/** Keys that only a material with a thickness has. */
export const THICK_KEYS = [
  "conductivity",
  "resistance",
  "vapour resistance factor",
  "permeability",
  "wet vapour resistance factor",
] as const;

/** Pairs of keys of which a material has exactly one: λ or R, μ or permeability. */
const EITHER = [
  ["conductivity", "resistance"],
  ["vapour resistance factor", "permeability"],
] as const;

/** A material given by its values: one with a thickness, or a sheet. */
export const materialSchema = z
  .strictObject({
    name: key("What the material is called", words("a name"), { example: "hemp board" }),
    conductivity: optional("Thermal conductivity λ as declared; a sheet has none", quantity("conductivity")),
    resistance: optional(
      "R-value of the material in the thickness of its layer, in place of conductivity: m2 K/W, or R 20 as in North America",
      quantity("thermal resistance"),
      { example: "R 20" },
    ),
    "vapour resistance factor": optional(
      "Vapour resistance factor μ, dry; a sheet has none",
      bare("vapour resistance factor"),
    ),
    permeability: optional(
      "Vapour permeability of the material, in place of its factor: perm in, or ng/(Pa s m)",
      quantity("permeability"),
    ),
    "wet vapour resistance factor": optional(
      "Vapour resistance factor μ in damp air, where the data sheet gives two",
      bare("vapour resistance factor"),
      { usual: "the dry one" },
    ),
    density: optional("Density, needed for moisture contents of wood and boards", quantity("density")),
    "specific heat": optional(
      "Specific heat capacity: printed, but not used by the monthly method",
      quantity("specific heat"),
    ),
    emissivity: optional("Emissivity of its faces, for the air layers beside it", bare("emissivity"), { usual: "0.9" }),
    kind: optional(
      "How mould and water affect it, which decides its limits",
      oneOf(["wood", "board", "mineral", "metal", "plastic", "paper"]),
    ),
    source: optional("Where its values come from, printed beside them", words("where the values come from"), {
      usual: "given in the project file",
      example: "data sheet of May 2024",
    }),
    sd: optional("Equivalent air layer thickness of a sheet", quantity("sd")),
    "vapour resistance": optional(
      "Vapour resistance of a sheet, as British data sheets give it",
      quantity("vapour resistance"),
    ),
    permeance: optional("Vapour permeance of a sheet, as American data sheets give it", quantity("permeance")),
    "vapour transmission": optional(
      "Transmission rate of a sheet, with the climate of its test",
      z
        .strictObject({
          rate: key("Water that passes a square metre in a day", quantity("vapour transmission")),
          temperature: key("Temperature of the test", quantity("temperature"), { example: "23 °C" }),
          humidity: key(
            "Relative humidity on the dry and on the damp side",
            z.tuple([quantity("humidity of a test"), quantity("humidity of a test")], {
              error: `${KIND_MARK}a pair, for example [0 %, 85 %]`,
            }),
            { example: ["0 %", "85 %"] },
          ),
        })
        .check(({ value, issues }) => {
          const [dry, damp] = value.humidity;
          if (dry.value === damp.value) issues.push(custom("transmission-test-alike", {}, value, ["humidity"]));
        }),
    ),
    "sd by humidity": optional(
      "sd of a sheet that changes with the humidity: pairs of relative humidity and sd, the driest first",
      listOf(
        "a list of pairs, relative humidity and sd",
        z.tuple([quantity("relative humidity"), quantity("sd")], {
          error: `${KIND_MARK}a pair, for example [30 %, 10 m]`,
        }),
        20,
      ),
      {
        example: [
          ["30 %", "10 m"],
          ["80 %", "0.5 m"],
        ],
      },
    ),
    "facing sd": optional("sd of the facing on each of its two faces, beside the μ of the core", quantity("sd")),
    "facing emissivity": optional("Emissivity of its facings", bare("emissivity"), { usual: "its emissivity" }),
    spread: optional("How far its values may be off, for the spread study", quantity("spread"), {
      usual: "set by its `basis`",
    }),
    basis: optional("How certain its values are", oneOf(["declared", "tabulated", "assumed"]), {
      usual: "declared with a source, assumed without",
    }),
  })
  .check(({ value, issues }) => {
    const sheet = SHEET_KEYS.filter((name) => value[name] !== undefined);
    const thick = THICK_KEYS.filter((name) => value[name] !== undefined);
    if (sheet.length > 1) issues.push(custom("material-two-sheets", { keys: sheet }, value, [sheet[1]!]));
    if (sheet.length > 0 && thick.length > 0) issues.push(custom("material-mixed", { sheet: sheet[0]!, thick }, value));
    if (sheet.length > 0) return;
    for (const [name, other] of EITHER)
      if (value[name] !== undefined && value[other] !== undefined)
        issues.push(custom("material-told-twice", { keys: [name, other] }, value, [other]));
    const missing = EITHER.filter((names) => names.every((name) => value[name] === undefined)).map(([name]) => name);
    if (missing.length > 0) issues.push(custom("material-incomplete", { missing }, value));
  })
  .meta({ id: "material" });

/** The name of a material in the table, or a material given by its values. */
export const materialOrName = either("the name of a material, or its values in braces", [
  words("the name of a material"),
  materialSchema,
]);

/** Framing, given by a share, by width and spacing, or by a metal channel and spacing. */
export const framingSchema = z
  .strictObject(
    {
      material: key("What the framing is made of", materialOrName, { example: "softwood timber" }),
      fraction: optional(
        "Share of the area that the framing takes, in place of width and spacing",
        quantity("share of the area"),
      ),
      width: optional("Width of one stud, joist or batten", quantity("width")),
      spacing: optional("From the centre of one to the centre of the next", quantity("spacing")),
      "other timber": optional(
        "Share of the area that rails, plates, noggins and corners take beside it",
        quantity("share of the area"),
        { usual: "7.5 % in walls and partitions, 1 % in roofs and floors" },
      ),
      channel: optional(
        "A metal stud folded from sheet, in place of width",
        z.strictObject({
          sheet: key("Thickness of the sheet metal", quantity("thickness of sheet metal")),
          flange: key("Width of each flange", quantity("flange")),
          lip: optional("Length of the lips at the edges of the flanges", quantity("lip"), { usual: "0 mm" }),
        }),
      ),
    },
    {
      error: `${KIND_MARK}a framing in braces, for example { material: softwood timber, width: 45 mm, spacing: 600 mm }`,
    },
  )
  .check(({ value, issues }) => {
    if (value.channel !== undefined) {
      for (const name of ["fraction", "width", "other timber"] as const)
        if (value[name] !== undefined) issues.push(custom("channel-has-its-own", { key: name }, value, [name]));
      if (value.spacing === undefined) issues.push(custom("framing-half", { missing: "spacing" }, value));
      else if (value.channel.flange.value >= value.spacing.value)
        issues.push(custom("framing-too-wide", {}, value, ["channel", "flange"]));
      return;
    }
    const measured = [value.width, value.spacing, value["other timber"]].some((given) => given !== undefined);
    if (value.fraction !== undefined && measured) issues.push(custom("framing-two-ways", {}, value, ["fraction"]));
    if (value.fraction !== undefined) return;
    if (value.width === undefined && value.spacing === undefined) issues.push(custom("framing-no-share", {}, value));
    else if (value.width === undefined) issues.push(custom("framing-half", { missing: "width" }, value));
    else if (value.spacing === undefined) issues.push(custom("framing-half", { missing: "spacing" }, value));
    else if (value.width.value >= value.spacing.value) issues.push(custom("framing-too-wide", {}, value, ["width"]));
  })
  .meta({ id: "framing" });

/** A material given by its values, and a framing, as written in the file, with quantities read. */
export type WrittenMaterial = z.output<typeof materialSchema>;
export type WrittenFraming = z.output<typeof framingSchema>;
