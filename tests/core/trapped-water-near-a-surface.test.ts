import { assessProject } from "@warmside/core";
import { expect, test } from "vitest";
import { projectOf } from "./project-texts.ts";

/** Wet boards behind a very tight layer; with gaps nearly all of their sd is gone, and most of what is left is a facing's. */
const text = `project: near
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    trapped water: { layer: wet, amount: 1 kg/m2 }
    layers:
      - { material: { name: tight, conductivity: 0.02 W/(m K), vapour resistance factor: 900000 }, thickness: 140 mm, purpose: vapour layer }
      - { name: wet, material: heat-treated softwood, thickness: 87 mm, facing sd outer: 65 m, GAPS }
      - { material: calcium silicate insulating board, thickness: 190 mm }
      - { material: plywood, thickness: 9 mm }
`;

const changesFor = (gaps: string) =>
  assessProject(projectOf(text.replace(", GAPS", gaps))).buildUps[0]!.trappedWater[0]!.variants.map(
    ({ by }) => by.kind,
  );

test("a change that would bring the water to the surface itself is not offered; the others are", () => {
  expect(changesFor("").toSorted()).toEqual(["no vapour layer", "vapour layer more open"]);
  expect(changesFor(", gaps: { width: 16 mm, spacing: 2.1 m }")).toEqual(["vapour layer more open"]);
});
