import {
  assessBuildUp,
  assessProject,
  readProjectOrThrow,
  surroundingsOf,
  withFactorsOfJunctions,
} from "@warmside/core";
import { describe, expect, it } from "vitest";
import { answerTo } from "../../packages/report/src/live/work/work.ts";
import { FOIL_BETWEEN_STUDS } from "./foil-between-studs.ts";

/** A wall whose foil is taped, so that nothing but its solid corner is found against it; a floor that the wall stands on. */
const TEXT = `${FOIL_BETWEEN_STUDS.replace("framing: studs }", "framing: studs, taped: yes }")}  - name: Floor
    element: floor
    layers:
      - { material: oriented strand board, thickness: 22 mm }
      - { material: vapour control layer sd 5 m }
      - { material: mineral wool slab, thickness: 150 mm }
      - { material: breather membrane }
junctions:
  - { name: Corner, outer corner: [Wall], posts: solid }
  - { name: Foot, floor edge: [Wall, Floor], rim: 45 mm, plates: 1 }
`;

describe("a build-up that is assessed alone", () => {
  const project = readProjectOrThrow(TEXT);
  const surroundings = surroundingsOf(project);
  const inProject = assessProject(project).buildUps.map(({ judgement }) => judgement);
  const [wall] = project.buildUps;

  it("is judged as in its project once it has the factors of its junctions", () => {
    const alone = project.buildUps.map((one) => assessBuildUp(withFactorsOfJunctions(project, one), surroundings));
    expect(alone.map(({ judgement }) => judgement)).toEqual(inProject);
    expect(inProject[0]!.word).not.toBe(assessBuildUp(wall!, surroundings).judgement.word);
  });

  it("is itself where no junction names it", () => {
    expect(withFactorsOfJunctions({ ...project, junctions: [] }, wall!)).toBe(wall);
  });

  it("is so judged on the live page, also where its junction names another build-up", async () => {
    for (const [buildUp, { word }] of inProject.entries()) {
      const reply = await answerTo({ id: 1, kind: "beside", text: TEXT, tables: {}, buildUp });
      expect(reply).toHaveProperty("beside");
      expect("beside" in reply && reply.beside.judgements[buildUp]).toBe(word);
    }
  });
});
