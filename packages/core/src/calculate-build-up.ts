import { checkBuildUp } from "./given/build-up.ts";
import { refuseFaults } from "./given/faults.ts";
import { checkSite } from "./given/surroundings.ts";
import { countsForVapour } from "./heat/bridging.ts";
import { heatFlowDirection } from "./heat/heat-flow-direction.ts";
import { calculateHeat } from "./heat/heat-of-build-up.ts";
import { mainInsulation } from "./heat/main-insulation.ts";
import { distinctFramings, pathsThrough, sectionName, sectionOfPath } from "./heat/paths.ts";
import { heatOfBuildUp, ventilationCases } from "./heat/slight-ventilation.ts";
import type { HeatCalculation, Path } from "./heat/types.ts";
import type { AirMonths, BuildUp } from "./project/types.ts";
import { requireObject } from "./require.ts";
import type { SectionId } from "./result/types.ts";
import { type FarSide, farSideMonths, roomOf, type Site } from "./surroundings/far-side-months.ts";
import { LARGEST_PART_RESISTANCE, type NodeLine, nodeLine } from "./vapour/node-line.ts";
import { type KnownClimate, type SectionClimate, sectionClimate } from "./vapour/section-climate.ts";
import { type SdOverrides, type Slice, sectionSlices, type VapourChoice } from "./vapour/section-slices.ts";
import { runOn } from "./year/run-on.ts";
import { sectionYear } from "./year/section-year.ts";
import type { RepeatingYear, SectionYear } from "./year/types.ts";
import { rankOfVerdict } from "./year/verdicts.ts";
import { type DryYear, yearFromDry } from "./year/wet-months.ts";

/** What a calculation can vary while the build-up stays as it is. */
export interface CalculationOptions {
  /** "dry" (the default) uses the dry μ; "unfavourable" the wet μ up to the cold face of the main insulation. */
  vapourResistance?: "dry" | "unfavourable";
  /** sd that replaces a layer's own [m], by layer index. */
  sdOverrides?: SdOverrides;
  /** Greatest resistance of one part of a layer [m²·K/W]. */
  largestPart?: number;
  /** Whether the year is repeated until it settles (default true). */
  runOn?: boolean;
  /** Air of the years that follow a 1-in-10 year, which does not come again (default: the same year again). */
  yearsAfter?: Site;
}

/** Options of a "what if" calculation. */
export interface WhatIfOptions extends CalculationOptions {
  /** The build-up's figures in the same air, if only vapour resistances differ: temperatures are taken from them. */
  sameHeat?: BuildUpCalculation;
}

/** One straight path through the build-up, calculated. */
export interface SectionCalculation {
  id: SectionId;
  /** Its name in words. */
  name: string;
  path: Path;
  slices: readonly Slice[];
  line: NodeLine;
  climate: SectionClimate;
  dryYear: DryYear;
  year: SectionYear;
  withinMonth: SectionYear;
  repeating: RepeatingYear | null;
}

/** A build-up's figures, without any judgement. */
export interface BuildUpCalculation {
  buildUp: BuildUp;
  heat: HeatCalculation;
  inside: AirMonths;
  farSide: FarSide;
  /** Subtracted from the outer temperature in the profile, under a clear sky [K]; otherwise 0. */
  skyOffset: number;
  sections: readonly SectionCalculation[];
  /** The worst section: by verdict, then residual moisture after 12 months, then maximum accumulation. */
  governing: SectionCalculation;
  /** If a slightly ventilated layer was run both "closed" and "open": the worse case, which counts. Otherwise null. */
  slightVentilationCase: "closed" | "open" | null;
}

/**
 * Subtracted from the outer temperature of a roof under a clear sky, in the profile only [K].
 * Source: ISO 13788:2012 clause 4.3 (from memory).
 */
const CLEAR_SKY_OFFSET = 2;

/**
 * Heat, vapour and year of a build-up: figures only, no judgement.
 *
 * @param buildUp - the build-up; whether the method covers it is checked later (`findings/beyond-method.ts`)
 * @param site - outdoor air and rooms, twelve months each
 * @param options - what to vary
 * @returns heat figures and every section's year
 * @throws TypeError or RangeError when a value is of the wrong kind or out of range, with its name, unit and range
 * Source: ISO 6946:2017 and ISO 13788:2012 clause 6; each step names its clause.
 */
export function calculateBuildUp(buildUp: BuildUp, site: Site, options: CalculationOptions = {}): BuildUpCalculation {
  requireObject(options, "options");
  refuseFaults([...checkBuildUp(buildUp, ["buildUp"]), ...checkSite(site, ["site"])]);
  return figuresOfBuildUp(buildUp, site, options);
}

/** `calculateBuildUp` for a build-up and a site that the caller has checked; also for "what if" calculations. */
export function figuresOfBuildUp(buildUp: BuildUp, site: Site, options: WhatIfOptions = {}): BuildUpCalculation {
  const cases = ventilationCases(buildUp);
  if (cases === null) return calculateCase(buildUp, site, options);
  // Known temperatures belong to the case that counted; the other case has different ones.
  const { sameHeat: _, ...ofEachCase } = options;
  const closed = calculateCase(cases.closed, site, ofEachCase);
  const open = calculateCase(cases.open, site, ofEachCase);
  const openCounts = compareCases(open, closed) > 0;
  const counting = openCounts ? open : closed;
  const heat = heatOfBuildUp(buildUp, counting.heat.direction);
  return { ...counting, buildUp, heat, slightVentilationCase: openCounts ? "open" : "closed" };
}

/**
 * Positive [–] when case `a` is worse than `b`. Drying inside the month comes first, as in the judgement: the worst
 * section of each case is compared. If these are equal, the standard's year decides.
 */
function compareCases(a: BuildUpCalculation, b: BuildUpCalculation): number {
  return (
    compareSections({ year: worstWithinMonth(a) }, { year: worstWithinMonth(b) }) ||
    compareSections(a.governing, b.governing)
  );
}

function worstWithinMonth({ sections }: BuildUpCalculation): SectionYear {
  return sections
    .map(({ withinMonth }) => withinMonth)
    .reduce((worst, year) => (compareSections({ year }, { year: worst }) > 0 ? year : worst));
}

function calculateCase(buildUp: BuildUp, site: Site, options: WhatIfOptions): BuildUpCalculation {
  const inside = roomOf(site, buildUp.room);
  const direction = heatFlowDirection(buildUp, inside.temperature, farTemperature(buildUp, site));
  const heat = calculateHeat(buildUp, direction);
  const farSide = farSideMonths(buildUp, site, inside, heat);
  const anyFraming = distinctFramings(heat.counted).length > 0;
  const air = { inside, outside: farSide.months };
  const airAfter = airOfYearsAfter(buildUp, heat, site, options.yearsAfter);
  const sections = pathsThrough(heat.counted, countsForVapour).map((path, index) =>
    calculateSection(
      sectionOfPath(path, anyFraming),
      path,
      buildUp,
      heat,
      air,
      airAfter,
      options,
      options.sameHeat?.sections[index],
    ),
  );
  const governing = sections.reduce((worst, section) => (compareSections(section, worst) > 0 ? section : worst));
  const skyOffset = skyOffsetOf(buildUp);
  return { buildUp, heat, inside, farSide, skyOffset, sections, governing, slightVentilationCase: null };
}

function skyOffsetOf({ clearSky }: BuildUp): number {
  return clearSky ? CLEAR_SKY_OFFSET : 0;
}

/** The air on both sides of a build-up. */
interface AirOnBothSides {
  inside: AirMonths;
  outside: AirMonths;
}

/** The air of the years that follow; null if they repeat the same year. */
function airOfYearsAfter(
  buildUp: BuildUp,
  heat: HeatCalculation,
  site: Site,
  after: Site | undefined,
): AirOnBothSides | null {
  if (after === undefined || after === site) return null;
  const inside = roomOf(after, buildUp.room);
  return { inside, outside: farSideMonths(buildUp, after, inside, heat).months };
}

function calculateSection(
  id: SectionId,
  path: Path,
  buildUp: BuildUp,
  heat: HeatCalculation,
  air: AirOnBothSides,
  airAfter: AirOnBothSides | null,
  options: CalculationOptions,
  sameHeat: SectionCalculation | undefined,
): SectionCalculation {
  const slices = sectionSlices(heat.counted, path, vapourChoice(heat, options), options.sdOverrides);
  const line = nodeLine(slices, options.largestPart ?? LARGEST_PART_RESISTANCE);
  const surfaces = heat.surfaceResistances;
  const skyOffset = skyOffsetOf(buildUp);
  const climateOf = ({ inside, outside }: AirOnBothSides, known?: KnownClimate): SectionClimate =>
    sectionClimate(line, inside, outside, surfaces.inside, surfaces.outsideForMoisture, skyOffset, known);
  const climate = climateOf(air, sameHeat);
  const driven = { sd: line.sd, climate };
  const dryYear = yearFromDry(driven);
  const year = sectionYear(driven, dryYear, "standard");
  const withinMonth = sectionYear(driven, dryYear, "drying inside the month", year);
  const after =
    airAfter === null || withinMonth.verdict !== "stays wet" ? driven : { ...driven, climate: climateOf(airAfter) };
  const repeating = options.runOn === false ? null : runOn(driven, withinMonth.startMonth, withinMonth, after);
  return { id, name: sectionName(id), path, slices, line, climate, dryYear, year, withinMonth, repeating };
}

/** The dry μ everywhere; or the wet μ up to the cold face of the main insulation, and the dry μ beyond it. */
function vapourChoice(heat: HeatCalculation, options: CalculationOptions): VapourChoice {
  if (options.vapourResistance !== "unfavourable") return () => "dry";
  const coldFace = mainInsulation(heat.counted)?.index ?? -1;
  return (layer) => (layer <= coldFace ? "wet" : "dry");
}

function farTemperature(buildUp: BuildUp, site: Site): readonly number[] {
  return site.rooms.has(buildUp.faces) && buildUp.faces !== "outdoors"
    ? roomOf(site, buildUp.faces).temperature
    : site.outdoor.temperature;
}

/** The figures that rank a section. */
export type RankedYear = Pick<SectionYear, "verdict" | "carriedOver" | "peak">;

/** Positive [–] when `a` is worse than `b`: by verdict, then residual moisture, then maximum accumulation. */
export function compareSections(a: { year: RankedYear }, b: { year: RankedYear }): number {
  return (
    rankOfVerdict(a.year.verdict) - rankOfVerdict(b.year.verdict) ||
    a.year.carriedOver - b.year.carriedOver ||
    a.year.peak - b.year.peak
  );
}
