import type { BuildUpCalculation } from "../calculate-build-up.ts";
import type { RuledFinding } from "../findings/types.ts";
import type { BuildUpResult, RemedyStep } from "../result/types.ts";
import { blamesColdSheet, sheetsLieWarm } from "./cold-side-sheet.ts";
import type { WarmSide } from "./types.ts";
import { keepsWaterMargin } from "./water-margin.ts";

/**
 * Whether the figures of a changed build-up allow it as a remedy, before it is judged: its water keeps a margin, and a
 * sheet that a finding objected to no longer lies on the cold side.
 *
 * @param before - the assessed build-up before the change
 * @param warmSide - the side that vapour comes from
 * @param after - figures of the changed build-up
 * @returns true when they do
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function figuresAllow(before: BuildUpResult, warmSide: WarmSide, after: BuildUpCalculation): boolean {
  return (
    keepsWaterMargin(after) && (!blamesColdSheet(before) || sheetsLieWarm(after.buildUp, after.heat.counted, warmSide))
  );
}

/**
 * Whether a change can answer the findings: if the room of a partition is itself damp enough for mould, no sheet in the
 * partition helps.
 *
 * @param before - the assessed build-up before the change
 * @param does - what the change does
 * @returns true when it may be tried
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function answersWhatWasFound({ findings }: BuildUpResult, does: readonly RemedyStep[]): boolean {
  const isOfTheRoom = findings.some(({ code }) => code === "room-too-damp");
  return !isOfTheRoom || !does.some(({ kind }) => SHEETS.has(kind));
}

/** Changes that add, move or tighten a vapour layer. */
const SHEETS: ReadonlySet<RemedyStep["kind"]> = new Set(["sheet added", "sheet exchanged", "sheet moved"]);

/**
 * Whether the findings of a changed build-up allow it as a remedy, beyond its judgement: guidance does not reject it,
 * its deck stays warm, and the water beside its framing keeps a margin.
 *
 * @param findings - the findings of the changed build-up
 * @returns true when it may be offered
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function findingsAllow(findings: readonly RuledFinding[]): boolean {
  return !findings.some(isRefusedByGuidance) && !findings.some(findsDeckTooCold) && !findings.some(isWetInThePlane);
}

function isRefusedByGuidance({ effect }: RuledFinding): boolean {
  return effect === "change by guidance";
}

/** Whether water beside the framing exceeds half of its limit, the same margin as for water inside a section. */
function isWetInThePlane(finding: RuledFinding): boolean {
  if (finding.code !== "interrupted-layer" && finding.code !== "water-at-channel") return false;
  const { strip, limit } = finding.figures;
  return limit !== null && strip > limit / 2;
}

/** Whether more than a third of a roof's resistance lies below its deck. */
function findsDeckTooCold({ code, effect }: RuledFinding): boolean {
  return code === "insulation-below-deck" && effect !== "none";
}
