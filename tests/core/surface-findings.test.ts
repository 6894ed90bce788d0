import { describe, expect, test } from "vitest";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import type { BuildUpResult, Finding, FindingCode } from "../../packages/core/src/result/types.ts";
import { assessText } from "./corpus.ts";

/** A partition between the studio and an unheated store, from either side, with or without more in it. */
const partition = (
  room: string,
  faces: string,
  more = "",
  rooms = "store: { unheated: true }",
): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms: { ${rooms} }
build-ups:
  - name: Partition
    element: partition
    room: ${room}
    faces: ${faces}
    ${more}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { air: 50 mm, ventilation: none }
      - { material: gypsum plasterboard, thickness: 12.5 mm }
`;
const findingOf = <Code extends FindingCode>({ findings }: BuildUpResult, code: Code): Finding<Code> | undefined =>
  findings.find(isFinding(code));

describe("a partition is judged the same from whichever side it is written", () => {
  const fromStudio = assessText(partition("indoor", "store"));
  const fromStore = assessText(partition("store", "indoor"));

  test("mould on the warm face is found from both, and the word is the same", () => {
    expect(fromStudio.judgement.word).toBe("change it");
    expect(fromStore.judgement.word).toBe("change it");
    const own = findingOf(fromStudio, "surface-mould")!;
    const far = findingOf(fromStore, "surface-mould-other-face")!;
    expect(far.figures).toMatchObject({ required: own.figures.required, month: own.figures.month });
    expect(far.figures.factor).toBeCloseTo(own.figures.factor, 12);
    expect(far.message).toContain("Mould can grow on the face towards the indoor room");
  });

  test("drops on the warm face too", () => {
    const rooms = "store: { unheated: true }, washroom: { heating: 20 °C, humidity: class 5 }";
    const own = findingOf(assessText(partition("washroom", "store", "", rooms)), "surface-condensation")!;
    const far = findingOf(assessText(partition("store", "washroom", "", rooms)), "surface-condensation-other-face")!;
    expect(far.severity).toBe(own.severity);
    expect(far.message).toBe(own.message.replace("the room surface", "the face towards the washroom"));
  });

  test("and a room so damp that no construction meets it", () => {
    const rooms = "store: { unheated: true }, drying room: { heating: 20 °C, humidity: 85 % }";
    expect(
      findingOf(assessText(partition("drying room", "store", "", rooms)), "surface-needs-drier-air"),
    ).toBeDefined();
    const far = assessText(partition("store", "drying room", "", rooms));
    expect(findingOf(far, "surface-needs-drier-air-other-face")!.message).toContain("that room is so damp");
  });

  test("a junction that falls short is found from both", () => {
    const junction = "junction factors: [ { name: floor edge, factor: 0.4 } ]";
    const messages = [partition("indoor", "store", junction), partition("store", "indoor", junction)].map(
      (text) => findingOf(assessText(text), "junction-mould")?.message,
    );
    expect(messages[0]).toContain("floor edge");
    expect(messages[1]).toBe(messages[0]);
  });
});

describe("a slightly ventilated air layer: the worse of closed and well ventilated counts at the surface", () => {
  const wall = (air: string): BuildUpResult =>
    assessText(`project: Alder Row pottery studio
climate: oslo
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { air: 25 mm, ${air} }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: breather membrane }
`);
  const slight = wall("ventilation: slight, ventilation area: 1400 mm2/m");
  const open = wall("ventilation: well");

  test("air on the room side of the wool: as cold as well ventilated, mould and drops and all", () => {
    expect(slight.heat!.temperatureFactor).toBeCloseTo(open.heat!.temperatureFactor, 12);
    expect(slight.surface!.slightVentilationCase).toBe("open");
    for (const code of ["surface-mould", "surface-condensation"] as const)
      expect(findingOf(slight, code)?.message).toBe(findingOf(open, code)!.message);
    expect(slight.judgement.word).toBe("change it");
  });

  test("air outside the wool takes away what lies beyond it; the case is told", () => {
    const lined = (air: string): BuildUpResult =>
      assessText(`project: Alder Row pottery studio
climate: oslo
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: mineral wool slab, thickness: 140 mm }
      - { air: 25 mm, ${air} }
      - { material: softwood timber, thickness: 20 mm }
`);
    const [slight, closed, open] = ["slight, ventilation area: 600 mm2/m", "none", "well"].map((each) =>
      lined(`ventilation: ${each}`),
    );
    expect(closed!.heat!.temperatureFactor).toBeGreaterThan(open!.heat!.temperatureFactor);
    expect(slight!.heat!.temperatureFactor).toBeCloseTo(open!.heat!.temperatureFactor, 12);
    expect(slight!.surface!.slightVentilationCase).toBe("open");
  });

  test("without such a layer there is no case", () => {
    expect(open.surface!.slightVentilationCase).toBeNull();
  });
});
