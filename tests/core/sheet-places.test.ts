import { assessBuildUp, readProjectOrThrow, sheetPlaces, surroundingsOf } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { caseFiles, readCase } from "../practice/cases.ts";

const wall = (climate: string, indoor: string): string => `project: Alder Row
climate: ${climate}
indoor: ${indoor}
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well, open: both ends }
      - { material: softwood timber, thickness: 20 mm }
`;

function placesOf(text: string) {
  const project = readProjectOrThrow(text);
  return sheetPlaces(project.buildUps[0]!, surroundingsOf(project))!;
}

describe("the sheet in every gap", () => {
  it("is right on the room side where rooms are heated, wrong outside the wool (common practice)", () => {
    const { own, places } = placesOf(wall("de-bilt", "{ heating: 20 °C, humidity: class 3 }"));
    expect(own).toBe(2);
    expect(places.map(({ at }) => at)).toEqual([null, 0, 1, 2, 3, 4]);
    expect(places.find(({ at }) => at === 1)).toMatchObject({ verdict: "dry", isDrawn: false });
    expect(places.find(({ at }) => at === 2)).toMatchObject({ judgement: "change it", isDrawn: true });
    expect(places.find(({ at }) => at === 2)!.words).toBe("between mineral wool slab and oriented strand board");
  });

  it("turns over in a hot humid climate with a cooled room (common practice)", () => {
    const { places } = placesOf(wall("melbourne-florida", "{ heating: 20 °C, cooling: 22 °C, humidity: 50 % }"));
    expect(places.find(({ at }) => at === 1)!.judgement).toBe("change it");
    expect(places.find(({ at }) => at === 3)!.verdict).toBe("dry");
  });

  it("gives what assessing the build-up with the sheet there gives, for every case of the practice corpus", () => {
    let drawn = 0;
    for (const file of caseFiles()) {
      const project = readCase(file);
      const surroundings = surroundingsOf(project);
      for (const buildUp of project.buildUps) {
        const found = sheetPlaces(buildUp, surroundings);
        const isDrawn = found?.places.find((place) => place.isDrawn);
        if (isDrawn === undefined) continue;
        drawn += 1;
        expect(isDrawn.judgement, file).toBe(assessBuildUp(buildUp, surroundings).judgement.word);
      }
    }
    expect(drawn).toBeGreaterThan(40);
  });

  it("asks nothing of a build-up without insulation or on the ground", () => {
    const bare = readCase("22-bare-steel-store.yaml");
    expect(sheetPlaces(bare.buildUps[0]!, surroundingsOf(bare))).toBeNull();
    const slab = readCase("42-slab-with-membrane.yaml");
    expect(sheetPlaces(slab.buildUps[0]!, surroundingsOf(slab))).toBeNull();
  });
});
