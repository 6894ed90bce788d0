import { type BuildUpResult, CRITICAL_SURFACE_HUMIDITY } from "@warmside/core";
import { fixed, percent } from "./numbers.ts";
import { roomWords } from "./words.ts";

/**
 * What the coldest part of the room surface is like where mould on it is the first reason of the judgement: a factor
 * says that to nobody who does not know it.
 *
 * @param buildUp - a build-up of the result
 * @returns such as "In December the coldest surface of the room is 15.2 °C, the air on it 93 % damp; mould can grow from
 * 80 %."; null where another reason comes first
 */
export function coldestSurface({ findings, judgement, room, surface }: BuildUpResult): string | null {
  const reason = findings.find(({ id }) => id === judgement.decisive);
  if (reason?.code !== "surface-mould" || !surface?.coldest) return null;
  const { month, temperature, relativeHumidity } = surface.coldest;
  return `In ${month} the coldest surface of ${roomWords(room)} is ${fixed(temperature, 1)} °C, the relative humidity at it ${percent(relativeHumidity, 0)}; mould can grow from ${percent(CRITICAL_SURFACE_HUMIDITY.mould, 0)}.`;
}
