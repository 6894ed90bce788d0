import { MONTH_NAMES } from "../constants.ts";
import type { StackRow } from "../field/layer-stack.ts";
import type { PlaneRun } from "../plane-checks/types.ts";
import type { OtherJoints, PartOfLayer, Place, StripFigures } from "../result/types.ts";
import { NOTHING_HELD } from "../year/section-year.ts";
import { amountLimits, DROPS_GATHER } from "./amount-limits.ts";
import { CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import type { Evidence, FindingWeight, RuledFinding } from "./types.ts";
import { isTooMuch, levelOf } from "./water-level.ts";

/**
 * Findings of the plane: vapour that bypasses tight layers at the framing, and metal channels.
 * Source: METHOD.md, The plane; the worst strip of 50 mm is compared with the limits for zones of water.
 */
export function planeFindings(evidence: Evidence): RuledFinding[] {
  if (evidence.planeIsTooWet) return [found("plane-too-wet", CONDITION, {})];
  return evidence.plane === null ? [] : [...interruptedLayer(evidence), ...channels(evidence)];
}

function interruptedLayer(evidence: Evidence): RuledFinding[] {
  const { framing, interrupted, isSaid, asBuilt, withTape, withGap, channel } = evidence.plane!;
  if (channel !== null) return [];
  const strip = stripFigures(asBuilt, evidence);
  return [
    found("interrupted-layer", weightOf(strip), {
      ...strip,
      framing: framing.name,
      layers: [...interrupted],
      gap: asBuilt.gap,
      taped: asBuilt.taped,
      isSaid,
      withTape: withTape === null ? null : otherJoints(withTape),
      withGap: withGap === null ? null : { ...otherJoints(withGap), gap: withGap.gap },
    }),
  ];
}

function channels(evidence: Evidence): RuledFinding[] {
  const { framing, asBuilt, channel } = evidence.plane!;
  if (channel === null) return [];
  const { heat: _field, ...figures } = channel;
  const strip = stripFigures(asBuilt, evidence);
  const { clearTransmittance } = evidence.calculation.heat;
  return [
    found("channel-in-the-plane", NOTE, { framing: framing.name, ...figures, clearTransmittance }),
    ...(strip.level === "none"
      ? []
      : [found("water-at-channel", weightOf(strip), { framing: framing.name, ...strip })]),
  ];
}

function weightOf({ level }: StripFigures): FindingWeight {
  if (isTooMuch({ level })) return OVER_LIMIT;
  return level === "some" ? CONDITION : NOTE;
}

function otherJoints({ year, strip }: PlaneRun): OtherJoints {
  return { verdict: year.verdict, strip: strip?.amount ?? 0 };
}

function stripFigures({ cell, year, strip, place }: PlaneRun, { buildUp, calculation }: Evidence): StripFigures {
  const { verdict } = year;
  const mean = year.peak / cell.width;
  const nothing = { month: null, dryBy: null, place: null, limit: null, limitBy: null };
  if (strip === null || place === null)
    return { level: "none", verdict, mean, strip: 0, ...nothing, growthPerYear: null, yearsToGather: null };
  const rows = [place.inner, place.outer].filter((row) => row !== null);
  const layers = [...new Set(rows.map(({ layer }) => layer))];
  const limit = amountLimits({ layers }, { path: { through: [], share: 1 } }, buildUp)[0]!;
  const growthPerYear = verdict === "stays wet" ? settled(strip.growthPerYear) : null;
  const yearsToGather = growthPerYear === null || growthPerYear === 0 ? null : DROPS_GATHER / growthPerYear;
  const judged = { amount: strip.amount, limit, growthPerYear, yearsToGather };
  const partOf = (row: StackRow | null): PartOfLayer | null => {
    if (row === null) return null;
    const layer = calculation.heat.counted.find(({ index }) => index === row.layer)!.layer;
    const part = row.part === "under tape" ? "whole" : row.part;
    return { layer: row.layer, part, material: layer.type === "air" ? "air" : layer.material.name };
  };
  const where: Place = { extent: "node", inner: partOf(place.inner), outer: partOf(place.outer) };
  return {
    level: levelOf(judged),
    verdict,
    mean,
    strip: strip.amount,
    month: MONTH_NAMES[strip.month]!,
    dryBy: year.dryBy === null ? null : MONTH_NAMES[year.dryBy]!,
    place: where,
    limit: limit.amount,
    limitBy: limit.by,
    growthPerYear,
    yearsToGather,
  };
}

/** Growth in the second year [kg/m²]; 0, a settled level, where it is negligible. */
function settled(growth: number): number {
  return growth > NOTHING_HELD ? growth : 0;
}
