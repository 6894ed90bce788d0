import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import { DAYS_IN_MONTH, MONTH_NAMES, MONTHS_PER_YEAR } from "../constants.ts";
import { requireObject } from "../require.ts";
import type {
  MoistureResult,
  MonthName,
  NodeState,
  SectionMonth,
  SectionResult,
  YearSummary,
} from "../result/types.ts";
import type { SectionYear } from "../year/types.ts";

/** A node is shown as a plane when its water changes by more than this or exceeds WATER_SHOWN [kg/m²]. */
const CHANGE_SHOWN = 1e-6;
const WATER_SHOWN = 1e-9;

/**
 * The moisture side of a calculation in the shape of the result.
 *
 * @param calculation - the build-up's figures
 * @returns verdict of the governing section and every section with its twelve months
 */
export function moistureResult(calculation: BuildUpCalculation): MoistureResult {
  requireObject(calculation, "calculation", ["sections", "governing"]);
  const { governing } = calculation;
  const sections = calculation.sections.map((section, index) => sectionResult(section, index, calculation));
  return {
    ...yearSummary(governing.year),
    section: governing.name,
    governing: sections[calculation.sections.indexOf(governing)]!,
    skyOffset: calculation.skyOffset,
    sections,
  };
}

/** Verdict, maximum accumulation, residual moisture and the month by which all water is gone. */
export function yearSummary(year: SectionYear): YearSummary {
  return {
    verdict: year.verdict,
    peak: { amount: year.peak, month: monthName(year.peakMonth) },
    carriedOver: year.carriedOver,
    dryBy: monthName(year.dryBy),
  };
}

function monthName(month: number | null): MonthName | null {
  return month === null ? null : MONTH_NAMES[month]!;
}

function sectionResult(section: SectionCalculation, index: number, calculation: BuildUpCalculation): SectionResult {
  const { year, line, slices } = section;
  const margin = leastMargin(section);
  return {
    index,
    id: section.id,
    name: section.name,
    share: section.path.share,
    ...yearSummary(year),
    startMonth: monthName(year.startMonth),
    writtenOff: year.writtenOff,
    withinMonth: yearSummary(section.withinMonth),
    repeating: section.repeating ?? { settles: true, years: 0, level: 0, growthPerYear: 0 },
    leastMargin: year.verdict === "dry" ? margin : null,
    decidingMonth: year.verdict === "dry" ? (margin?.month ?? MONTH_NAMES[0]) : monthOfGreatestChange(year),
    layers: slices.map((slice) => ({
      layer: slice.layer,
      name: slice.name,
      part: slice.part,
      material: slice.material,
      resistance: slice.resistance,
      sd: slice.sd,
      nodeAfter: line.layer.lastIndexOf(slice.layer),
    })),
    months: MONTH_NAMES.map((_, month) => sectionMonth(section, calculation, month)),
  };
}

function sectionMonth(section: SectionCalculation, calculation: BuildUpCalculation, month: number): SectionMonth {
  const { inside, farSide } = calculation;
  const { held, change } = section.year;
  const planes: SectionMonth["planes"] = [];
  for (let node = 0; node < section.line.count; node += 1) {
    const changed = change[month]![node]!;
    const holds = held[month]![node]!;
    if (Math.abs(changed) > CHANGE_SHOWN || holds > WATER_SHOWN) planes.push({ node, change: changed, held: holds });
  }
  const air = (months: typeof inside) => ({
    temperature: months.temperature[month]!,
    vapourPressure: months.vapourPressure[month]!,
  });
  return {
    month: MONTH_NAMES[month]!,
    outdoor: air(farSide.months),
    indoor: air(inside),
    nodes: Array.from({ length: section.line.count }, (_, node) => nodeState(section, calculation, month, node)),
    planes,
  };
}

function nodeState(
  section: SectionCalculation,
  calculation: BuildUpCalculation,
  month: number,
  node: number,
): NodeState {
  const { line, climate, year } = section;
  const layer = line.layer[node]!;
  return {
    node,
    layer: layer < 0 ? null : layer,
    after: layer < 0 ? null : calculation.buildUp.layers[layer]!.name,
    depth: line.depth[node]!,
    sd: line.sd[node]!,
    temperature: climate.temperature[month]![node]!,
    saturationPressure: climate.saturation[month]![node]!,
    vapourPressure: year.pressure[month]![node]!,
  };
}

/** The smallest margin to saturation at the inner nodes over the year. */
function leastMargin(section: SectionCalculation): SectionResult["leastMargin"] {
  const { line, climate, year } = section;
  let least: SectionResult["leastMargin"] = null;
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    for (let node = 1; node < line.count - 1; node += 1) {
      const saturation = climate.saturation[month]![node]!;
      const pressure = year.pressure[month]![node]!;
      const relativeHumidity = pressure / saturation;
      if (least === null || relativeHumidity > least.relativeHumidity) {
        least = { node, month: MONTH_NAMES[month]!, margin: saturation - pressure, relativeHumidity };
      }
    }
  }
  return least;
}

/** The month with the most condensation per day. */
function monthOfGreatestChange(year: SectionYear): MonthName {
  let greatest = 0;
  let deciding = year.startMonth ?? 0;
  year.change.forEach((change, month) => {
    const gained = change.reduce((sum, amount) => sum + Math.max(0, amount), 0) / DAYS_IN_MONTH[month]!;
    if (gained > greatest) {
      greatest = gained;
      deciding = month;
    }
  });
  return MONTH_NAMES[deciding]!;
}
