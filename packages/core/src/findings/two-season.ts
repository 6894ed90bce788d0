import { CAUTION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * The two-season check, a second method with its own verdict, not used in the judgement.
 * Source: DIN 4108-3, editions since 2014 (from memory).
 */
export function twoSeasonFindings({ checks }: Evidence): RuledFinding[] {
  const check = checks.twoSeasonCheck;
  return check === null ? [] : [found("two-season-check", check.passes === false ? CAUTION : NOTE, check)];
}
