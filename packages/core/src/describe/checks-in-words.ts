import { gapsInWords } from "../findings/words/gaps.ts";
import { leakInWords } from "../findings/words/leak.ts";
import { placeInWords } from "../findings/words/places.ts";
import { dryingChangeInWords } from "../findings/words/trapped-water.ts";
import { planeInWords, reasonInWords } from "../findings/words/two-season.ts";
import type { Said } from "../findings/words/wording.ts";
import type { FurtherChecks } from "../further-checks/types.ts";
import { sectionName } from "../heat/paths.ts";
import type { BuildUp } from "../project/types.ts";
import type { BuildUpResult, GapsData, TrappedWaterData } from "../result/types.ts";

type ChecksInWords = Pick<
  BuildUpResult,
  "wood" | "trappedWater" | "twoSeasonCheck" | "leak" | "gaps" | "variableResistance"
>;

/**
 * The checks beside the monthly method, with names and words.
 *
 * @param checks - as data
 * @param buildUp - for names
 * @returns the checks in the shape of the result
 */
export function checksInWords(checks: FurtherChecks, buildUp: BuildUp): ChecksInWords {
  const { twoSeasonCheck, leak } = checks;
  return {
    ...checks,
    trappedWater: checks.trappedWater.map((water) => trappedWaterInWords(water, buildUp)),
    twoSeasonCheck:
      twoSeasonCheck === null
        ? null
        : {
            ...twoSeasonCheck,
            reason: reasonInWords(twoSeasonCheck, buildUp),
            plane: planeInWords(twoSeasonCheck, buildUp),
          },
    leak: leak === null ? null : { ...leak, message: inOne(leakInWords(leak, buildUp)) },
    gaps: checks.gaps.map((gaps) => ({
      ...gaps,
      name: nameOfGaps(gaps, buildUp),
      message: inOne(gapsInWords(gaps, buildUp)),
    })),
  };
}

function inOne({ says, more = [] }: Pick<Said, "says" | "more">): string {
  return [says, ...more].join(" ");
}

function trappedWaterInWords(water: TrappedWaterData, buildUp: BuildUp): ChecksInWords["trappedWater"][number] {
  return {
    ...water,
    name: buildUp.layers[water.layer]!.name,
    section: sectionName(water.sectionId),
    elsewhere: water.place === null ? null : placeInWords(water.place, buildUp),
    variants: water.variants.map((variant) => ({ ...variant, change: dryingChangeInWords(variant.by, buildUp) })),
  };
}

/** The name of the layer; for the framed part, with its section. */
function nameOfGaps({ layer, framedPart }: GapsData, { layers }: BuildUp): string {
  const { name } = layers[layer]!;
  return framedPart === null ? name : `${name}, ${sectionName(framedPart.section)}`;
}
