import { saturationPressure } from "../../air/saturation-pressure.ts";
import { USUAL_EMISSIVITY, VAPOUR_PERMEABILITY_OF_AIR } from "../../constants.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { plainDigits } from "../../quantities/format-quantity.ts";
import { readQuantity } from "../../quantities/read-quantity.ts";
import { quantityOf } from "../../quantities/vocabulary.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenMaterial } from "../schema/schema-material.ts";
import type { Material } from "../types.ts";
import { valueAt } from "../value-at.ts";
import { wordOfAir } from "./words-of-air.ts";

/**
 * Finds a material in the tables, or makes one from the values in the file.
 *
 * @param written - its name or its values
 * @param path - where it stands
 * @param context - tables and problems
 * @param thickness - thickness of its layer [m], needed for a material given by its resistance; null without one
 * @returns the material, or null after adding a problem
 */
export function resolveMaterial(
  written: string | WrittenMaterial,
  path: ProblemPath,
  context: ReadingContext,
  thickness: number | null = null,
): Material | null {
  return typeof written === "string"
    ? findMaterial(written, path, context)
    : materialOnTheSpot(written, path, thickness, context);
}

/**
 * Looks a material up by name.
 *
 * @param name - as written
 * @param path - where the name stands
 * @param context - tables and problems
 * @returns the material, or null after adding a problem that offers similar names
 */
export function findMaterial(name: string, path: ProblemPath, context: ReadingContext): Material | null {
  const answer = context.findMaterial(name);
  if (answer.found === null) {
    const isLayer = isOfLayer(path);
    const thickness = isLayer ? thicknessBeside(path, context) : null;
    context.collector.add("material-unknown", path, {
      name,
      near: ofThickness(answer.near, thickness),
      alike: answer.alike,
      question: answer.question,
      air: isLayer ? wordOfAir(name) : null,
      thickness: isReadable(thickness) ? thickness : null,
      isSheet: isLayer && thickness === null ? "yes" : "no",
    });
  }
  return answer.found;
}

/** Whether a path leads to the material of a whole layer, not of framing or of a key that a change sets. */
function isOfLayer(path: ProblemPath): boolean {
  const [list, thing] = path.slice(-3);
  return thing === "for" || thing === "add" || list === "layers";
}

/** The thickness given beside a material, as written; null without one. */
function thicknessBeside(path: ProblemPath, { file }: ReadingContext): string | null {
  const beside = [...path.slice(0, -1), "thickness"];
  return valueAt(file.data, beside) === undefined ? null : (file.source.writtenAt(beside) ?? null);
}

function isReadable(thickness: string | null): boolean {
  return thickness !== null && readQuantity(thickness, "thickness").ok;
}

/** The names that end in the written thickness (a sheet may end in "1000 gauge"); if none do, all names. */
function ofThickness(names: readonly string[], thickness: string | null): readonly string[] {
  const telling = names.filter((name) => thickness !== null && name.endsWith(` ${thickness}`));
  return telling.length > 0 ? telling : names;
}

function materialOnTheSpot(
  written: WrittenMaterial,
  path: ProblemPath,
  thickness: number | null,
  context: ReadingContext,
): Material | null {
  const byHumidity = written["sd by humidity"]?.map(([humidity, sd]) => [humidity.value, sd.value] as const) ?? null;
  if (byHumidity !== null && !isRising(byHumidity.map(([humidity]) => humidity))) {
    context.collector.add("sd-by-humidity-order", [...path, "sd by humidity"]);
    return null;
  }
  const conductivity = written.conductivity?.value ?? conductivityOf(written, path, thickness, context);
  if (conductivity === "faulty") return null;
  const dry = written["vapour resistance factor"]?.value ?? factorOf(written.permeability);
  const facing = written["facing sd"]?.value ?? null;
  return {
    name: written.name,
    group: null,
    kind: written.kind ?? null,
    density: written.density?.value ?? null,
    conductivity,
    specificHeat: written["specific heat"]?.value ?? null,
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: written["wet vapour resistance factor"]?.value ?? dry,
    equivalentAirLayerThickness: sdOfSheet(written) ?? byHumidity?.[0]?.[1] ?? null,
    equivalentAirLayerThicknessByHumidity: byHumidity,
    emissivity: (written["facing emissivity"] ?? written.emissivity)?.value ?? USUAL_EMISSIVITY,
    facingInner: facing,
    facingOuter: facing,
    source: written.source ?? "given in the project file",
    basis: written.basis ?? (written.source === undefined ? "assumed" : "declared"),
    spread: written.spread?.value ?? null,
  };
}

/** λ of a material from its R in the thickness of its layer [W/(m·K)]; null if R is not given. */
function conductivityOf(
  { resistance, name }: WrittenMaterial,
  path: ProblemPath,
  thickness: number | null,
  { collector }: ReadingContext,
): number | null | "faulty" {
  if (resistance === undefined) return null;
  if (thickness === null) {
    collector.add("resistance-without-thickness", [...path, "resistance"], { name });
    return "faulty";
  }
  const conductivity = thickness / resistance.value;
  const { low, high } = quantityOf("conductivity").possible!;
  if (conductivity >= low && conductivity <= high) return conductivity;
  collector.add("resistance-impossible", [...path, "resistance"], {
    thickness: `${plainDigits(thickness * 1000)} mm`,
    conductivity: Number.isFinite(conductivity) ? `${plainDigits(conductivity)} W/(m K)` : "no conductivity at all",
  });
  return "faulty";
}

/** μ from a permeability [–]; null without one. */
function factorOf(permeability: WrittenMaterial["permeability"]): number | null {
  return permeability === undefined ? null : VAPOUR_PERMEABILITY_OF_AIR / permeability.value;
}

/** Permeance of a sheet, from its vapour transmission rate and the climate of the test [kg/(m²·s·Pa)]. */
function permeanceOfTest({ rate, temperature, humidity }: NonNullable<WrittenMaterial["vapour transmission"]>): number {
  const [dry, damp] = humidity;
  return rate.value / (Math.abs(damp.value - dry.value) * saturationPressure(temperature.value));
}

/** sd of a sheet, from whichever of four keys is given [m]; null if none is. */
function sdOfSheet(written: WrittenMaterial): number | null {
  if (written.sd !== undefined) return written.sd.value;
  if (written["vapour resistance"] !== undefined)
    return written["vapour resistance"].value * VAPOUR_PERMEABILITY_OF_AIR;
  const transmission = written["vapour transmission"];
  if (transmission !== undefined) return VAPOUR_PERMEABILITY_OF_AIR / permeanceOfTest(transmission);
  if (written.permeance !== undefined) return VAPOUR_PERMEABILITY_OF_AIR / written.permeance.value;
  return null;
}

function isRising(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value > values[index - 1]!);
}
