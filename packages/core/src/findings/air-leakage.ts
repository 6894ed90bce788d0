import { TRACE } from "./amount-limits.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Air through a stated gap, beside diffusion.
 * Source: orifice flow and ideal gas (this project's rule, METHOD.md, Air leakage), an upper bound.
 */
export function airLeakageFindings({ checks }: Evidence): RuledFinding[] {
  const { leak } = checks;
  if (leak === null) return [];
  const matters = leak.total > TRACE;
  return [
    {
      code: "air-leakage",
      severity: matters ? "caution" : "note",
      effect: matters ? "condition" : "none",
      message: leak.message,
      advice: matters
        ? "Close the gap for air on the room side: tape, sealant, a batten over the edge of the sheet, sealed boxes and pipes."
        : null,
      source: "orifice flow with a factor of 0.6; outward all the time, all the air cools to the plane: an upper bound",
      figures: {
        area: leak.area,
        pressure: leak.pressure,
        airFlow: leak.airFlow,
        total: leak.total,
        diffusion: leak.diffusion,
      },
    },
  ];
}
