import {
  type BuildUpResult,
  type Finding,
  MONTH_NAMES,
  type MoistureResult,
  type ProjectResult,
  type SectionResult,
} from "@warmside/core";
import { firstNotFinite } from "../../laws/every-number.ts";

/** Digits that adding up may cost, relative and absolute [kg/m²]. */
const ROUNDING = 1e-9;
/** What a plane must change by to be shown [kg/m²]. */
const CHANGE_SHOWN = 1e-6;
const SEVERITY_OF_VERDICT = ["dry", "dries out", "stays wet"];

/**
 * What every result has to hold, whatever the project says.
 *
 * @returns the laws that are broken, in words with the place; none for a lawful result
 */
export function lawsBroken(result: ProjectResult): string[] {
  const notFinite = firstNotFinite(result);
  const ids = result.buildUps.flatMap(({ findings }) => findings.map(({ id }) => id));
  return [
    ...(notFinite === null ? [] : [`result${notFinite}`]),
    ...(new Set(ids).size === ids.length ? [] : ["two findings have one id"]),
    ...result.buildUps.flatMap((buildUp, at) => ofBuildUp(buildUp).map((law) => `build-up ${at + 1}: ${law}`)),
  ];
}

function ofBuildUp(buildUp: BuildUpResult): string[] {
  const { findings, judgement, heat, moisture, beyond, remedies } = buildUp;
  const known = new Set(findings.map(({ id }) => id));
  const broken: string[] = [];
  const hold = (holds: boolean, law: string): void => {
    if (!holds) broken.push(law);
  };
  hold(
    judgement.reasons.every((id) => known.has(id)),
    "a reason of the judgement is no finding",
  );
  hold(judgement.word === "sound" || judgement.reasons.length > 0 || beyond !== null, "a judgement without a reason");
  hold(judgement.message.trim() !== "", "a judgement without words");
  hold((heat === null || moisture === null) === (beyond !== null), "beyond the method, and nothing says so");
  if (heat !== null) {
    hold(heat.transmittance > 0, "a transmittance of nothing or less");
    hold(heat.lowerLimit <= heat.upperLimit * (1 + ROUNDING), "the lower limit of resistance is above the upper");
    hold(
      heat.slightVentilation !== null || sumsToOne(heat.paths.map(({ share }) => share)),
      "shares of the ways through do not add to one",
    );
  }
  const missesTarget = findings.some(({ code }) => code === "target-missed");
  hold(remedies.length === 0 || judgement.word !== "sound" || missesTarget, "a remedy for what is sound");
  const laws = moisture === null ? [] : lawsOfMoistureBroken(moisture);
  return [...broken, ...laws, ...betterThanAllowed(buildUp), ...contradictions(buildUp)];
}

/** Findings by which a judgement may be better than the verdict, each of which says why. */
const REASONS_TOLD = new Set(["standard-not-passed", "stays-wet", "two-verdicts", "trace", "condensation-dries-out"]);

/** No judgement is better than its verdict allows without a reason that is told. */
function betterThanAllowed({ judgement, moisture, surface, findings, heat }: BuildUpResult): string[] {
  if (!judgement.word.startsWith("sound") || moisture === null) return [];
  const codes = findings.map(({ code }) => code as string);
  const broken: string[] = [];
  if (moisture.verdict === "stays wet" && !codes.includes("standard-not-passed") && !codes.includes("stays-wet"))
    broken.push("stays wet, called sound, and nothing says that the standard does not pass it");
  if (moisture.verdict !== "dry" && !codes.some((code) => REASONS_TOLD.has(code)))
    broken.push("water, called sound, and nothing tells of it");
  const drips = surface !== null && heat !== null && surface.condensationMonths.length > 0;
  if (drips && !codes.some((code) => code.startsWith("surface-") || code === "metal-drips"))
    broken.push("drops on the surface, called sound, and nothing tells of them");
  if (judgement.word === "sound" && findings.some(({ severity }) => severity === "fault"))
    broken.push("sound beside a fault");
  if (moisture.verdict === "stays wet" && !codes.includes("stays-wet") && !judgement.message.includes(NOT_PASSED))
    broken.push("stays wet, called sound, and not the answer itself tells that the standard does not pass it");
  return [...broken, ...findings.flatMap((finding) => tooMild(finding, judgement.word))];
}

const NOT_PASSED = "ISO 13788 does not pass it";
/** Days that built-in water may take, and months of damp wood and of mould inside (METHOD.md). */
const A_YEAR = 365;
const LONG_MOIST = 3;
const LONG_MOULDY = 2;

/** Figures of a finding that a judgement as good as this may not stand beside. */
function tooMild(finding: Finding, word: string): string[] {
  const isSound = word === "sound";
  switch (finding.code) {
    case "condensation-too-much":
      return ["water over its limit, called sound"];
    case "wood-moisture":
      return [
        ...(finding.figures.monthsSaturated.length >= LONG_MOIST ? ["wood at saturation, called sound"] : []),
        ...(isSound && finding.figures.months.length >= LONG_MOIST
          ? ["wood over 20 % for months, without a word"]
          : []),
      ];
    case "mould-at-interface":
      return [
        ...(finding.figures.monthsNearlyWet.length >= LONG_MOIST ? ["95 % on wood for months, called sound"] : []),
        ...(isSound && finding.figures.months.length >= LONG_MOULDY ? ["mould inside for months, without a word"] : []),
      ];
    case "trapped-water": {
      const { figures } = finding;
      const isSlow = figures.isCounted && (figures.daysToDry === null || figures.daysToDry > A_YEAR);
      return isSound && isSlow ? ["built-in water that stays over a year, without a word"] : [];
    }
    case "air-leakage":
      return finding.severity === "fault" ? ["a leak over its limit, called sound"] : [];
    default:
      return [];
  }
}

/** Up to this is a trace [kg/m²] (METHOD.md, Amounts of water). */
const TRACE = 0.01;

/** Two things said of one build-up that cannot both be so. */
function contradictions({ findings, moisture, gaps, judgement }: BuildUpResult): string[] {
  if (moisture === null) return [];
  const broken: string[] = [];
  const said = (code: Finding["code"]): Finding[] => findings.filter((finding) => finding.code === code);
  const verdicts = moisture.sections.map(({ withinMonth }) => SEVERITY_OF_VERDICT.indexOf(withinMonth.verdict));
  const within = SEVERITY_OF_VERDICT[Math.max(...verdicts)]!;
  if (said("stays-dry").length > 0 && (within !== "dry" || said("stays-wet").length > 0))
    broken.push("stays dry, said of what does not");
  const opened = gaps.find(({ kind }) => kind === "usual")?.peak.amount ?? 0;
  if (said("forgives-gaps").length > 0 && opened > Math.max(TRACE, moisture.peak.amount + ROUNDING))
    broken.push("forgives gaps, and gaps bring water");
  for (const { message } of said("standard-not-passed"))
    if (within !== "stays wet" && message.includes("What stays"))
      broken.push("water that stays, of what is gone within the year");
  if (within === "stays wet" && said("standard-not-passed").some(({ message }) => message.includes("all of it does")))
    broken.push("water that is gone, of what stays");
  if (new Set(judgement.conditions).size !== judgement.conditions.length) broken.push("a condition told twice");
  return broken;
}

/** What the moisture side of a result breaks, in words. */
export function lawsOfMoistureBroken(moisture: MoistureResult): string[] {
  const broken = moisture.sections.flatMap((section) => ofSection(section).map((law) => `${section.name}: ${law}`));
  const governing = moisture.sections.find(({ name }) => name === moisture.section);
  if (governing === undefined) return [...broken, "the governing section is none of the sections"];
  const rank = ({ verdict }: { verdict: string }): number => SEVERITY_OF_VERDICT.indexOf(verdict);
  if (rank(governing) !== Math.max(...moisture.sections.map(rank))) broken.push("a worse section does not govern");
  for (const key of ["verdict", "carriedOver", "dryBy"] as const) {
    if (governing[key] !== moisture[key]) broken.push(`${key} is not that of the governing section`);
  }
  if (!sumsToOne(moisture.sections.map(({ share }) => share))) broken.push("shares of the sections do not add to one");
  return broken;
}

function ofSection(section: SectionResult): string[] {
  const { months, verdict, peak, carriedOver, startMonth, dryBy } = section;
  const broken: string[] = [];
  const hold = (holds: boolean, law: string): void => {
    if (!holds) broken.push(law);
  };
  const planes = months.flatMap((month) => month.planes);
  hold(months.map(({ month }) => month).join() === MONTH_NAMES.join(), "months are not January to December");
  hold((verdict === "dry") === (planes.length === 0), "dry, and only it, has no plane in any month");
  hold(
    planes.every(({ held }) => held >= 0),
    "a plane holds less than nothing",
  );
  hold(
    (verdict === "dry") === (peak.month === null) && (verdict === "dry") === (startMonth === null),
    "dry has no month",
  );
  hold((dryBy !== null) === (verdict === "dries out"), "only what dries out is dry by a month");
  hold(section.writtenOff >= 0 && carriedOver >= 0, "water below nothing");
  const sums = months.map(({ planes: all }) => all.reduce((sum, { held }) => sum + held, 0));
  const near = (one: number, other: number): boolean =>
    Math.abs(one - other) <= ROUNDING * (months[0]!.nodes.length + Math.abs(one));
  hold(near(Math.max(0, ...sums), peak.amount), "the peak is not the greatest sum of a month");
  if (startMonth !== null) {
    const start = MONTH_NAMES.indexOf(startMonth as (typeof MONTH_NAMES)[number]);
    hold(near(sums[(start + 11) % 12]!, carriedOver), "what is carried over is not the last month's sum");
    hold(yearAddsUp(section, start), "a node's changes do not add up to what it holds");
  }
  hold(
    months.every(({ nodes }) =>
      nodes.slice(1, -1).every(({ vapourPressure: p, saturationPressure: most }) => p <= most * (1 + ROUNDING)),
    ),
    "vapour over saturation inside a build-up",
  );
  return broken;
}

/** From empty, month by month: what a node held and what it changed by is what it holds. */
function yearAddsUp({ months }: SectionResult, start: number): boolean {
  const held = new Map<number, number>();
  for (let step = 0; step < 12; step += 1) {
    const { planes } = months[(start + step) % 12]!;
    for (const plane of planes) {
      const before = held.get(plane.node) ?? 0;
      // A change too small to be shown may have gone before.
      if (Math.abs(before + plane.change - plane.held) > 12 * CHANGE_SHOWN) return false;
      held.set(plane.node, plane.held);
    }
  }
  return true;
}

function sumsToOne(shares: readonly number[]): boolean {
  return Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) < ROUNDING;
}
