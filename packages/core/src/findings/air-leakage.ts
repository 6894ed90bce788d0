import { TRACE } from "./amount-limits.ts";
import { CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Air through a stated gap, beside diffusion.
 * Source: orifice flow and ideal gas (this project's rule, METHOD.md, Air leakage), an upper bound.
 */
export function airLeakageFindings({ checks }: Evidence): RuledFinding[] {
  if (checks.leak === null) return [];
  const { months: _, ...figures } = checks.leak;
  const weight = figures.total > figures.limit ? OVER_LIMIT : figures.total > TRACE ? CONDITION : NOTE;
  return [found("air-leakage", weight, figures)];
}
