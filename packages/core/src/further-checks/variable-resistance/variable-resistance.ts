import { type BuildUpCalculation, compareSections } from "../../calculate-build-up.ts";
import { MONTH_NAMES } from "../../constants.ts";
import type { BuildUp, Layer } from "../../project/types.ts";
import type { VariableResistanceResult } from "../../result/types.ts";
import { peakOfYear } from "../section-nodes/peak-of-year.ts";
import { FIXED_POINT_TOLERANCE } from "./fixed-point.ts";
import { type VaryingSection, varyingSection } from "./varying-section.ts";
import { type VaryingYear, varyingYear } from "./varying-year.ts";

/** Whether a build-up asks for resistance by humidity, or has a layer given by humidity. */
export function hasVariableResistance(buildUp: BuildUp): boolean {
  return buildUp.variableResistance || buildUp.layers.some(isGivenByHumidity);
}

function isGivenByHumidity(layer: Layer): boolean {
  return layer.type !== "air" && layer.material.equivalentAirLayerThicknessByHumidity !== null;
}

/**
 * The year with each layer's vapour resistance taken from its own mean humidity, month by month.
 *
 * @param calculation - the build-up's figures with constant resistance
 * @returns the governing section's verdict and the resistances used, with rounds and tolerance
 * Source: this project's rule (METHOD.md, Vapour resistance of layers); dry values govern, this is shown
 *   beside them.
 */
export function variableResistance(calculation: BuildUpCalculation): VariableResistanceResult {
  const { buildUp, sections } = calculation;
  const runs = sections.map(({ id, name, slices, line, climate }) => {
    const section = varyingSection(slices, line, climate, buildUp);
    return { id, name, section, year: varyingYear(section) };
  });
  const governing = runs.reduce((worst, run) => (compareSections(run, worst) > 0 ? run : worst));
  const points = runs.flatMap(({ year }) => year.months);
  return {
    rounds: Math.max(...points.map(({ rounds }) => rounds)),
    tolerance: FIXED_POINT_TOLERANCE,
    converged: points.every(({ converged }) => converged),
    section: governing.name,
    sectionId: governing.id,
    verdict: governing.year.verdict,
    peak: peakOfYear(governing.year),
    layers: layersOf(governing.section, governing.year),
  };
}

/** A slice too thin to have its own interval has no humidity to report. */
function layersOf(
  { slices, follow, intervalSlice }: VaryingSection,
  year: VaryingYear,
): VariableResistanceResult["layers"] {
  return slices.flatMap(({ layer, name }, slice) => {
    if (follow[slice] === null || !intervalSlice.includes(slice)) return [];
    const months = MONTH_NAMES.map((month, index) => ({
      month,
      relativeHumidity: year.months[index]!.humidity[slice]!,
      sd: year.months[index]!.sliceSd[slice]!,
    }));
    return [{ layer, name, months }];
  });
}
