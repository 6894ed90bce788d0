import { relativeHumidity } from "../air/humidity.ts";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../constants.ts";
import { MORE_HUMID_THAN_OUTDOORS } from "../further-checks/mould/humid-interfaces.ts";
import { humidityAtNode } from "../further-checks/section-nodes/humidity-at-node.ts";
import { waterThatWets } from "../further-checks/water-that-wets.ts";
import {
  FIBRE_SATURATION,
  moistureOfPiece,
  pieceInWords,
  WOOD_MOISTURE_LIMIT,
  type WoodenPiece,
  woodenPieces,
} from "../further-checks/wood/wood-moisture.ts";
import type { MonthName } from "../result/types.ts";
import { canWetFraming } from "./amount-limits.ts";
import { CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import { hasDampRoom } from "./mould-at-interface.ts";
import { holdsRain } from "./rain-on-wall.ts";
import type { Evidence, FindingWeight, RuledFinding } from "./types.ts";

/**
 * Wood over 20 % moisture content: which piece, how long, and how wet. Months in which outdoor air alone would make
 * wood as wet are reported as a note, since the build-up does not cause them.
 * Source: FPL Wood Handbook chapter 4 for the equilibrium (from memory); 20 % is common practice.
 */
export function woodMoistureFindings(evidence: Evidence): RuledFinding[] {
  const wet = woodenPieces(evidence.calculation).flatMap((piece) => {
    const months = monthsOver(piece, evidence);
    return months.length === 0 ? [] : [{ piece, months, ofItsOwn: months.filter(({ byOutdoors }) => !byOutdoors) }];
  });
  if (wet.length === 0) return [];
  const worst = wet.reduce((a, b) => (isWorse(b, a) ? b : a));
  const own = worst.ofItsOwn.length;
  const counted = own > 0 ? worst.ofItsOwn : worst.months;
  const nameOf = ({ piece }: WoodenPiece): string => pieceInWords(piece, evidence.buildUp.layers);
  const alsoWet = new Map(wet.filter(({ ofItsOwn }) => ofItsOwn.length > 0).map(({ piece }) => [nameOf(piece), piece]));
  alsoWet.delete(nameOf(worst.piece));
  const saturated = saturatedMonths(worst);
  const figures = {
    holdsRain: holdsRain(evidence.buildUp),
    isOfRoom: hasDampRoom(evidence),
    section: worst.piece.section.id,
    piece: worst.piece.piece,
    moisture: wettest(counted),
    limit: WOOD_MOISTURE_LIMIT,
    months: worst.ofItsOwn.map(nameOfMonth),
    monthsWithOutdoors: worst.months.map(nameOfMonth),
    monthsSaturated: saturated.map(nameOfMonth),
    others: [...alsoWet.values()].map(({ piece }) => piece),
  };
  return [found("wood-moisture", weightOf(own, saturated.length), figures)];
}

/**
 * Severity and effect of months with moist wood.
 *
 * @param over - months over 20 % that the build-up causes [–]
 * @param saturated - those of them at fibre saturation [–]
 * @returns a condition for three months, a number over its limit for three at saturation, else a note
 * Source: METHOD.md, Wood moisture (limits common practice; durations this project's rule).
 */
export function weightOf(over: number, saturated: number): FindingWeight {
  if (saturated >= LONG) return OVER_LIMIT;
  return over >= LONG ? CONDITION : NOTE;
}

/** Months that are more than a short wet spell. */
const LONG = 3;

interface WetPiece {
  piece: WoodenPiece;
  months: WetMonth[];
  ofItsOwn: WetMonth[];
}

/**
 * Months at fibre saturation, counted only where the year brings enough water to reach it.
 */
function saturatedMonths({ piece, ofItsOwn }: WetPiece): WetMonth[] {
  return hasWaterToWet(piece) ? ofItsOwn.filter(({ moisture }) => moisture >= FIBRE_SATURATION) : [];
}

/** Boards are wetted over their whole face; framing only if its own section or the bay beside it holds enough. */
function hasWaterToWet({ piece, section, beside }: WoodenPiece): boolean {
  const water = waterThatWets(beside === null ? [section] : [section, beside.section]);
  return piece.framing === null || canWetFraming(water);
}

/** Worse: longer at saturation, then longer over the limit, then wetter. */
function isWorse(one: WetPiece, other: WetPiece): boolean {
  const saturated = (wet: WetPiece): number => saturatedMonths(wet).length;
  const order =
    Math.max(0, saturated(one) - LONG + 1) - Math.max(0, saturated(other) - LONG + 1) ||
    one.ofItsOwn.length - other.ofItsOwn.length ||
    wettest(one.months) - wettest(other.months);
  return order > 0;
}

function nameOfMonth({ month }: WetMonth): MonthName {
  return MONTH_NAMES[month]!;
}

interface WetMonth {
  month: number;
  moisture: number;
  /** Whether its air is no more humid than outdoors. */
  byOutdoors: boolean;
}

function monthsOver(piece: WoodenPiece, { site }: Evidence): WetMonth[] {
  const months: WetMonth[] = [];
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const inner = moistureOfPiece(piece, "inner", month);
    const outer = moistureOfPiece(piece, "outer", month);
    const moisture = Math.max(inner, outer);
    if (!(moisture > WOOD_MOISTURE_LIMIT)) continue;
    const outdoors = relativeHumidity(site.outdoor.vapourPressure[month]!, site.outdoor.temperature[month]!);
    const isByOutdoors = (face: "inner" | "outer"): boolean =>
      humidityOfPiece(piece, face, month) <= outdoors + MORE_HUMID_THAN_OUTDOORS;
    const byOutdoors =
      (inner <= WOOD_MOISTURE_LIMIT || isByOutdoors("inner")) &&
      (outer <= WOOD_MOISTURE_LIMIT || isByOutdoors("outer"));
    months.push({ month, moisture, byOutdoors });
  }
  return months;
}

/** The higher humidity of a stud's own section and the bay beside it. */
function humidityOfPiece({ section, faces, beside }: WoodenPiece, face: "inner" | "outer", month: number): number {
  const at = ({ year, climate }: WoodenPiece["section"], node: number): number =>
    humidityAtNode(year.pressure[month]!, climate.saturation[month]!, node);
  const own = at(section, faces[face]);
  return beside === null ? own : Math.max(own, at(beside.section, beside.faces[face]));
}

function wettest(months: readonly WetMonth[]): number {
  return months.reduce((most, { moisture }) => Math.max(most, moisture), 0);
}
