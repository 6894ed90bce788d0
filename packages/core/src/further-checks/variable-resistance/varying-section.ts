import type { BuildUp } from "../../project/types.ts";
import type { NodeLine } from "../../vapour/node-line.ts";
import type { SectionClimate } from "../../vapour/section-climate.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import { humidityAtNode } from "../section-nodes/humidity-at-node.ts";
import { type SdByHumidity, sdByHumidity } from "./sd-by-humidity.ts";

/** A section whose slices change their sd with their humidity. */
export interface VaryingSection {
  slices: readonly Slice[];
  /** How each slice's sd depends on its humidity; null where it is constant. */
  follow: readonly (SdByHumidity | null)[];
  climate: SectionClimate;
  /** sd of each interval of two nodes, from the slices' own sd [m], and the slice it lies in. */
  intervalSd: Float64Array;
  intervalSlice: Int32Array;
}

/** A section prepared for varying resistance. */
export function varyingSection(
  slices: readonly Slice[],
  line: NodeLine,
  climate: SectionClimate,
  buildUp: BuildUp,
): VaryingSection {
  const intervals = line.count - 1;
  const intervalSd = new Float64Array(intervals);
  const intervalSlice = new Int32Array(intervals);
  for (let interval = 0; interval < intervals; interval += 1) {
    const from = line.sd[interval]!;
    const to = line.sd[interval + 1]!;
    intervalSd[interval] = to - from;
    intervalSlice[interval] = sliceAt(slices, (from + to) / 2);
  }
  return { slices, follow: slices.map((slice) => sdByHumidity(slice, buildUp)), climate, intervalSd, intervalSlice };
}

/** The nodes' sd for the given sd of the slices [m]: every interval scales with its slice. */
export function stretchedSd(
  { slices, intervalSd, intervalSlice }: VaryingSection,
  sliceSd: Float64Array,
): Float64Array {
  const sd = new Float64Array(intervalSd.length + 1);
  for (let interval = 0; interval < intervalSd.length; interval += 1) {
    const slice = intervalSlice[interval]!;
    const stretch = sliceSd[slice]! / slices[slice]!.sd;
    sd[interval + 1] = sd[interval]! + intervalSd[interval]! * stretch;
  }
  return sd;
}

/**
 * Mean relative humidity of every slice: the mean over its intervals, each the mean of its two ends.
 *
 * @param section - the section
 * @param month - 0 to 11
 * @param pressure - p of the nodes [Pa]
 * @returns φ of each slice [–]; NaN for a slice too thin to have its own interval
 */
export function humidityOfSlices(section: VaryingSection, month: number, pressure: Float64Array): Float64Array {
  const { slices, climate, intervalSlice } = section;
  const saturation = climate.saturation[month]!;
  const sum = new Float64Array(slices.length);
  const intervals = new Float64Array(slices.length);
  intervalSlice.forEach((slice, interval) => {
    sum[slice]! +=
      (humidityAtNode(pressure, saturation, interval) + humidityAtNode(pressure, saturation, interval + 1)) / 2;
    intervals[slice]! += 1;
  });
  return sum.map((total, slice) => total / intervals[slice]!);
}

function sliceAt(slices: readonly Slice[], at: number): number {
  let sd = 0;
  for (let index = 0; index < slices.length - 1; index += 1) {
    sd += slices[index]!.sd;
    if (at < sd) return index;
  }
  return slices.length - 1;
}
