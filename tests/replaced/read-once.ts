import { afterEach, describe, expect, it, vi } from "vitest";
import { projectSchema } from "../../packages/core/src/project/schema/schema-project.ts";
import { readProject } from "../../packages/core/src/read-project.ts";
import { seams } from "./seams.ts";

const WALL = `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Studio wall
    element: wall
    layers:
      - { material: plywood, thickness: 12 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: plywood, thickness: 9 mm }
`;

describe("a project file is read once", () => {
  afterEach(() => {
    seams.parsed = null;
  });

  it("laid on its schema one time, and each of its four quantities parsed one time", () => {
    const run = vi.spyOn(projectSchema._zod, "run");
    seams.parsed = [];
    expect(readProject(WALL).ok).toBe(true);
    expect(run).toHaveBeenCalledTimes(1);
    expect(seams.parsed).toEqual([
      ["20", "degC"],
      ["12", "mm"],
      ["140", "mm"],
      ["9", "mm"],
    ]);
    run.mockRestore();
  });

  it("also where a variant sets a key of a layer: the layer's own are not read again", () => {
    seams.parsed = [];
    const change = "{ set: mineral wool slab, thickness: 160 mm }";
    expect(readProject(`${WALL}    variants: [ { name: thicker, changes: [ ${change} ] } ]\n`).ok).toBe(true);
    expect(seams.parsed.map(([digits]) => digits)).toEqual(["20", "12", "140", "9", "160"]);
  });

  it("and what is sound is read beside what is not", () => {
    const reading = readProject(WALL.replace("12 mm", "12").replace("mineral wool slab", "minral wool slab"));
    expect(!reading.ok && reading.problems.map(({ code }) => code)).toEqual(["unit-missing", "material-unknown"]);
  });
});
