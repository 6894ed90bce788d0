import { yearInWords } from "../../further-checks/figures.ts";
import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { GapsData } from "../../result/types.ts";
import { sectionInWords } from "./places.ts";
import type { Named, Said } from "./wording.ts";

/**
 * The effect of gaps in a layer, or of the missing vapour layer in front of the framed part.
 *
 * @param gaps - as data
 * @param buildUp - for the name of the layer
 * @returns one sentence that can stand alone, and the sentences after it
 */
export function gapsInWords(gaps: GapsData, { layers }: Named): Pick<Said, "says" | "more"> {
  const { kind, laps, holes, share, sdWhole, sdEffective, verdict, peak, whole } = gaps;
  const { name } = layers[gaps.layer]!;
  const year = yearInWords(verdict, peak);
  if (kind === "framed part") return framedPartInWords(gaps, name, year);
  const yearOfWhole = yearInWords(whole!.verdict, whole!.peak);
  if (kind === "usual") {
    return {
      says: `No gaps are stated, so the vapour layer counts as unbroken: ${yearOfWhole}.`,
      more: [
        `As an example, with ${formatQuantity(share, "share")} of ${name} missing its sd of ${formatQuantity(sdWhole, "sd")} would count as ${formatQuantity(sdEffective, "sd")}: ${year}.`,
      ],
    };
  }
  const byForm =
    laps === null
      ? holes === null
        ? ""
        : ` (holes of ${formatQuantity(holes.diameter, "width of a gap")}, ${formatQuantity(holes.perArea, "fasteners per area")})`
      : ` (laps of ${formatQuantity(laps.width, "width of a gap")} every ${formatQuantity(laps.spacing, "length")})`;
  return {
    says: `${formatQuantity(share, "share")}${byForm} of ${name} is missing, as stated: its sd of ${formatQuantity(sdWhole, "sd")} counts as ${formatQuantity(sdEffective, "sd")}, which gives: ${year}.`,
    more: [`Without gaps: ${yearOfWhole}.`],
  };
}

function framedPartInWords({ framedPart }: GapsData, name: string, year: string): Pick<Said, "says" | "more"> {
  const section = sectionInWords(framedPart!.section);
  if (framedPart!.stops) {
    return {
      says: `${name} stops at the framing, so there is no vapour layer ${section}: ${year}.`,
    };
  }
  return {
    says: `${name} runs across the framing.`,
    more: [`If it stopped there, the result ${section} would be: ${year}.`],
  };
}
