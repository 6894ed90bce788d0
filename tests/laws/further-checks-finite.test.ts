import fc from "fast-check";
import { expect, test } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { furtherChecks } from "../../packages/core/src/further-checks/further-checks.ts";
import { humidInterfaces } from "../../packages/core/src/further-checks/mould/humid-interfaces.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import { assessVapourLayer } from "../../packages/core/src/vapour-layer/assess-vapour-layer.ts";
import { heatedRoom } from "../core/build-ups.ts";
import { firstNotFinite } from "./every-number.ts";
import { situations } from "./random-build-ups.ts";

const room = heatedRoom({ kind: "class", class: 3 });

/** Everything asked for: water in every layer that has a thickness, a leak, both second methods. */
function askedEverything(buildUp: BuildUp): BuildUp {
  const trappedWater = buildUp.layers.flatMap(({ type }, layer) =>
    type === "material" ? [{ layer, amount: 1, reading: null, startMonth: layer % 12 }] : [],
  );
  const leak = { length: 1, width: 0.001, pressure: 2 };
  return { ...buildUp, trappedWater, leak, twoSeasonCheck: true, variableResistance: true };
}

test("150 random build-ups asked everything: no number that is not finite, every resistance settles", () => {
  let unsettled = 0;
  let asked = 0;
  fc.assert(
    fc.property(situations, ({ buildUp, site }) => {
      const everything = askedEverything(buildUp);
      const calculation = calculateBuildUp(everything, site);
      const { result } = assessVapourLayer(calculation);
      const checks = furtherChecks(everything, site, calculation, result, room, 1);
      expect(firstNotFinite({ checks, humid: humidInterfaces(calculation, site.outdoor) })).toBeNull();
      asked += 1;
      if (!checks.variableResistance!.converged) unsettled += 1;
      expect(checks.twoSeasonCheck).not.toBeNull();
    }),
    { numRuns: 150, seed: 800 },
  );
  expect(asked).toBe(150);
  expect(unsettled).toBe(0);
});
