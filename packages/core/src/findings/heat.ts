import { LARGEST_LIMITS_RATIO } from "../heat/combined-resistance.ts";
import { slightlyVentilatedLayer } from "../heat/heat-of-build-up.ts";
import { meetsTarget } from "../heat/target.ts";
import { insulates } from "../project/insulates.ts";
import { looksTurnedRound } from "../project/resolve/note-layers-overlooked.ts";
import type { Layer } from "../project/types.ts";
import { formatNumber, formatQuantity } from "../quantities/format-quantity.ts";
import { joined } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Faces below this are bright [–]. */
const BRIGHT = 0.5;

/**
 * What the heat figures need said: target, limits ratio, foil without air, air that takes insulation out of the sum.
 * Source: ISO 6946:2017 (from memory); foil is common practice.
 */
export function heatFindings(evidence: Evidence): RuledFinding[] {
  return [...target(evidence), ...limits(evidence), ...foil(evidence), ...ventilation(evidence)];
}

function target({ buildUp, calculation }: Evidence): RuledFinding[] {
  if (buildUp.target === null) return [];
  const { transmittance, clearTransmittance } = calculation.heat;
  const met = meetsTarget(transmittance, buildUp.target);
  return [
    {
      code: met ? "target-met" : "target-missed",
      severity: met ? "note" : "caution",
      effect: "none",
      message: `With framing and corrections the U-value is ${formatQuantity(transmittance, "transmittance")}; the target is ${formatQuantity(buildUp.target, "transmittance")}: ${met ? "met" : "missed"}. Without framing it would be ${formatQuantity(clearTransmittance, "transmittance")}.`,
      advice: met ? null : "More insulation, insulation across the framing, or less framing.",
      source: "compared at two decimals",
      figures: { transmittance, target: buildUp.target, clearTransmittance },
    },
  ];
}

function limits({ calculation }: Evidence): RuledFinding[] {
  const { limitsRatio, possibleError } = calculation.heat;
  if (limitsRatio <= LARGEST_LIMITS_RATIO) return [];
  return [
    {
      code: "limits-far-apart",
      severity: "caution",
      effect: "condition",
      message: `The upper limit of the resistance is ${formatNumber(limitsRatio, 2)} times the lower one: over 1.5 the combined method passes its own bound. The U-value may be ${formatQuantity(possibleError, "share")} off.`,
      advice: "Ask for a detailed calculation to ISO 10211 where the U-value decides.",
      source: "ISO 6946:2017 clause 6.7.2.1 (from memory)",
      figures: { limitsRatio, possibleError },
    },
  ];
}

function foil({ buildUp }: Evidence): RuledFinding[] {
  const { layers } = buildUp;
  if (buildUp.faces === "ground") return [];
  const idle = layers.filter((layer, index) => {
    if (layer.type === "air" || (layer.type === "material" && layer.material.kind === "metal")) return false;
    const bright = layer.emissivityInner < BRIGHT || layer.emissivityOuter < BRIGHT;
    const facesAir =
      (layer.emissivityInner < BRIGHT && isStillAir(layers[index - 1])) ||
      (layer.emissivityOuter < BRIGHT && isStillAir(layers[index + 1]));
    return bright && !facesAir;
  });
  if (idle.length === 0) return [];
  return [
    {
      code: "foil-without-air",
      severity: "note",
      effect: "none",
      message: `The foil of ${joined(idle.map(({ name }) => name))} has no still air in front of it: it does nothing for heat. As a vapour layer it counts all the same.`,
      advice: "A closed air layer of 20 mm or so in front of a bright foil adds resistance.",
      source: "common practice",
      figures: { layers: idle.length },
    },
  ];
}

function isStillAir(layer: Layer | undefined): boolean {
  return layer !== undefined && layer.type === "air" && layer.ventilation !== "well";
}

function ventilation({ buildUp, calculation }: Evidence): RuledFinding[] {
  const findings: RuledFinding[] = [];
  const { endsAt } = calculation.heat;
  const lost = endsAt === null ? [] : buildUp.layers.slice(endsAt + 1).filter((layer) => insulates(layer));
  if (lost.length > 0) {
    const all = looksTurnedRound(buildUp.layers);
    findings.push({
      code: "insulation-beyond-ventilation",
      severity: all ? "fault" : "caution",
      effect: all ? "change by guidance" : "condition",
      message: `${joined(lost.map(({ name }) => name))} lies outside a well-ventilated air layer: outdoor air passes on its warm side and it counts for nothing.`,
      advice: all
        ? "Layers run from the room outwards: if these are written from outside, turn the list round. Otherwise put the insulation on the room side of the ventilated air, or close that air."
        : "Put the insulation on the room side of the ventilated air, or close that air.",
      source: "ISO 6946:2017 clause 6.9.4 (from memory)",
      figures: { layers: lost.length },
    });
  }
  const slight = slightlyVentilatedLayer(buildUp);
  if (slight !== null && slight.layer.ventilationArea === null) {
    findings.push({
      code: "openings-not-told",
      severity: "note",
      effect: "none",
      message: `The openings of ${slight.layer.name} are not told: it is counted as well ventilated, which is the lower resistance.`,
      advice: "Give its `ventilation area`.",
      source: "ISO 6946:2017 clause 6.9.3 (from memory)",
      figures: { layer: slight.index + 1 },
    });
  }
  return findings;
}
