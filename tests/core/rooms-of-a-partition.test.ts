import { describe, expect, test } from "vitest";
import type { BuildUpResult, Finding } from "../../packages/core/src/result/types.ts";
import { assessText } from "./corpus.ts";

/** A build-up between two of the studio's rooms. */
const between = (room: string, faces: string, rooms: string, layers = WOOL_AND_BOARDS): BuildUpResult =>
  assessText(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms:
  store: { unheated: true }
  ${rooms}
build-ups:
  - name: Partition
    element: partition
    room: ${room}
    faces: ${faces}
    layers:
${layers}`);
const WOOL_AND_BOARDS = `      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 100 mm }
      - { material: gypsum plasterboard, thickness: 12.5 mm }
`;
const findingOf = ({ findings }: BuildUpResult, code: string): Finding | undefined =>
  findings.find((finding) => finding.code === code);

describe("a room too wet for the method counts from both sides of its partition, and is named", () => {
  test.each([
    ["bursts-of-steam", "kiln room: { heating: 20 °C, humidity: class 3, bursts of steam: true }", "The kiln room has"],
    ["wetter-than-class-5", "kiln room: { heating: 26 °C, humidity: class 5, pool: true }", "The kiln room has a pool"],
    [
      "wetter-than-class-5",
      "kiln room: { heating: 26 °C, humidity: 75 % }",
      "In the coldest month the kiln room holds",
    ],
  ])("%s: %s", (code, rooms, words) => {
    for (const result of [between("kiln room", "indoor", rooms), between("indoor", "kiln room", rooms)]) {
      expect(result.judgement.word).toBe("beyond this method");
      expect(findingOf(result, code)!.message).toContain(words);
      expect(result.moisture).toBeNull();
    }
  });

  test("the studio itself is named beside a wet one when it is the wet one", () => {
    const result = assessText(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3, bursts of steam: true }
rooms: { store: { unheated: true } }
build-ups:
  - name: Partition
    element: partition
    room: store
    faces: indoor
    layers:
${WOOL_AND_BOARDS}`);
    expect(findingOf(result, "bursts-of-steam")!.message).toContain("The indoor room has");
  });

  test("two ordinary rooms are within the method", () => {
    expect(between("indoor", "kiln room", "kiln room: { heating: 18 °C, humidity: class 4 }").beyond).toBeNull();
  });
});

describe("a metal skin sees the clear sky only where it faces outdoors", () => {
  const steel = `      - { material: mineral wool slab, thickness: 100 mm }
      - { material: steel, thickness: 1 mm }
`;
  test("steel towards another room is within the method; towards outdoors, over an unheated store, it is not", () => {
    expect(findingOf(between("store", "indoor", "", steel), "unheated-metal-skin")).toBeUndefined();
    expect(findingOf(between("store", "outdoors", "", steel), "unheated-metal-skin")).toBeDefined();
  });
});

describe("a room is cooled when a month is warmer outdoors than its cap", () => {
  const wall = (room: string, more = ""): BuildUpResult =>
    assessText(`project: Alder Row pottery studio
climate: de-bilt
indoor: ${room}
build-ups:
  - name: Wall
    element: wall
    ${more}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: breather membrane }
`);
  const CAPPED = "{ heating: 20 °C, cooling: 26 °C, humidity: class 3 }";
  const COOLED = "{ heating: 15 °C, cooling: 16 °C, humidity: class 3 }";
  const UNCAPPED = "{ heating: 20 °C, humidity: class 3 }";

  test("a cap that no month reaches changes neither judgement nor findings", () => {
    const [capped, uncapped] = [wall(CAPPED), wall(UNCAPPED)];
    expect(capped!.judgement).toEqual(uncapped!.judgement);
    expect(capped!.findings).toEqual(uncapped!.findings);
  });

  test("a cap that cools asks for a humidity of its own", () => {
    expect(findingOf(wall(COOLED), "humidity-needs-cooling-statement")).toBeDefined();
  });

  test("nor does such a cap hide a room wetter than class 5, or let the sun drive rain into it", () => {
    const wet = wall("{ heating: 26 °C, cooling: 30 °C, humidity: 75 % }");
    expect(findingOf(wet, "wetter-than-class-5")).toBeDefined();
    expect(findingOf(wall(CAPPED, "wetted by rain: true"), "sun-driven-moisture")).toBeUndefined();
  });
});

describe("a humidity margin makes no class wetter than itself", () => {
  const wall = (margin: string, humidity: string, more = ""): BuildUpResult =>
    assessText(`project: Alder Row pottery studio
climate: de-bilt
humidity margin: ${margin}
indoor: { heating: 24 °C, humidity: ${humidity} }
build-ups:
  - name: Wall
    element: wall
    ${more}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: vapour control layer sd 100 m }
      - { material: mineral wool slab, thickness: 200 mm }
      - { material: breather membrane }
`);

  test.each(["1.00", "1.10", "1.20"])("class 5 with a margin of %s is within the method", (margin) => {
    expect(findingOf(wall(margin, "class 5"), "wetter-than-class-5")).toBeUndefined();
  });

  test("class 3 is one the two-season check is meant for, class 4 is none", () => {
    const reason = (humidity: string): string | null =>
      wall("1.20", humidity, "two-season check: true").twoSeasonCheck!.reason;
    expect(reason("class 3")).toBeNull();
    expect(reason("class 4")).toContain("up to humidity class 3");
  });
});
