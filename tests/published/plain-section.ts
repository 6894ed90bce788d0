import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import type { AirMonths } from "../../packages/core/src/project/types.ts";
import { type NodeLine, nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import { sectionClimate } from "../../packages/core/src/vapour/section-climate.ts";
import type { Slice } from "../../packages/core/src/vapour/section-slices.ts";
import type { DrivenSection } from "../../packages/core/src/year/month-balance.ts";

/** A section given by resistances and sd alone, for worked cases that name no material. */
export interface PlainLayer {
  resistance: number;
  sd: number;
}

export function plainSlices(layers: readonly PlainLayer[]): Slice[] {
  return layers.map((layer, index) => ({
    layer: index,
    part: "whole" as const,
    name: `layer ${index + 1}`,
    material: "plain",
    thickness: 0.01,
    isAir: false,
    ...layer,
  }));
}

/** Twelve months of the same air. */
export function sameMonths(temperature: number, relativeHumidity: number): AirMonths {
  return {
    temperature: new Array(12).fill(temperature),
    vapourPressure: new Array(12).fill(vapourPressure(relativeHumidity, temperature)),
  };
}

export function drivenSection(
  layers: readonly PlainLayer[],
  inside: AirMonths,
  outside: AirMonths,
  surfaceInside = 0.13,
  surfaceOutside = 0.04,
): DrivenSection & { line: NodeLine } {
  const line = nodeLine(plainSlices(layers));
  return { line, sd: line.sd, climate: sectionClimate(line, inside, outside, surfaceInside, surfaceOutside, 0) };
}
