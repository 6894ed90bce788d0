import { MONTH_NAMES } from "../constants.ts";
import { temperaturesOf } from "../field/plane-heat.ts";
import { planePicture } from "../field/plane-picture.ts";
import { STRIP_WIDTH } from "../field/strips.ts";
import type { ChannelHeat, PlaneCheck, PlaneRun } from "../plane-checks/types.ts";
import type { AirMonths } from "../project/types.ts";
import type { ChannelResult, MonthName, PlanePicture, PlaneResult, PlaneRunResult } from "../result/types.ts";

/**
 * The result of the plane for a build-up, in the shape of the result.
 *
 * @param check - the runs; null where straight sections are enough, or only the judgement was asked for
 * @param inside - room air [°C, Pa]
 * @param outside - air on the outer side [°C, Pa]
 * @returns plain data with a picture
 */
export function planeResult(check: PlaneCheck | null, inside: AirMonths, outside: AirMonths): PlaneResult | null {
  if (check === null || !check.isTold) return null;
  const { framing, interrupted, isSaid, asBuilt, withTape, withGap, channel } = check;
  const month = asBuilt.strip?.month ?? 0;
  return {
    framing: framing.name,
    interrupted: [...interrupted],
    isSaid,
    asBuilt: runResult(asBuilt),
    withTape: withTape === null ? null : runResult(withTape),
    withGap: withGap === null ? null : runResult(withGap),
    channel: channel === null ? null : channelResult(channel),
    picture: pictureOf(asBuilt, month, [inside.temperature[month]!, outside.temperature[month]!]),
    pictureMonth: MONTH_NAMES[month]!,
  };
}

function channelResult({ heat: _, ...figures }: ChannelHeat): ChannelResult {
  return figures;
}

function runResult({ gap, taped, cell, year, strip, months }: PlaneRun): PlaneRunResult {
  const nameOf = (month: number | null): MonthName | null => (month === null ? null : MONTH_NAMES[month]!);
  return {
    gap,
    taped,
    verdict: year.verdict,
    peak: { amount: year.peak / cell.width, month: nameOf(year.peakMonth) },
    carriedOver: year.carriedOver / cell.width,
    dryBy: nameOf(year.dryBy),
    strip: strip === null ? null : { ...strip, month: MONTH_NAMES[strip.month]! },
    months: months.map((water, month) => ({ month: MONTH_NAMES[month]!, ...water })),
  };
}

/** Length of a cell shown beside the framing [m]: the effects there end within it. */
const SHOWN_BESIDE = 0.14;

/** Space for the labels of the two sides [m]. */
const SIDE = 0.02;

function pictureOf({ cell, field, year, strip }: PlaneRun, month: number, airs: readonly number[]): PlanePicture {
  const { xs } = field.mesh;
  const x0 = Math.max(xs[0]!, -SHOWN_BESIDE);
  const x1 = Math.min(xs.at(-1)!, cell.framingEdge + SHOWN_BESIDE);
  const middle = (x0 + x1) / 2;
  return planePicture({
    field,
    frame: { x0, x1, y0: -SIDE, y1: cell.depth + SIDE },
    view: "depth to the right",
    temperature: temperaturesOf(field, airs),
    held: strip === null ? null : year.held[month]!,
    inside: [middle, -SIDE / 2],
    outside: [middle, cell.depth + SIDE / 2],
    coldest: null,
    strip: strip === null ? null : { middle: strip.middle, width: STRIP_WIDTH },
  });
}
