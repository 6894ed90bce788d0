import { assessProject, readProjectOrThrow } from "@warmside/core";
import { describe, expect, test } from "vitest";
import { changed, problemsOf, projectOf, SMALL_PROJECT } from "./project-texts.ts";

/** What a builder overlooks in a file that has no problem: told by a note, and never answered as if it were meant. */
const codesOf = (text: string): string[] => projectOf(text).oddities.map(({ code }) => code);

describe("layers written from outside", () => {
  const lines = SMALL_PROJECT.split("\n");
  const first = lines.findIndex((line) => line.startsWith("      - "));
  const layers = lines.slice(first).filter((line) => line.startsWith("      - "));
  const turned = [...lines.slice(0, first), ...layers.toReversed(), ""].join("\n");

  test("are noted, refused, and given no remedy", () => {
    expect(codesOf(turned)).toContain("layers-from-outside");
    const [wall] = assessProject(readProjectOrThrow(turned)).buildUps;
    const [reason] = wall!.judgement.reasons;
    expect(wall!.judgement.word).toBe("change it");
    expect(wall!.findings.find(({ id }) => id === reason)).toMatchObject({
      code: "insulation-beyond-ventilation",
      severity: "fault",
      advice: expect.stringContaining("reverse the list"),
    });
    expect(wall!.remedies).toEqual([]);
    expect(wall!.remedySearch).toContain("written from outside");
  });

  test("from the room outwards they are not", () => {
    expect(codesOf(SMALL_PROJECT)).toEqual([]);
  });

  test("nor with insulation on both sides of the air, which is a condition", () => {
    const both = changed(
      "      - { material: softwood timber, thickness: 20 mm }",
      "      - { material: wood fibre insulation board, thickness: 60 mm }",
    );
    expect(codesOf(both)).toEqual([]);
    const [wall] = assessProject(readProjectOrThrow(both)).buildUps;
    expect(wall!.findings.find(({ code }) => code === "insulation-beyond-ventilation")?.severity).toBe("caution");
  });
});

test("framing that no layer has is noted, with what to write", () => {
  const text = changed("thickness: 140 mm, framing: studs", "thickness: 140 mm");
  const [note] = projectOf(text).oddities;
  expect(note).toMatchObject({ code: "framing-unused", path: "build-ups[0].framings.studs" });
  expect(note!.message).toContain("write `framing: studs`");
});

describe("a space next door is a resistance or a room with air of its own", () => {
  const store = (keys: string): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms: { store: { ${keys} } }
build-ups:
  - name: Store wall
    element: partition
    faces: store
    space: { area: 24 m2, external: [ { area: 30 m2, transmittance: 0.5 W/(m2 K) } ], air changes: 1 /h, volume: 60 m3 }
    layers: [ { material: plywood, thickness: 12 mm } ]
`;
  test("unheated: read", () => expect(problemsOf(store("unheated: true"))).toEqual([]));
  test("heated: refused", () => {
    const [problem, ...others] = problemsOf(store("heating: 15 °C, humidity: class 1"));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "space-of-own-air", path: "build-ups[0].space" });
  });
});

describe("the margin on humidity classes", () => {
  const withMargin = (humidity: string) =>
    changed("climate: de-bilt", "climate: de-bilt\nhumidity margin: 1.10").replace("humidity: class 3", humidity);
  test("stands in the room's rule", () => {
    const [room] = assessProject(readProjectOrThrow(withMargin("humidity: class 3"))).rooms;
    expect(room!.humidityRule).toContain("that excess times 1.1");
  });
  test("is noted where no room has a class", () => {
    const without = withMargin("humidity: 50 %");
    expect(codesOf(without)).toEqual(["without-effect"]);
  });
});
