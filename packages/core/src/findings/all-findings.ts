import { airLeakageFindings } from "./air-leakage.ts";
import { assumptionFindings } from "./assumptions.ts";
import { beyondFindings } from "./beyond-method.ts";
import { bondedFoamFindings } from "./bonded-foam.ts";
import { flatRoofFindings } from "./cold-flat-roof.ts";
import { condensationFindings, standardNotPassed } from "./condensation.ts";
import { gapsFindings } from "./gaps.ts";
import { heatFindings } from "./heat.ts";
import { mouldAtInterfaceFindings } from "./mould-at-interface.ts";
import { planeFindings } from "./plane.ts";
import { framingFindings } from "./sections.ts";
import { differingYears } from "./standard-and-within-month.ts";
import { surfaceFindings } from "./surface.ts";
import { tightLayerFindings } from "./tight-layers.ts";
import { trappedWaterFindings } from "./trapped-water.ts";
import { twoSeasonFindings } from "./two-season.ts";
import type { Evidence, FindingRule, JudgementEffect, RuledFinding } from "./types.ts";
import { vapourLayerFindings } from "./vapour-layer.ts";
import { dependenceFindings } from "./vapour-layer-dependence.ts";
import { variableResistanceFindings } from "./variable-resistance.ts";
import { woodMoistureFindings } from "./wood-moisture.ts";

/** All rules, in the order in which their findings are shown. */
const RULES: readonly FindingRule[] = [
  beyondFindings,
  condensationFindings,
  standardNotPassed,
  bondedFoamFindings,
  planeFindings,
  differingYears,
  flatRoofFindings,
  tightLayerFindings,
  vapourLayerFindings,
  dependenceFindings,
  framingFindings,
  mouldAtInterfaceFindings,
  woodMoistureFindings,
  trappedWaterFindings,
  gapsFindings,
  airLeakageFindings,
  variableResistanceFindings,
  twoSeasonFindings,
  surfaceFindings,
  heatFindings,
  assumptionFindings,
];

/**
 * All findings of a build-up, as data: `describe/` words them.
 *
 * @param evidence - everything known about it
 * @returns findings in the order in which they are shown
 */
export function allFindings(evidence: Evidence): RuledFinding[] {
  return withoutComfort(withoutWaysThroughMetal(RULES.flatMap((rule) => rule(evidence))));
}

/**
 * Removes reassuring findings that contradict others: a build-up that guidance rejects does not forgive gaps, and one
 * beyond the method is not said to stay dry. Where a room itself is too damp, no vapour layer is asked for.
 */
function withoutComfort(findings: readonly RuledFinding[]): RuledFinding[] {
  const has = (effect: JudgementEffect): boolean => findings.some((finding) => finding.effect === effect);
  const isWetAtSurface = findings.some(({ code, effect }) => WET_SURFACES.has(code) && effect === "change by number");
  const idle = new Set([
    ...(has("change by guidance") || has("beyond") ? ["forgives-gaps"] : []),
    ...(has("beyond") || isWetAtSurface ? ["stays-dry"] : []),
    ...(isWetInThePlane(findings) ? ["stays-dry", "forgives-gaps"] : []),
    ...(findings.some(({ code }) => code === "room-too-damp") ? ["no-vapour-layer-warm-side"] : []),
  ]);
  return findings.filter(({ code }) => !idle.has(code));
}

/** Whether water in the plane affects the judgement. */
function isWetInThePlane(findings: readonly RuledFinding[]): boolean {
  return findings.some(
    (finding) =>
      (finding.code === "interrupted-layer" || finding.code === "water-at-channel") && finding.effect !== "none",
  );
}

/** With one of these, a build-up is not said to stay dry. */
const WET_SURFACES: ReadonlySet<string> = new Set([
  "metal-drips",
  "surface-condensation",
  "surface-condensation-other-face",
]);

/** Metal that bridges insulation is beyond the method: no figures of paths through it or of the surface are shown. */
function withoutWaysThroughMetal(findings: readonly RuledFinding[]): RuledFinding[] {
  const metal = findings.find(({ code }) => code === "metal-bridging");
  if (metal?.code !== "metal-bridging") return [...findings];
  const { framing } = metal.figures;
  return findings.filter((finding) => {
    if (finding.code === "framing-worse" || finding.code.startsWith("surface-")) return false;
    const section = "section" in finding.figures ? finding.figures.section : null;
    return section === null || typeof section === "string" || !section?.through.includes(framing);
  });
}
