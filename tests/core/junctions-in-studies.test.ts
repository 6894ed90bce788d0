import { describe, expect, it } from "vitest";
import { assessProject } from "../../packages/core/src/assess-project.ts";
import { withFactorsOfJunctions } from "../../packages/core/src/plane-checks/project-junctions.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { studyPlacement } from "../../packages/core/src/studies/placement.ts";
import { spreadQuestion } from "../../packages/core/src/studies/spread/spread-question.ts";
import { varyThickness } from "../../packages/core/src/studies/variation.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { workerFor } from "../../packages/report/src/cli/spread/spread-worker.ts";

/** A wall that is sound by itself, and whose corner of solid timber is too cold for the room. */
const project = readProjectOrThrow(`project: Alder Row
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
climates for place: [de-bilt]
build-ups:
  - name: Shop wall
    element: wall
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 89 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
      - { material: softwood timber, thickness: 20 mm }
junctions:
  - { name: Corner, outer corner: [Shop wall], posts: solid }
`);
const word = assessProject(project).buildUps[0]!.judgement.word;
const INSULATION = 2;

describe("a build-up whose junction is too cold", () => {
  it("is judged by that", () => {
    expect(word).toBe("sound with conditions");
    expect(assessProject({ ...project, junctions: [] }).buildUps[0]!.judgement.word).toBe("sound");
  });

  it("gets the same word in the study of thicknesses, whose corner changes with the thickness", () => {
    const { points } = varyThickness(project, { buildUp: 0, layer: INSULATION, from: 0.04, to: 0.289, step: null });
    expect(points.find(({ isDrawn }) => isDrawn)!.judgement).toBe(word);
    expect(points.at(-1)!.judgement).toBe("sound");
  });

  it("gets the same word in the study of places", () => {
    const [grid] = studyPlacement(project).buildUps;
    const drawn = grid!.positions.find(({ isDrawn }) => isDrawn)!.position;
    const [row] = grid!.rows.filter(({ climate }) => climate === "de-bilt");
    expect(row!.cells.find(({ position }) => position === drawn)!.judgement).toBe(word);
  });

  it("gets the same word in the study of the spread, at the values as stated", () => {
    const { inputs } = spreadQuestion(withFactorsOfJunctions(project, project.buildUps[0]!), surroundingsOf(project));
    const samples = { count: 1, dimensions: inputs.length, values: new Float64Array(inputs.length).fill(0.5) };
    const { judgement } = workerFor(project)({ buildUp: 0, from: 0, samples });
    const without = workerFor({ ...project, junctions: [] })({ buildUp: 0, from: 0, samples });
    expect([without.judgement[0], judgement[0]]).toEqual([0, 1]);
  });
});
