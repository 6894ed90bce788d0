import { assessProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { takeOutSheet } from "../../../packages/core/src/remedies/take-out-sheet.ts";
import { projectOf } from "../../core/project-texts.ts";
import { buildUp, sheet, solid } from "../../published/build-up-by-hand.ts";

describe("a build-up of a single layer is assessed, and the layer is never taken out as a remedy", () => {
  it.each([
    "{ material: paper wallpaper, facing sd outer: 100 m }",
    "{ material: polyethylene sheet 0.15 mm }",
    "{ material: plywood, thickness: 12 mm }",
    "{ air: 25 mm, ventilation: none }",
    "{ air: 25 mm, ventilation: well }",
  ])("%s", (layer) => {
    for (const humidity of ["class 5", "30 %"]) {
      const text = `project: one layer
climate: oslo
indoor: { heating: 22 °C, humidity: ${humidity} }
build-ups:
  - { name: Wall, element: wall, layers: [ ${layer} ] }
`;
      const [result] = assessProject(projectOf(text)).buildUps;
      expect(result!.layers).toHaveLength(1);
      expect(result!.remedies.filter(({ change }) => change.endsWith("left out"))).toEqual([]);
    }
  });

  it("a sheet that is all there is stays; beside another layer it may go", () => {
    const outdoors = { outdoor: { temperature: [], vapourPressure: [] }, rooms: new Map() };
    const sites = { reported: outdoors, colder: outdoors, wetterRoom: outdoors };
    const tried = (layers: Parameters<typeof buildUp>[0]): number =>
      takeOutSheet({ buildUp: buildUp(layers), surroundings: { sites, rooms: new Map() }, warmSide: "room" } as never)
        .length;
    expect(tried([sheet(100)])).toBe(0);
    expect(tried([sheet(100), solid(0.1, 0.04)])).toBe(1);
  });
});
