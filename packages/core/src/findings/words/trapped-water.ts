import { MONTHS_PER_YEAR } from "../../constants.ts";
import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { DryingChange, TrappedWaterData } from "../../result/types.ts";
import { MOST_YEARS_OF_DRYING } from "../../year/trapped-water.ts";
import { grams } from "../figures-in-words.ts";
import { placeInWords, sectionInWords } from "./places.ts";
import type { Named, Wordings } from "./wording.ts";

const DAYS_PER_YEAR = 365;

/** Largest remaining share of the water where the words say that all of it is gone [–]. */
const TRACE_LEFT = 0.05;

type Water = Omit<TrappedWaterData, "held" | "heldElsewhere">;

/** Findings on construction moisture. */
export const TRAPPED_WATER_WORDINGS: Wordings<"trapped-water"> = {
  "trapped-water": ({ figures, severity }, buildUp) => {
    const { name } = buildUp.layers[figures.layer]!;
    if (!figures.isCounted) {
      return {
        says: `${name} lies at or outside a well-ventilated layer: water in it dries to moving air and is not calculated.`,
        source: "ISO 6946:2017 clause 6.9.4: layers outside a well-ventilated one do not count",
      };
    }
    return {
      says: opening(figures, name),
      more: figures.daysToDry === 0 ? [scope(figures)] : [...drying(figures, buildUp), scope(figures)],
      advice:
        severity === "note"
          ? null
          : `Let ${whatIsWet(figures, name)} dry before closing in, and check with a moisture meter: timber under 20 %.`,
      source: figures.withinScope
        ? "ISO 13788:2012 clause 7"
        : "ISO 13788:2012 clause 7, used beyond its scope (this project's)",
    };
  },
};

/**
 * A change that would let a wet layer dry faster, in words that follow "gone after 90 days".
 *
 * @param by - the change
 * @param buildUp - for the names of its layers
 * @returns such as "without the vapour layer (polyethylene sheet)"
 */
export function dryingChangeInWords(by: DryingChange, { layers }: Pick<Named, "layers">): string {
  const name = (layer: number): string => layers[layer]!.name;
  switch (by.kind) {
    case "no vapour layer":
      return `without the vapour layer (${by.layers.map(name).join(" with ")})`;
    case "vapour layer more open":
      return `with the vapour layer ten times more open (${by.layers.map(name).join(" with ")})`;
    case "breather membrane":
      return `with a breather membrane of sd ${formatQuantity(by.sd, "sd")} instead of ${name(by.layer)}`;
    case "open wood fibre board":
      return `with an open wood fibre board instead of ${name(by.layer)}`;
  }
}

function opening({ sectionId, amount, startMonth, daysToDry }: Water, name: string): string {
  // Amounts are per area of the section itself: for framing, of its face towards the room.
  const face = sectionId.kind === "through framing" ? ", for each square metre of their own face," : "";
  const start = `${grams(amount)} of water ${whereItIs(sectionId, name)}${face} at the beginning of ${startMonth}`;
  if (daysToDry === null) return `${start} is not gone within ${MOST_YEARS_OF_DRYING} years.`;
  if (daysToDry === 0) return `${start}: nothing needs to dry.`;
  return `${start} is gone after ${Math.ceil(daysToDry)} days${inMonths(daysToDry)}.`;
}

/** Place of the water: in a layer between framing, or in the framing that runs through it. */
function whereItIs(section: Water["sectionId"], name: string): string {
  if (section.kind === "whole") return `in ${name}`;
  return section.kind === "through framing"
    ? `in the ${framings(section)} of ${name}`
    : `in ${name} ${sectionInWords(section)}`;
}

function whatIsWet({ sectionId }: Water, name: string): string {
  return sectionId.kind === "through framing" ? `the ${framings(sectionId)}` : name;
}

function framings({ through }: Water["sectionId"]): string {
  return through.join(" and ");
}

/** Timber framing also dries sideways, into the material beside it; the method is one-dimensional. */
function sideways({ sectionId }: Water): string {
  return sectionId.kind === "through framing" ? "Framing also dries sideways, so it will be quicker." : "";
}

function inMonths(days: number): string {
  return days > 60 ? ` (about ${Math.round((days / DAYS_PER_YEAR) * MONTHS_PER_YEAR)} months)` : "";
}

function drying(figures: Water, buildUp: Named): string[] {
  return [whereItGoes(figures), meanwhile(figures, buildUp), sideways(figures), fastest(figures, buildUp)];
}

/** Construction moisture leaves on both sides, or mixes with water that enters meanwhile. */
function whereItGoes({ amount, toRoom, toFarSide }: Water): string {
  const isAllGone = amount - toRoom - toFarSide <= TRACE_LEFT * amount;
  if (isAllGone && toRoom >= 0 && toFarSide >= 0)
    return `Of it ${grams(toRoom)} leaves to the room, the rest outwards.`;
  const towardsRoom = toRoom >= 0 ? `${grams(toRoom)} left to the room` : `${grams(-toRoom)} entered from the room`;
  const outwards = toFarSide >= 0 ? `${grams(toFarSide)} left outwards` : `${grams(-toFarSide)} entered from outside`;
  return `Meanwhile ${towardsRoom} and ${outwards}.`;
}

function meanwhile({ mostHeldElsewhere, place }: Water, buildUp: Named): string {
  if (place === null) return "None condensed elsewhere.";
  return `Up to ${grams(mostHeldElsewhere)} gathered elsewhere, ${placeInWords(place, buildUp)}.`;
}

function scope({ withinScope }: Water): string {
  return withinScope
    ? ""
    : "The layer is not between two tight sides (sd 10 m each): this use of the check is this project's own.";
}

function fastest({ variants, daysToDry }: Water, buildUp: Named): string {
  const [best] = variants;
  if (best === undefined || best.daysToDry === null) return "";
  if (daysToDry !== null && best.daysToDry >= daysToDry) return "";
  return `It would be gone after ${Math.ceil(best.daysToDry)} days ${dryingChangeInWords(best.by, buildUp)}.`;
}
