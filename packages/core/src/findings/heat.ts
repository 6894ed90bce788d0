import { LARGEST_LIMITS_RATIO } from "../heat/combined-resistance.ts";
import { slightlyVentilatedLayer } from "../heat/heat-of-build-up.ts";
import { insulationOverSkin } from "../heat/inverted-roof.ts";
import { meetsTarget } from "../heat/target.ts";
import { insulates } from "../project/insulates.ts";
import { looksTurnedRound } from "../project/resolve/note-layers-overlooked.ts";
import type { Layer } from "../project/types.ts";
import { CAUTION, CONDITION, found, NOTE, REFUSED } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Emissivity below which a face is bright [–]. */
const BRIGHT = 0.5;

/**
 * Findings on heat: target, ratio of the limits, foil without air, insulation excluded from U by ventilation, and more.
 * Source: ISO 6946:2017 (from memory); foil is common practice.
 */
export function heatFindings(evidence: Evidence): RuledFinding[] {
  const rules = [rainBelowInsulation, target, limits, airBehind, foil, ventilation];
  return rules.flatMap((rule) => rule(evidence));
}

/** Without rainfall, U of an inverted roof is incomplete and meets no target. */
function rainBelowInsulation({ buildUp, calculation }: Evidence): RuledFinding[] {
  const [layer] = insulationOverSkin(buildUp);
  if (layer === undefined || buildUp.rainOfHeatingSeason !== null) return [];
  const { target } = buildUp;
  const figures = { layer, transmittance: calculation.heat.transmittance, target };
  return [found("inverted-roof-rain", target === null ? CAUTION : CONDITION, figures)];
}

/** Air that moves behind insulation carries heat and moisture past it, whatever the result for still layers. */
function airBehind({ buildUp }: Evidence): RuledFinding[] {
  const layers = buildUp.layers.flatMap((layer, index) =>
    layer.type === "material" && layer.fit === "gaps and air behind" && insulates(layer) ? [index] : [],
  );
  return layers.length === 0 ? [] : [found("air-behind-insulation", CONDITION, { layers })];
}

function target({ buildUp, calculation }: Evidence): RuledFinding[] {
  if (buildUp.target === null) return [];
  const isWhole = buildUp.rainOfHeatingSeason !== null || insulationOverSkin(buildUp).length === 0;
  if (!isWhole && meetsTarget(calculation.heat.transmittance, buildUp.target)) return [];
  const { transmittance, clearTransmittance } = calculation.heat;
  const figures = { transmittance, target: buildUp.target, clearTransmittance };
  return [
    meetsTarget(transmittance, buildUp.target)
      ? found("target-met", NOTE, figures)
      : found("target-missed", CAUTION, figures),
  ];
}

function limits({ calculation }: Evidence): RuledFinding[] {
  const { limitsRatio, possibleError } = calculation.heat;
  return limitsRatio <= LARGEST_LIMITS_RATIO
    ? []
    : [found("limits-far-apart", CONDITION, { limitsRatio, possibleError })];
}

function foil({ buildUp }: Evidence): RuledFinding[] {
  const { layers } = buildUp;
  if (buildUp.faces === "ground") return [];
  const idle = layers.flatMap((layer, index) => {
    if (layer.type === "air" || (layer.type === "material" && layer.material.kind === "metal")) return [];
    const bright = layer.emissivityInner < BRIGHT || layer.emissivityOuter < BRIGHT;
    const facesAir =
      (layer.emissivityInner < BRIGHT && isStillAir(layers[index - 1])) ||
      (layer.emissivityOuter < BRIGHT && isStillAir(layers[index + 1]));
    return bright && !facesAir ? [index] : [];
  });
  return idle.length === 0 ? [] : [found("foil-without-air", NOTE, { layers: idle })];
}

function isStillAir(layer: Layer | undefined): boolean {
  return layer !== undefined && layer.type === "air" && layer.ventilation !== "well";
}

function ventilation({ buildUp, calculation }: Evidence): RuledFinding[] {
  const findings: RuledFinding[] = [];
  const { endsAt } = calculation.heat;
  const lost = buildUp.layers.flatMap((layer, index) =>
    endsAt !== null && index > endsAt && insulates(layer) ? [index] : [],
  );
  if (lost.length > 0) {
    const isAll = looksTurnedRound(buildUp.layers);
    findings.push(found("insulation-beyond-ventilation", isAll ? REFUSED : CONDITION, { layers: lost, isAll }));
  }
  const slight = slightlyVentilatedLayer(buildUp);
  if (slight !== null && slight.layer.ventilationArea === null)
    findings.push(found("openings-not-told", NOTE, { layer: slight.index }));
  return findings;
}
