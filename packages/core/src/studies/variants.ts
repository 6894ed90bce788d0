import { assessBuildUp } from "../assess-build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkProject } from "../given/project.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp, Project } from "../project/types.ts";
import { requireFunction, requireList } from "../require.ts";
import type { BuildUpResult, ComparisonOfBuildUp, ComparisonRow, ComparisonStudy } from "../result/types.ts";
import { type Surroundings, surroundingsOf } from "../surroundings/surroundings.ts";
import { againstBase, type PlainRow } from "./variants/against-base.ts";
import { costOf, goodsWithPrices, netArea } from "./variants/cost.ts";
import { priceNotes } from "./variants/price-notes.ts";
import { variantInWords } from "./variants/variant-in-words.ts";

/**
 * Compares variants with their build-ups: heat, water, thickness, money and quantities.
 *
 * @param project - the project
 * @param assessed - the results of its build-ups, if already known (default: they are assessed here)
 * @param next - receives the result of each variant and returns it
 * @returns one comparison for each build-up that has variants, with the build-up as drawn first; null if none has any
 */
export function compareVariants(
  project: Project,
  assessed?: readonly BuildUpResult[],
  next: Next = (result) => result,
): ComparisonStudy | null {
  requireFunction(next, "next");
  if (assessed !== undefined && assessed !== null) requireList(assessed, "assessed");
  refuseFaults(checkProject(project, ["project"]));
  const varied = project.buildUps.filter(({ variants }) => variants.length > 0);
  if (varied.length === 0) return null;
  const surroundings = surroundingsOf(project);
  const { prices } = project;
  return {
    currency: prices?.currency ?? "",
    hourRate: prices?.hourRate ?? null,
    heatPricePerKilowattHour: prices?.heatPricePerKilowattHour ?? null,
    buildUps: varied.map((buildUp) => {
      const base = assessed?.find(({ slug }) => slug === buildUp.slug) ?? assessBuildUp(buildUp, surroundings);
      return comparisonOf(buildUp, base, project, surroundings, next);
    }),
    notes: priceNotes(project),
    assumptions: assumptionsOf(project),
  };
}

type Next = (result: BuildUpResult) => BuildUpResult;

function comparisonOf(
  buildUp: BuildUp,
  assessed: BuildUpResult,
  project: Project,
  surroundings: Surroundings,
  next: Next,
): ComparisonOfBuildUp {
  const base = plainRow(null, [], buildUp, assessed, project);
  const variants = buildUp.variants.map(({ name, changes, buildUp: changed }) =>
    heldAgainst(base, plainRow(name, changes, changed, next(assessBuildUp(changed, surroundings)), project), project),
  );
  return {
    name: buildUp.name,
    slug: buildUp.slug,
    area: netArea(buildUp),
    length: buildUp.length,
    rows: [{ ...base, againstBase: null, sentence: null }, ...variants],
  };
}

function heldAgainst(base: PlainRow, variant: PlainRow, { prices }: Project): ComparisonRow {
  const difference = againstBase(variant, base, prices?.heatPricePerKilowattHour ?? null);
  const sentence = variantInWords(variant, base, difference, prices?.currency ?? "");
  return { ...variant, againstBase: difference, sentence };
}

function plainRow(
  variant: string | null,
  changes: readonly string[],
  buildUp: BuildUp,
  result: BuildUpResult,
  { prices }: Project,
): PlainRow {
  const area = netArea(buildUp);
  const goods = goodsWithPrices(buildUp, prices);
  const thickness = buildUp.layers.reduce((sum, layer) => sum + layer.thickness, 0);
  const heatPerYear = result.heat?.heatPerYear ?? null;
  return {
    variant,
    slug: buildUp.slug,
    changes: [...changes],
    judgement: result.judgement.word,
    reason: result.judgement.message,
    transmittance: result.heat?.transmittance ?? null,
    clearTransmittance: result.heat?.clearTransmittance ?? null,
    temperatureFactor: result.heat?.temperatureFactor ?? null,
    requiredTemperatureFactor: result.heat?.requiredTemperatureFactor ?? null,
    verdict: result.moisture?.verdict ?? null,
    peak: result.moisture === null ? null : { ...result.moisture.peak },
    carriedOver: result.moisture?.carriedOver ?? null,
    thickness,
    floorArea: isUpright(buildUp) && buildUp.length !== null ? thickness * buildUp.length : null,
    ...continuity(result),
    heatPerYear,
    heatPerYearInAll: heatPerYear === null || area === null ? null : heatPerYear * area,
    goods,
    cost: costOf(goods, prices, area),
  };
}

/** The vapour layer on the warm side, and how much depends on its being unbroken; nulls if there is no such layer. */
function continuity(
  result: BuildUpResult,
): Pick<PlainRow, "vapourLayer" | "dependence" | "whenOpened" | "whenLeftOut"> {
  const { vapourLayer, findings, sensitivity, layers } = result;
  const codes = new Set(findings.map(({ code }) => code));
  const named =
    vapourLayer === null || vapourLayer.onWarmSide !== true || vapourLayer.sd === null
      ? null
      : { name: vapourLayer.layers.map((index) => layers[index]!.name).join(" and "), sd: vapourLayer.sd };
  const run = (name: string): PlainRow["whenOpened"] => {
    const found = named === null ? undefined : sensitivity.find((one) => one.name === name);
    return found === undefined ? null : { verdict: found.verdict, peak: found.peak.amount };
  };
  return {
    vapourLayer: named,
    dependence: codes.has("depends-on-vapour-layer")
      ? "depends on its vapour layer"
      : codes.has("forgives-gaps")
        ? "forgives gaps"
        : null,
    whenOpened: run("vapour layer ten times more open"),
    whenLeftOut: run("no vapour layer"),
  };
}

function assumptionsOf({ prices }: Project): string[] {
  const always = [
    "Heat over the year is U times the degree hours of the project's own months and rooms, without a heating limit: it overstates the cost, by the same share for every variant.",
    "Quantities leave openings out and count framing separately; waste is as the prices state.",
  ];
  if (prices === null) return [...always, "No prices are given. warmside has none of its own."];
  const pays =
    prices.heatPricePerKilowattHour === null
      ? "No payback time is given, because there is no heat price."
      : "The payback time is the extra cost divided by the yearly saving at the given heat price, without interest or price changes; include the losses of the heater in that price.";
  return [
    ...always,
    "Prices, waste and hours are those of the project file or its table; the cost per square metre counts rolls and sheets by their share, the total cost counts them whole.",
    pays,
  ];
}
