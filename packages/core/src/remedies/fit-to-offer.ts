import type { BuildUpCalculation } from "../calculate-build-up.ts";
import type { RuledFinding } from "../findings/types.ts";
import type { BuildUpResult, RemedyStep } from "../result/types.ts";
import { blamesColdSheet, sheetsLieWarm } from "./cold-side-sheet.ts";
import type { WarmSide } from "./types.ts";
import { keepsWaterMargin } from "./water-margin.ts";

/**
 * Whether the figures of a changed build-up let it be offered as a remedy, before it is judged: its water keeps a margin,
 * and a sheet that was blamed for its place no longer lies there.
 *
 * @param before - the build-up as it stands, assessed
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
 * Whether what a change does answers what was found: where a partition's own room is damp enough for mould, no sheet in
 * the partition changes that.
 *
 * @param before - the build-up as it stands, assessed
 * @param does - what the change does
 * @returns true when it may be tried
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function answersWhatWasFound({ findings }: BuildUpResult, does: readonly RemedyStep[]): boolean {
  const isOfTheRoom = findings.some(({ code }) => code === "room-too-damp");
  return !isOfTheRoom || !does.some(({ kind }) => SHEETS.has(kind));
}

/** Changes that put a vapour layer in, or a tighter one. */
const SHEETS: ReadonlySet<RemedyStep["kind"]> = new Set(["sheet added", "sheet exchanged", "sheet moved"]);

/**
 * Whether the findings of a changed build-up let it be offered, beyond its judgement: guidance has nothing against it, its
 * deck stays warm, and the water beside its framing keeps a margin.
 *
 * @param findings - of the changed build-up
 * @returns true when an adviser could put a name to it
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function findingsAllow(findings: readonly RuledFinding[]): boolean {
  return !findings.some(isRefusedByGuidance) && !findings.some(findsDeckTooCold) && !findings.some(isWetInThePlane);
}

function isRefusedByGuidance({ effect }: RuledFinding): boolean {
  return effect === "change by guidance";
}

/** More than half of the limit beside the framing: the margin that water inside a section is held to as well. */
function isWetInThePlane(finding: RuledFinding): boolean {
  if (finding.code !== "interrupted-layer" && finding.code !== "water-at-channel") return false;
  const { strip, limit } = finding.figures;
  return limit !== null && strip > limit / 2;
}

/** More than a third of a roof's resistance below its deck. */
function findsDeckTooCold({ code, effect }: RuledFinding): boolean {
  return code === "insulation-below-deck" && effect !== "none";
}
