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
  /** sd of each part between two nodes, from the slices' own sd [m], and the slice it lies in. */
  partSd: Float64Array;
  partSlice: Int32Array;
}

/** A section prepared for varying resistance. */
export function varyingSection(
  slices: readonly Slice[],
  line: NodeLine,
  climate: SectionClimate,
  buildUp: BuildUp,
): VaryingSection {
  const parts = line.count - 1;
  const partSd = new Float64Array(parts);
  const partSlice = new Int32Array(parts);
  for (let part = 0; part < parts; part += 1) {
    const from = line.sd[part]!;
    const to = line.sd[part + 1]!;
    partSd[part] = to - from;
    partSlice[part] = sliceAt(slices, (from + to) / 2);
  }
  return { slices, follow: slices.map((slice) => sdByHumidity(slice, buildUp)), climate, partSd, partSlice };
}

/** The nodes' sd for the given sd of the slices [m]: every part scales with its slice. */
export function stretchedSd({ slices, partSd, partSlice }: VaryingSection, sliceSd: Float64Array): Float64Array {
  const sd = new Float64Array(partSd.length + 1);
  for (let part = 0; part < partSd.length; part += 1) {
    const slice = partSlice[part]!;
    const stretch = sliceSd[slice]! / slices[slice]!.sd;
    sd[part + 1] = sd[part]! + partSd[part]! * stretch;
  }
  return sd;
}

/**
 * Mean relative humidity of every slice: the mean over its parts, each the mean of its two ends.
 *
 * @param section - the section
 * @param month - 0 to 11
 * @param pressure - p of the nodes [Pa]
 * @returns φ of each slice [–]; NaN for a slice too thin to have its own part
 */
export function humidityOfSlices(section: VaryingSection, month: number, pressure: Float64Array): Float64Array {
  const { slices, climate, partSlice } = section;
  const saturation = climate.saturation[month]!;
  const sum = new Float64Array(slices.length);
  const parts = new Float64Array(slices.length);
  partSlice.forEach((slice, part) => {
    sum[slice]! += (humidityAtNode(pressure, saturation, part) + humidityAtNode(pressure, saturation, part + 1)) / 2;
    parts[slice]! += 1;
  });
  return sum.map((total, slice) => total / parts[slice]!);
}

function sliceAt(slices: readonly Slice[], depth: number): number {
  let sd = 0;
  for (let index = 0; index < slices.length - 1; index += 1) {
    sd += slices[index]!.sd;
    if (depth < sd) return index;
  }
  return slices.length - 1;
}
