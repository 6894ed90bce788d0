import type { ProjectResult } from "@warmside/core";
import { json } from "./json.ts";

/**
 * The whole result as JSON. The governing section of a build-up is one of its sections: only its index is written, so that
 * it does not appear twice.
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
