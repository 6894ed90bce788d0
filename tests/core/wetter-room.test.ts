import { expect, test } from "vitest";
import { assessText } from "./corpus.ts";

const runsOf = (humidity: string, more = ""): string[] =>
  assessText(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: ${humidity} }
rooms: { damp room: { heating: 20 °C, humidity: class 5 }, store: { unheated: true } }
build-ups:
  - name: Wall
    element: wall
    ${more}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: vapour control layer sd 2 m }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, thickness: 11 mm }
`).sensitivity.map(({ name }) => name);

test.each(["class 5", "high by outdoor temperature"])(
  "%s: nothing wetter to take, and no run that says so",
  (humidity) => {
    expect(runsOf(humidity)).toContain("one in ten colder year");
    expect(runsOf(humidity)).not.toContain("wetter room");
  },
);

test.each([
  "class 4",
  "normal by outdoor temperature",
  "50 %",
  "{ production: 6 kg/day, volume: 90 m3, air changes: 0.6 /h }",
])("%s: the run is made", (humidity) => expect(runsOf(humidity)).toContain("wetter room"));

test("of a partition either room may be the wetter one", () => {
  expect(runsOf("class 3", "room: damp room\n    faces: indoor")).toContain("wetter room");
  expect(runsOf("class 3", "room: damp room\n    faces: store")).not.toContain("wetter room");
});
