import { expect, test } from "vitest";
import { type BuildUpCalculation, calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";

/** A tight skin outside insulated air: closed, the month-end rule leaves water that drying inside the month does not. */
const calculate = (air: string): BuildUpCalculation => {
  const project = readProjectOrThrow(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 2 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: { name: thin membrane, sd: 0.5 m } }
      - { material: fibreboard 250, thickness: 40 mm }
      - { air: 25 mm, ${air} }
      - { material: mineral wool slab, thickness: 20 mm }
      - { material: { name: skin, sd: 20 m } }
`);
  return calculateBuildUp(project.buildUps[0]!, surroundingsOf(project).sites.reported);
};

test("of the two cases of a slightly ventilated air layer the one counts that is worse by drying inside the month", () => {
  const [closed, open, slight] = ["none", "well", "slight, ventilation area: 1000 mm2/m"].map((each) =>
    calculate(`ventilation: ${each}`),
  );
  const wetter = ({ governing }: BuildUpCalculation): number => governing.withinMonth.peak;
  expect([closed!, open!].map(({ governing }) => governing.year.verdict)).toEqual(["stays wet", "dries out"]);
  expect([closed!, open!].map(({ governing }) => governing.withinMonth.verdict)).toEqual(["dries out", "dries out"]);
  expect(wetter(open!)).toBeGreaterThan(wetter(closed!));
  expect(slight!.slightVentilationCase).toBe("open");
  expect(wetter(slight!)).toBe(wetter(open!));
});
