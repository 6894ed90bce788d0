import * as z from "zod";
import { bare, custom, either, KIND_MARK, listOf, oneOf, quantity, words } from "./schema-values.ts";
import type { WrittenFraming, WrittenMaterial } from "./written-project.ts";

/** Keys that each give the vapour resistance of a sheet. */
export const SHEET_KEYS = ["sd", "vapour resistance", "permeance", "sd by humidity"] as const;

/** Keys that only a material with a thickness has. */
export const THICK_KEYS = ["conductivity", "vapour resistance factor", "wet vapour resistance factor"] as const;

/** A material given on the spot: with a thickness of its own, or a sheet. */
export const materialSchema: z.ZodType<WrittenMaterial> = z
  .strictObject({
    name: words("a name"),
    conductivity: quantity("conductivity").optional(),
    "vapour resistance factor": bare("vapour resistance factor").optional(),
    "wet vapour resistance factor": bare("vapour resistance factor").optional(),
    density: quantity("density").optional(),
    "specific heat": quantity("specific heat").optional(),
    emissivity: bare("emissivity").optional(),
    kind: oneOf(["wood", "board", "mineral", "metal", "plastic", "paper"]).optional(),
    source: words("where the values come from").optional(),
    sd: quantity("sd").optional(),
    "vapour resistance": quantity("vapour resistance").optional(),
    permeance: quantity("permeance").optional(),
    "sd by humidity": listOf(
      "a list of pairs, relative humidity and sd",
      z.tuple([quantity("relative humidity"), quantity("sd")], { error: "kind:a pair, for example [30 %, 10 m]" }),
      20,
    ).optional(),
    "facing sd": quantity("sd").optional(),
    "facing emissivity": bare("emissivity").optional(),
    spread: quantity("spread").optional(),
    basis: oneOf(["declared", "tabulated", "assumed"]).optional(),
  })
  .check(({ value, issues }) => {
    const sheet = SHEET_KEYS.filter((key) => value[key] !== undefined);
    const thick = THICK_KEYS.filter((key) => value[key] !== undefined);
    if (sheet.length > 1) issues.push(custom("material-two-sheets", { keys: sheet }, value, [sheet[1]!]));
    if (sheet.length > 0 && thick.length > 0) issues.push(custom("material-mixed", { sheet: sheet[0]!, thick }, value));
    if (sheet.length > 0) return;
    const missing = (["conductivity", "vapour resistance factor"] as const).filter((key) => value[key] === undefined);
    if (missing.length > 0) issues.push(custom("material-incomplete", { missing }, value));
  });

/** The name of a material in the table, or one given on the spot. */
export const materialOrName: z.ZodType<string | WrittenMaterial> = either(
  "the name of a material, or its values in braces",
  [words("the name of a material"), materialSchema],
);

/** Framing: a share, or width and spacing. */
export const framingSchema: z.ZodType<WrittenFraming> = z
  .strictObject(
    {
      material: materialOrName,
      fraction: quantity("share of the area").optional(),
      width: quantity("width").optional(),
      spacing: quantity("spacing").optional(),
      "other timber": quantity("share of the area").optional(),
      channel: z
        .strictObject({
          sheet: quantity("thickness of sheet metal"),
          flange: quantity("flange"),
          lip: quantity("lip").optional(),
        })
        .optional(),
    },
    {
      error: `${KIND_MARK}a framing in braces, for example { material: softwood timber, width: 45 mm, spacing: 600 mm }`,
    },
  )
  .check(({ value, issues }) => {
    if (value.channel !== undefined) {
      for (const key of ["fraction", "width", "other timber"] as const)
        if (value[key] !== undefined) issues.push(custom("channel-has-its-own", { key }, value, [key]));
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
  });
