import { MONTH_NAMES } from "../constants.ts";
import { liesOutsideCountedLayers } from "../further-checks/trapped-water/trapped-water.ts";
import { MOST_CONDENSATE_ON_TIGHT } from "../further-checks/two-season/plane-limit.ts";
import type { TrappedWaterResult } from "../result/types.ts";
import { MOST_YEARS_OF_DRYING } from "../year/trapped-water.ts";
import { grams } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Water that takes longer than this to leave took a whole year of seasons [d] (this project's rule). */
const A_YEAR = 365;

/**
 * Water built in: how long it takes to leave, where it goes, and which change would let it go faster.
 * Source: ISO 13788:2012 clause 7 (from memory).
 */
export function trappedWaterFindings({ buildUp, checks }: Evidence): RuledFinding[] {
  const outside = buildUp.trappedWater.filter((stated) => liesOutsideCountedLayers(stated, buildUp));
  return [
    ...checks.trappedWater.map(describe),
    ...outside.map(({ layer }) => outsideCounted(buildUp.layers[layer]!.name)),
  ];
}

function describe(result: TrappedWaterResult): RuledFinding {
  const { daysToDry, mostHeldElsewhere, elsewhere } = result;
  const slow = daysToDry === null || daysToDry > A_YEAR;
  const gathers = mostHeldElsewhere > MOST_CONDENSATE_ON_TIGHT;
  const matters = slow || gathers;
  return {
    code: "trapped-water",
    severity: matters ? "caution" : "note",
    effect: matters ? "condition" : "none",
    message: [
      opening(result),
      whereItGoes(result),
      meanwhile(result),
      sideways(result),
      scope(result),
      fastest(result),
    ].join(""),
    advice: matters
      ? `Let ${whatIsWet(result)} dry before closing in, and check with a moisture meter: timber under 20 %.`
      : null,
    source: result.withinScope
      ? "ISO 13788:2012 clause 7 (from memory)"
      : "ISO 13788:2012 clause 7, used beyond its scope (this project's)",
    figures: {
      amount: result.amount,
      daysToDry,
      toRoom: result.toRoom,
      toFarSide: result.toFarSide,
      mostHeldElsewhere,
      elsewhere,
      layer: result.layer + 1,
      section: result.section,
    },
  };
}

function opening({ name, section, amount, startMonth, daysToDry }: TrappedWaterResult): string {
  const start = `${grams(amount)} of water ${placeInWords(name, section)} at the beginning of ${startMonth}`;
  if (daysToDry === null) return `${start} are not gone within ${MOST_YEARS_OF_DRYING} years.`;
  if (daysToDry === 0) return `${start}: nothing that has to dry.`;
  return `${start} are gone after ${Math.ceil(daysToDry)} days${inMonths(daysToDry)}.`;
}

/** In a layer between framing, or in the framing that runs through it. */
function placeInWords(name: string, section: string): string {
  if (section === "whole") return `in ${name}`;
  return section.startsWith("through ")
    ? `in the ${section.slice("through ".length)} of ${name}`
    : `in ${name} (${section})`;
}

function whatIsWet({ name, section }: TrappedWaterResult): string {
  return section.startsWith("through ") ? `the ${section.slice("through ".length)}` : name;
}

/** Timber framing also dries sideways, into what stands beside it; the method is one-dimensional. */
function sideways({ section }: TrappedWaterResult): string {
  return section.startsWith("through ")
    ? " Framing also dries sideways, which is not counted: it will be quicker."
    : "";
}

function inMonths(days: number): string {
  return days > 60 ? `, about ${Math.round((days / A_YEAR) * MONTH_NAMES.length)} months` : "";
}

function whereItGoes({ toRoom, toFarSide }: TrappedWaterResult): string {
  const side = (amount: number, name: string): string =>
    amount >= 0 ? `${grams(amount)} left towards ${name}` : `${grams(-amount)} came in from ${name}`;
  return ` Meanwhile ${side(toRoom, "the room")} and ${side(toFarSide, "the far side")}.`;
}

function meanwhile({ mostHeldElsewhere, elsewhere }: TrappedWaterResult): string {
  if (elsewhere === null) return " None of it condenses elsewhere.";
  return ` Up to ${grams(mostHeldElsewhere)} of it stands elsewhere on the way, ${elsewhere}.`;
}

function scope({ withinScope }: TrappedWaterResult): string {
  return withinScope
    ? ""
    : " The layer does not lie between two tight sides (sd 10 m each), so this use of the method is this project's own.";
}

function fastest({ variants, daysToDry }: TrappedWaterResult): string {
  const [best] = variants;
  if (best === undefined || best.daysToDry === null) return "";
  if (daysToDry !== null && best.daysToDry >= daysToDry) return "";
  return ` It would be gone after ${Math.ceil(best.daysToDry)} days ${best.change}.`;
}

function outsideCounted(name: string): RuledFinding {
  return {
    code: "trapped-water",
    severity: "note",
    effect: "none",
    message: `${name} lies at or outside a well-ventilated layer: water in it dries to moving air and was not worked out.`,
    advice: null,
    source: "ISO 6946:2017 clause 6.9.4: layers outside a well-ventilated one do not count (from memory)",
    figures: {},
  };
}
