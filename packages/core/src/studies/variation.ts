import { assessBuildUp, judgeBuildUp } from "../assess-build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkProject } from "../given/project.ts";
import { meetsTarget } from "../heat/target.ts";
import { withFactorsOfJunctions } from "../plane-checks/project-junctions.ts";
import type { BuildUp, Project } from "../project/types.ts";
import { requireObject } from "../require.ts";
import type { JudgementWord, VariationPoint, VariationStudy, VariationTurn } from "../result/types.ts";
import { type Surroundings, surroundingsOf } from "../surroundings/surroundings.ts";
import { halfWay, thicknessesOf } from "./variation/thicknesses.ts";
import type { VariationQuestion } from "./variation/types.ts";
import { variationInWords } from "./variation/variation-in-words.ts";
import { withThickness } from "./variation/with-thickness.ts";

/**
 * Varies the thickness of one layer, assesses each thickness in full, and finds where the judgement changes.
 *
 * @param project - the project
 * @param question - the layer and its thicknesses
 * @returns the points of the curve; a judgement that changes and changes back between two points is not found
 * @throws RangeError when the layer has no thickness, or the thicknesses are out of range
 */
export function varyThickness(project: Project, question: VariationQuestion): VariationStudy {
  requireObject(question, "question", ["buildUp", "layer", "from", "to", "step"]);
  refuseFaults(checkProject(project, ["project"]));
  const surroundings = surroundingsOf(project);
  const buildUp = project.buildUps[question.buildUp];
  const layer = buildUp?.layers[question.layer];
  if (buildUp === undefined || layer === undefined || layer.type === "sheet")
    throw new RangeError("only a layer with a thickness can be varied");
  const at = buildUpBy(project, buildUp, question.layer);
  const { thicknesses, step } = thicknessesOf(question, layer.thickness);
  const { thickness: drawn } = layer;
  const assess = (thickness: number): VariationPoint => pointAt(thickness, drawn, at(thickness), surroundings);
  const points = thicknesses.map(assess);
  const turns = turnsBetween(points, at, surroundings);
  const { target } = buildUp;
  const meetsTargetFrom = target === null ? null : firstThatMeets(target, points, assess);
  const study = {
    buildUp: { name: buildUp.name, slug: buildUp.slug },
    layer: { index: question.layer, number: question.layer + 1, name: layer.name },
    from: question.from,
    to: question.to,
    step,
    points,
    turns,
    meetsTargetFrom,
    target,
  };
  return { ...study, message: variationInWords(study) };
}

/** Makes the build-up for a thickness of the layer [m], with the factors that its junctions then have. */
type BuildUpBy = (thickness: number) => BuildUp;

function buildUpBy(project: Project, buildUp: BuildUp, layer: number): BuildUpBy {
  return (thickness) => {
    const changed = withThickness(buildUp, layer, thickness);
    const buildUps = project.buildUps.map((one) => (one === buildUp ? changed : one));
    return withFactorsOfJunctions({ ...project, buildUps }, changed);
  };
}

function pointAt(thickness: number, drawn: number, buildUp: BuildUp, surroundings: Surroundings): VariationPoint {
  const { judgement, heat, moisture } = assessBuildUp(buildUp, surroundings);
  return {
    thickness,
    isDrawn: thickness === drawn,
    judgement: judgement.word,
    reason: judgement.message,
    transmittance: heat?.transmittance ?? null,
    temperatureFactor: heat?.temperatureFactor ?? null,
    verdict: moisture?.verdict ?? null,
    peak: moisture === null ? null : { ...moisture.peak },
    carriedOver: moisture?.carriedOver ?? null,
    heatPerYear: heat?.heatPerYear ?? null,
  };
}

/** Finds changes of judgement between points by halving; each half may contain a change of its own. */
function turnsBetween(points: readonly VariationPoint[], at: BuildUpBy, surroundings: Surroundings): VariationTurn[] {
  const judge = (thickness: number): JudgementWord =>
    judgeBuildUp(at(thickness), surroundings, "what the judgement depends on").judgement.word;
  const reasonAt = (thickness: number): string => assessBuildUp(at(thickness), surroundings).judgement.message;
  const between = (low: number, from: JudgementWord, high: number, to: JudgementWord): VariationTurn[] => {
    if (from === to) return [];
    const middle = halfWay(low, high);
    if (middle === null) return [{ thickness: high, from, to, reason: reasonAt(high) }];
    const word = judge(middle);
    return [...between(low, from, middle, word), ...between(middle, word, high, to)];
  };
  return points.slice(1).flatMap((point, index) => {
    const before = points[index]!;
    return between(before.thickness, before.judgement, point.thickness, point.judgement);
  });
}

/** Least thickness [m] at which U, at two decimals, meets the target; null if it never does. */
function firstThatMeets(
  target: number,
  points: readonly VariationPoint[],
  assess: (thickness: number) => VariationPoint,
): number | null {
  const meets = (transmittance: number | null): boolean => transmittance !== null && meetsTarget(transmittance, target);
  const first = points.findIndex(({ transmittance }) => meets(transmittance));
  if (first <= 0) return first === 0 ? points[0]!.thickness : null;
  let low = points[first - 1]!.thickness;
  let high = points[first]!.thickness;
  for (let middle = halfWay(low, high); middle !== null; middle = halfWay(low, high)) {
    if (meets(assess(middle).transmittance)) high = middle;
    else low = middle;
  }
  return high;
}
