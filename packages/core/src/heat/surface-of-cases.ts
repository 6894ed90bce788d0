import type { BuildUp } from "../project/types.ts";
import type { SurfaceResult } from "../result/types.ts";
import { calculateHeat } from "./heat-of-build-up.ts";
import { ventilationCases } from "./slight-ventilation.ts";
import { assessSurface, lowestFactor, type SurfaceQuestion } from "./surface.ts";
import type { HeatCalculation } from "./types.ts";

/**
 * The surfaces of a build-up. With a slightly ventilated air layer both cases are assessed, and the worse counts, for
 * each face separately.
 *
 * @param buildUp - the build-up
 * @param heat - its heat figures
 * @param question - air of both sides [°C, Pa] and junction factors [–]
 * @returns the surfaces, with the case that governs the room's face
 * Source: ISO 13788:2012 clause 5 (from memory); taking the worse of the two cases is this project's rule (METHOD.md,
 *   Inside surface).
 */
export function surfaceOfBuildUp(buildUp: BuildUp, heat: HeatCalculation, question: SurfaceQuestion): SurfaceResult {
  const cases = ventilationCases(buildUp);
  if (cases === null) return assessSurface(heat, question);
  const closed = assessSurface(calculateHeat(cases.closed, heat.direction), question);
  const open = assessSurface(calculateHeat(cases.open, heat.direction), question);
  const openIsColder = lowestFactor(open).factor < lowestFactor(closed).factor;
  return {
    ...(openIsColder ? open : closed),
    otherFace: colderFace(closed.otherFace, open.otherFace),
    slightVentilationCase: openIsColder ? "open" : "closed",
  };
}

function colderFace(closed: SurfaceResult["otherFace"], open: SurfaceResult["otherFace"]): SurfaceResult["otherFace"] {
  if (closed === null || open === null) return null;
  return open.temperatureFactor < closed.temperatureFactor ? open : closed;
}
