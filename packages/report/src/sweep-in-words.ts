import type { SweepStudy } from "@warmside/core";
import { fixed, MILLIMETRES_PER_METRE, trimmed } from "./numbers.ts";
import { sentence } from "./words.ts";

/**
 * A thickness from which something holds, rounded up: a whole millimetre can be built.
 *
 * @param thickness - [m]
 * @returns such as "19 mm" for 18.9 mm
 */
export function fromThickness(thickness: number): string {
  return `${fixed(Math.ceil(thickness * MILLIMETRES_PER_METRE - SMALLEST_PART), 0)} mm`;
}

/** So little over a whole millimetre comes of binary numbers [mm]. */
const SMALLEST_PART = 1e-6;

/**
 * What a sweep shows, in one or two sentences, with the judgements in quotation marks: bare, "change it" is an order.
 *
 * @param sweep - the study
 * @returns such as "Mineral wool slab: “change it” up to 19 mm, “sound” from 19 mm. U goes from 0.90 to 0.31 W/(m²·K)."
 */
export function sweepInWords({ layer, points, turns, from, to, target, meetsTargetFrom }: SweepStudy): string {
  const [first, last] = [points[0]!, points[points.length - 1]!];
  const judged =
    turns.length === 0
      ? `“${first.judgement}” all the way from ${exactly(from)} to ${exactly(to)}`
      : [
          `“${first.judgement}” up to ${fromThickness(turns[0]!.thickness)}`,
          ...turns.map((turn) => `“${turn.to}” from ${fromThickness(turn.thickness)}`),
        ].join(", ");
  if (first.transmittance === null || last.transmittance === null) return `${sentence(layer.name)}: ${judged}.`;
  const met = meetsTargetFrom === null ? "which never meets" : "and meets";
  const where = meetsTargetFrom === null ? "" : ` from ${fromThickness(meetsTargetFrom)}`;
  const ofTarget =
    target === null ? "" : `${meetsTargetFrom === null ? "," : ""} ${met} the target of ${fixed(target, 2)}${where}`;
  return `${sentence(layer.name)}: ${judged}. U goes from ${fixed(first.transmittance, 2)} to ${fixed(last.transmittance, 2)} W/(m²·K)${ofTarget}.`;
}

function exactly(thickness: number): string {
  return `${trimmed(thickness * MILLIMETRES_PER_METRE, 1)} mm`;
}
