import { lowestFactor } from "../heat/surface.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The room surface: drops and mould.
 * Source: ISO 13788:2012 clause 5 (from memory).
 */
export function surfaceFindings({ surface, buildUp }: Evidence): RuledFinding[] {
  const { mould, condensation } = surface.critical;
  if (mould === null || condensation === null) return [];
  const whole = surface.temperatureFactors.find(({ where }) => where === "combined") ?? surface.temperatureFactors[0]!;
  const lowest = lowestFactor(surface);
  const findings: RuledFinding[] = [];
  if (mould.factor > 1) findings.push(noConstructionMeets(mould));
  else if (lowest.factor < mould.factor) {
    const everywhere = whole.factor < mould.factor;
    findings.push({
      code: "surface-mould",
      severity: everywhere ? "fault" : "caution",
      effect: everywhere ? "change by number" : "condition",
      message: everywhere
        ? `Mould can grow on the room surface: its temperature factor is ${figure(lowest.factor)} (${lowest.where}), ${mould.month} asks for ${figure(mould.factor)}.`
        : `The room surface ${lowest.where} falls short of what keeps mould away: temperature factor ${figure(lowest.factor)}, ${mould.month} asks for ${figure(mould.factor)}. The surface as a whole meets it with ${figure(whole.factor)}.`,
      advice: everywhere
        ? "Insulate more, or keep the room drier: less vapour made, more air changed."
        : "A layer of insulation across the framing closes the gap; so does a drier room.",
      source: "ISO 13788:2012 clause 5, critical surface humidity 80 % (from memory)",
      figures: {
        factor: lowest.factor,
        where: lowest.where,
        combined: whole.factor,
        required: mould.factor,
        month: mould.month,
      },
    });
  }
  if (condensation.factor <= 1 && lowest.factor < condensation.factor) {
    const everywhere = whole.factor < condensation.factor;
    findings.push({
      code: "surface-condensation",
      severity: "fault",
      effect: everywhere ? "change by number" : "condition",
      message: `Drops form on the room surface (${lowest.where}) in ${surface.condensationMonths.join(", ")}: temperature factor ${figure(lowest.factor)}, ${figure(condensation.factor)} is needed.`,
      advice: "Insulate more, or keep the room drier.",
      source: "ISO 13788:2012 clause 5 (from memory)",
      figures: { factor: lowest.factor, required: condensation.factor, month: condensation.month },
    });
  }
  const other = surface.otherFace;
  if (other !== null && other.required !== null && other.temperatureFactor < other.required && other.required <= 1) {
    findings.push({
      code: "surface-mould-other-face",
      severity: "caution",
      effect: "condition",
      message: `On the face towards the ${buildUp.faces} mould can grow: temperature factor ${figure(other.temperatureFactor)}, ${other.criticalMonth} asks for ${figure(other.required)}.`,
      advice: "Insulate more, or keep that room drier.",
      source: "ISO 13788:2012 clause 5 (from memory)",
      figures: { factor: other.temperatureFactor, required: other.required, month: other.criticalMonth },
    });
  }
  for (const junction of surface.junctions)
    if (junction.meetsMould === false) findings.push(coldJunction(junction, mould));
  return findings;
}

function noConstructionMeets(mould: { month: string; factor: number }): RuledFinding {
  return {
    code: "surface-needs-drier-air",
    severity: "caution",
    effect: "condition",
    message: `In ${mould.month} the room is so damp that no construction keeps its surface below 80 % (the required temperature factor is ${figure(mould.factor)}, over 1). That is a matter of ventilation, not of insulation.`,
    advice: "Make less vapour or change more air; wipeable, tiled or mineral surfaces stand more.",
    source: "ISO 13788:2012 clause 5 (from memory)",
    figures: { required: mould.factor, month: mould.month },
  };
}

function coldJunction(
  junction: { name: string; factor: number },
  mould: { month: string; factor: number },
): RuledFinding {
  return {
    code: "junction-mould",
    severity: "caution",
    effect: "condition",
    message: `The junction "${junction.name}" has a temperature factor of ${figure(junction.factor)}; ${mould.month} asks for ${figure(mould.factor)}.`,
    advice: "Insulate the junction, or keep the room drier.",
    source: "ISO 13788:2012 clause 5 with a factor as stated (from memory)",
    figures: { factor: junction.factor, required: mould.factor, month: mould.month },
  };
}

function figure(factor: number): string {
  return factor.toFixed(2);
}
