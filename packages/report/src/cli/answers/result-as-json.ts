import type { ProjectResult } from "@warmside/core";
import { json } from "./json.ts";

/**
 * The whole result as JSON. The governing section of a build-up is one of its sections; it is written as its place among
 * them, so that it does not stand there twice.
 *
 * @param result - the project's result
 * @returns JSON, `moisture.governing` an index from 0 into `moisture.sections`
 * @throws Error when a number in it is not finite
 */
export function resultAsJson(result: ProjectResult): { asIs: string } {
  const buildUps = result.buildUps.map((buildUp) => {
    const { moisture } = buildUp;
    return moisture === null ? buildUp : { ...buildUp, moisture: { ...moisture, governing: moisture.governing.index } };
  });
  return json({ ...result, buildUps });
}
