import { readFileSync } from "node:fs";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { heatWithinBounds } from "../../packages/core/src/field/heat-within-bounds.ts";
import { outerCorner } from "../../packages/core/src/field/junctions/outer-corner.ts";
import { sideOf } from "../../packages/core/src/field/junctions/side.ts";
import { meshWithin } from "../../packages/core/src/field/mesh.ts";
import { heatField } from "../../packages/core/src/field/plane-heat.ts";
import { planeYear } from "../../packages/core/src/field/plane-vapour.ts";
import { drawnFraming, repeatingCell } from "../../packages/core/src/field/repeating-cell.ts";
import type { Scene } from "../../packages/core/src/field/scene.ts";
import { VAPOUR_MESH } from "../../packages/core/src/plane-checks/plane-run.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { type Measured, ratioOf } from "./measure.ts";
import type { Measure } from "./table.ts";

const ROUNDS = 9;

/** The demo's wall of foil-faced boards, and its wall of wool. */
function walls() {
  const project = readProjectOrThrow(readFileSync("shared/alder-row-pottery.yaml", "utf8"));
  const site = surroundingsOf(project).sites.reported;
  const [wool, foil] = ["Studio wall", "Workshop wall"].map((name) =>
    calculateBuildUp(project.buildUps.find((buildUp) => buildUp.name === name)!, site),
  );
  return { wool: wool!, foil: foil!, site };
}

/**
 * Heat of a stud cell and of a corner within 1 %, and a year of vapour with water in it: times, and each over a calculation
 * by straight sections on the same machine.
 */
export function inThePlane(): Measure[] {
  const { wool, foil, site } = walls();
  const framing = drawnFraming(foil.heat.counted)!;
  const { inside, outsideForMoisture: outside } = foil.heat.surfaceResistances;
  const question = { counted: foil.heat.counted, framing, surfaces: { inside, outside } };
  const side = sideOf(wool.heat);
  const cell = repeatingCell({ ...question, sheets: true });
  const field = heatField(cell.scene, meshWithin(cell.scene, VAPOUR_MESH, MOST_NODES));
  const straight: Measured = { work: () => calculateBuildUp(foil.buildUp, site).governing.year.peak, calls: 100 };
  const over = (name: string, what: string, most: number, work: () => number): Measure[] => {
    const { above, ratio } = ratioOf({ work, calls: 5 }, straight, ROUNDS);
    return [
      { name, value: 1e6 * above, unit: "µs", goal: { atMost: most }, what },
      {
        name: `${name}ToSections`,
        value: ratio,
        unit: "times",
        goal: null,
        what: "the same over one calculation by straight sections",
      },
    ];
  };
  return [
    ...over("studCell", "heat of a stud cell within 1 %", 10_000, () =>
      heatOf(repeatingCell({ ...question, sheets: false }).scene),
    ),
    ...over("corner", "heat of an outer corner with three posts within 1 %", 15_000, () =>
      heatOf(outerCorner(side, side, 3, { inside: AT_BOTH, outside: AT_BOTH }).scene),
    ),
    ...over(
      "vapourYear",
      `a year of vapour with water beside the studs, ${field.net.active.length} nodes`,
      25_000,
      () => planeYear(field, [foil.inside, foil.farSide.months]).peak,
    ),
  ];
}

/** More nodes are not used. */
const MOST_NODES = 1500;

/** Surface resistances of the corner [m²·K/W]. */
const AT_BOTH = { level: 0.13, upright: 0.13 };

function heatOf(scene: Scene): number {
  return heatWithinBounds(scene).conductance;
}
