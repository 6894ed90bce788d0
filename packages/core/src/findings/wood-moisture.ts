import { relativeHumidity } from "../air/humidity.ts";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../constants.ts";
import { humidityAtNode } from "../further-checks/along/humidity-at-node.ts";
import { MORE_HUMID_THAN_OUTDOORS } from "../further-checks/mould/humid-interfaces.ts";
import {
  moistureAt,
  WOOD_MOISTURE_LIMIT,
  type WoodenPiece,
  woodenPieces,
} from "../further-checks/wood/wood-moisture.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { joined } from "./figures-in-words.ts";
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
  const place =
    worst.piece.section.name === "whole" ? worst.piece.name : `${worst.piece.name} (${worst.piece.section.name})`;
  const others = [...new Set(wet.filter((entry) => entry.ofItsOwn.length > 0).map(({ piece }) => piece.name))].filter(
    (name) => name !== worst.piece.name,
  );
  const long = own > 1;
  const as = `${place} would come to ${formatQuantity(wettest(counted), "moisture content")} moisture, over ${formatQuantity(WOOD_MOISTURE_LIMIT, "moisture content")} in ${monthsInWords(counted.map(({ month }) => month))}`;
  return [
    {
      code: "wood-moisture",
      severity: long ? "caution" : "note",
      effect: long ? "condition" : "none",
      message:
        own > 0
          ? `${as}, if the air at its face stayed so for ever: an equilibrium, which overstates short wet spells.${others.length > 0 ? ` Also over it: ${joined(others)}.` : ""}`
          : `${as}: no more than the air outdoors does to any wood at that time of year.`,
      advice: long
        ? `Keep the air at ${worst.piece.name} drier: a tighter vapour layer on the warm side, or more open layers on the cold side.`
        : null,
      source: "FPL Wood Handbook chapter 4 for the equilibrium (from memory); 20 % is common practice",
      figures: {
        moisture: wettest(counted),
        limit: WOOD_MOISTURE_LIMIT,
        months: own,
        monthsWithOutdoors: worst.months.length,
        layer: worst.piece.slice.layer + 1,
        section: worst.piece.section.name,
      },
    },
  ];
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

function monthsInWords(months: readonly number[]): string {
  const names = joined(months.map((month) => MONTH_NAMES[month]!));
  return months.length === 1 ? `one month, ${names}` : `${months.length} months (${names})`;
}
