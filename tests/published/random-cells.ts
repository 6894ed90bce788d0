import fc from "fast-check";
import type { CellQuestion } from "../../packages/core/src/field/repeating-cell.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { Framing, Layer } from "../../packages/core/src/project/types.ts";
import { air, buildUp, framing, material, sheet, solid } from "./build-up-by-hand.ts";
import { between, overPowers } from "./random-sections.ts";

/** Framing by width and spacing [m], λ and μ. */
export function studs(width: number, spacing: number, conductivity = 0.13, vapourFactor = 50): Framing {
  return {
    ...framing("studs", width / spacing, conductivity),
    material: material(conductivity, vapourFactor, { name: "studs", kind: "wood" }),
    origin: { kind: "width and spacing", width, spacing, otherTimber: 0, otherTimberByDefault: false },
  };
}

/** Layers of a wall whose framing, if any, is that given. */
const layersWith = (timber: Framing): fc.Arbitrary<Layer[]> => {
  const own = fc.constantFrom(null, timber, timber);
  const layer = fc.oneof(
    {
      weight: 5,
      arbitrary: fc
        .tuple(between(0.005, 0.2), between(0.02, 1.5), overPowers(1, 200), own)
        .map(([thickness, conductivity, factor, framing]) =>
          solid(thickness, conductivity, { framing, material: material(conductivity, factor) }),
        ),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(between(0.005, 0.1), between(0.05, 0.9), own)
        .map(([thickness, resistance, framing]) => air(thickness, { resistance, framing })),
    },
    { weight: 1, arbitrary: overPowers(0.02, 100).map((sd) => sheet(sd)) },
  );
  return fc
    .tuple(fc.array(layer, { maxLength: 3 }), between(0.04, 0.2), fc.array(layer, { maxLength: 3 }))
    .map(([inner, thickness, outer]) => [...inner, solid(thickness, 0.035, { framing: timber }), ...outer]);
};

/** Random framed walls as questions for a cell. */
export const cells: fc.Arbitrary<CellQuestion> = fc
  .tuple(between(0.03, 0.1), between(0.3, 0.8), between(0.08, 0.3), between(10, 200))
  .chain(([width, spacing, conductivity, factor]) => {
    const timber = studs(width, spacing, conductivity, factor);
    return layersWith(timber).map((layers) => ({
      counted: calculateHeat(buildUp(layers), "horizontal").counted,
      framing: timber,
      surfaces: { inside: 0.13, outside: 0.04 },
      sheets: false,
    }));
  });
