import { relativeHumidity } from "../air/humidity.ts";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../constants.ts";
import { MORE_HUMID_THAN_OUTDOORS } from "../further-checks/mould/humid-interfaces.ts";
import { humidityAtNode } from "../further-checks/section-nodes/humidity-at-node.ts";
import {
  moistureAt,
  pieceInWords,
  WOOD_MOISTURE_LIMIT,
  type WoodenPiece,
  woodenPieces,
} from "../further-checks/wood/wood-moisture.ts";
import type { MonthName } from "../result/types.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Wood over 20 % moisture: which piece, how long, and how wet. Months in which the air outdoors alone makes wood as wet
 * are told as a note: they are no fault of the build-up.
 * Source: FPL Wood Handbook chapter 4 for the equilibrium (from memory); 20 % is common practice.
 */
export function woodMoistureFindings(evidence: Evidence): RuledFinding[] {
  const wet = woodenPieces(evidence.calculation).flatMap((piece) => {
    const months = monthsOver(piece, evidence);
    return months.length === 0 ? [] : [{ piece, months, ofItsOwn: months.filter(({ byOutdoors }) => !byOutdoors) }];
  });
  if (wet.length === 0) return [];
  const worst = wet.reduce((a, b) =>
    b.ofItsOwn.length > a.ofItsOwn.length ||
    (b.ofItsOwn.length === a.ofItsOwn.length && wettest(b.months) > wettest(a.months))
      ? b
      : a,
  );
  const own = worst.ofItsOwn.length;
  const counted = own > 0 ? worst.ofItsOwn : worst.months;
  const nameOf = ({ piece }: WoodenPiece): string => pieceInWords(piece, evidence.buildUp.layers);
  const alsoWet = new Map(wet.filter(({ ofItsOwn }) => ofItsOwn.length > 0).map(({ piece }) => [nameOf(piece), piece]));
  alsoWet.delete(nameOf(worst.piece));
  const figures = {
    section: worst.piece.section.id,
    piece: worst.piece.piece,
    moisture: wettest(counted),
    limit: WOOD_MOISTURE_LIMIT,
    months: worst.ofItsOwn.map(nameOfMonth),
    monthsWithOutdoors: worst.months.map(nameOfMonth),
    others: [...alsoWet.values()].map(({ piece }) => piece),
  };
  return [found("wood-moisture", own > 1 ? CONDITION : NOTE, figures)];
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

function monthsOver({ section, faces }: WoodenPiece, { site }: Evidence): WetMonth[] {
  const { year, climate } = section;
  const months: WetMonth[] = [];
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const outdoors = relativeHumidity(site.outdoor.vapourPressure[month]!, site.outdoor.temperature[month]!);
    const over = [faces.inner, faces.outer].flatMap((node) => {
      const moisture = moistureAt(section, node, month);
      if (!(moisture > WOOD_MOISTURE_LIMIT)) return [];
      const humidity = humidityAtNode(year.pressure[month]!, climate.saturation[month]!, node);
      return [{ month, moisture, byOutdoors: humidity <= outdoors + MORE_HUMID_THAN_OUTDOORS }];
    });
    const [first, second] = over.sort((a, b) => Number(a.byOutdoors) - Number(b.byOutdoors) || b.moisture - a.moisture);
    if (first !== undefined) months.push({ ...first, moisture: Math.max(first.moisture, second?.moisture ?? 0) });
  }
  return months;
}

function wettest(months: readonly WetMonth[]): number {
  return months.reduce((most, { moisture }) => Math.max(most, moisture), 0);
}
