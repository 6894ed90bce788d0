import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { PlaneTooWet } from "../field/month-in-the-plane.ts";
import { drawnFraming } from "../field/repeating-cell.ts";
import type { Taping } from "../project/types.ts";
import { channelHeat } from "./channel-heat.ts";
import { type InterruptedLayer, interruptedLayers } from "./interrupted-layers.ts";
import { type JointCase, planeRun } from "./plane-run.ts";
import type { PlaneCheck } from "./types.ts";

/** Gap that boards cut by hand leave beside timber [m] (common practice): shown where the file states none. */
export const USUAL_GAP = 0.002;

/** Tape from board to board over the framing between them. */
const OVER_THE_FRAMING: Taping = { kind: "over the framing" };

/**
 * Effects in the plane that straight sections do not show: tight layers between framing, and metal channels.
 *
 * @param calculation - the build-up's figures
 * @param all - whether to add the runs shown beside the one judged
 * @returns null where straight sections are enough; "too wet" where so much of the cross-section is wet that the plane
 *   would take too long
 * Source: METHOD.md, The plane. Where the file does not state the joints, boards touch the framing, without tape.
 */
export function planeCheck(calculation: BuildUpCalculation, all: boolean): PlaneCheck | "too wet" | null {
  return whereItIsNotTooWet(() => checkPlane(calculation, all), "too wet");
}

/** The result of the work, or the other answer where the cross-section is too wet for it. */
function whereItIsNotTooWet<Worked, Other>(work: () => Worked, other: Other): Worked | Other {
  try {
    return work();
  } catch (error) {
    if (error instanceof PlaneTooWet) return other;
    throw error;
  }
}

function checkPlane(calculation: BuildUpCalculation, all: boolean): PlaneCheck | null {
  const { heat, buildUp } = calculation;
  const framing = drawnFraming(heat.counted);
  if (framing === null || buildUp.ground !== null || buildUp.void !== null) return null;
  if (framing.origin.kind === "channel") {
    const asBuilt = planeRun(calculation, framing, () => null, TIGHT);
    const channel = channelHeat(heat, framing);
    const isSaid = { gap: true, taped: true };
    return { framing, interrupted: [], isSaid, isTold: all, asBuilt, withTape: null, withGap: null, channel };
  }
  const layers = interruptedLayers(heat.counted, framing);
  const tightest = layers[0];
  if (tightest === undefined) return null;
  const run = (change: Partial<JointCase>): PlaneCheck["asBuilt"] => {
    const cases = new Map(layers.map((each) => [each.index, { ...jointAsSaid(each), ...change }]));
    return planeRun(calculation, framing, (layer) => cases.get(layer) ?? null, cases.get(tightest.index)!);
  };
  const isTaped = layers.every(({ layer }) => layer.taped?.kind === OVER_THE_FRAMING.kind);
  const isSaid = {
    gap: layers.every(({ layer }) => layer.gapBesideFraming !== null),
    taped: layers.every(({ layer }) => layer.taped !== null),
  };
  return {
    framing,
    interrupted: layers.map(({ index }) => index),
    isSaid,
    isTold: all,
    asBuilt: run({}),
    withTape: all && !isTaped ? whereItIsNotTooWet(() => run({ taped: OVER_THE_FRAMING }), null) : null,
    withGap: all && !isTaped && !isSaid.gap ? whereItIsNotTooWet(() => run({ gap: USUAL_GAP }), null) : null,
    channel: null,
  };
}

/** Boards that touch the framing, without tape. */
const TIGHT: JointCase = { gap: 0, taped: { kind: "no" } };

function jointAsSaid({ layer }: InterruptedLayer): JointCase {
  return { gap: layer.gapBesideFraming ?? TIGHT.gap, taped: layer.taped ?? TIGHT.taped };
}
