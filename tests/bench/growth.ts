import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import { ratioOf } from "./measure.ts";
import { sixLayerWall, surroundings, wallOfLayers } from "./six-layer-wall.ts";
import type { Measure } from "./table.ts";

const site = surroundings().sites.reported;

/** Cost of a build-up among 10 000 over its cost among 100: nothing may grow faster than the project. */
export function growthWithBuildUps(): Measure[] {
  const few = variedWalls(100);
  const many = variedWalls(10_000);
  const { ratio } = ratioOf(
    { work: () => all(many) / many.length, calls: 1 },
    { work: () => all(few) / few.length, calls: 100 },
    9,
  );
  // A round of the first is 10 000 build-ups in one go, a round of the second a hundred times 100.
  const perBuildUp = ratio / 100;
  return [
    {
      name: "growthBuildUps",
      value: perBuildUp,
      unit: "times",
      goal: { atMost: 1.1 },
      what: "cost per build-up at 10 000 over cost per build-up at 100",
    },
  ];
}

/** Cost of a node in a wall of 40 layers over its cost in one of 10. */
export function growthWithLayers(): Measure[] {
  const [ten, forty] = [wallOfLayers(10), wallOfLayers(40)];
  const nodes = (buildUp: BuildUp): number => calculateBuildUp(buildUp, site).sections[0]!.line.count;
  const work = (buildUp: BuildUp) => (): number => calculateBuildUp(buildUp, site).governing.year.peak;
  const { ratio } = ratioOf({ work: work(forty), calls: 300 }, { work: work(ten), calls: 1000 });
  const perNode = ratio / (nodes(forty) / nodes(ten));
  return [
    {
      name: "growthLayers",
      value: perNode,
      unit: "times",
      goal: { atMost: 1.3 },
      what: "40 layers over 10 layers, per node",
    },
  ];
}

/** Walls that differ from one another, so that no two calculations are the same. */
function variedWalls(count: number): BuildUp[] {
  return Array.from({ length: count }, (_, index) => sixLayerWall(10 + index / 1000));
}

function all(buildUps: readonly BuildUp[]): number {
  return buildUps.reduce((sum, buildUp) => sum + calculateBuildUp(buildUp, site).heat.transmittance, 0);
}
