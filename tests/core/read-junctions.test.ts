import { describe, expect, it } from "vitest";
import { projectOf } from "./project-texts.ts";

const BUILD_UPS = `
  - { name: Studio wall, element: wall, layers: [ { material: plywood, thickness: 18 mm } ] }
  - { name: Workshop wall, element: wall, layers: [ { material: plywood, thickness: 18 mm } ] }
  - { name: Raised floor, element: floor, faces: void, void: { area: 80 m2, perimeter: 36 m }, layers: [ { material: plywood, thickness: 18 mm } ] }
  - { name: Cold flat roof, element: flat roof, layers: [ { material: plywood, thickness: 18 mm } ] }`;

const fileWith = (junction: string): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:${BUILD_UPS}
junctions: [ { name: One, ${junction} } ]
`;

describe("junctions of a project", () => {
  it.each([
    ["outer corner: [Studio wall, workshop wall], posts: 3", { kind: "outer corner", walls: ["studio-wall", "workshop-wall"], posts: 3 }],
    ["outer corner: Studio wall, posts: solid", { kind: "outer corner", walls: ["studio-wall", "studio-wall"], posts: "solid" }],
    ["outer corner: [Studio wall]", { kind: "outer corner", walls: ["studio-wall", "studio-wall"], posts: null }],
    ["floor edge: [Studio wall, Raised floor], rim: 45 mm, plates: 1", { kind: "floor edge", wall: "studio-wall", floor: "raised-floor", rim: 0.045, plates: 1 }],
    ["floor edge: [Raised floor, Studio wall]", { kind: "floor edge", wall: "studio-wall", floor: "raised-floor", rim: null, plates: null }],
    ["roof edge: [Studio wall, Cold flat roof], blocking: 45 mm", { kind: "roof edge", wall: "studio-wall", roof: "cold-flat-roof", blocking: 0.045, plates: null }],
    ["window side: Studio wall, frame: { width: 70 mm, depth: 68 mm }", {
      kind: "window side", wall: "studio-wall", trimmers: null,
      frame: { width: 0.07, depth: 0.068, conductivity: null, setBack: null },
    }],
    ["window side: Studio wall, trimmers: 2, frame: { width: 70 mm, depth: 68 mm, conductivity: 0.13 W/(m K), set back: 30 mm }", {
      kind: "window side", wall: "studio-wall", trimmers: 2,
      frame: { width: 0.07, depth: 0.068, conductivity: 0.13, setBack: 0.03 },
    }],
  ])("%s", (written, junction) => {
    expect(projectOf(fileWith(written)).junctions).toEqual([{ name: "One", ...junction }]);
  }); // biome-ignore format: a row a junction

  it("are none where the file has none", () => {
    expect(projectOf(fileWith("outer corner: Studio wall").replace(/junctions.*\n/, "")).junctions).toEqual([]);
  });
});

describe("framing of steel channels, and layers that framing interrupts", () => {
  const wall = (framing: string, layer: string): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Studio wall
    element: wall
    framings: { studs: { ${framing} } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: foil-faced PIR board, thickness: 90 mm, framing: studs${layer} }
`;
  const CHANNEL = "material: steel, channel: { sheet: 1.2 mm, flange: 50 mm, lip: 12 mm }, spacing: 600 mm";

  it("are told in SI; the web's share of the area is that of its sheet", () => {
    const [buildUp] = projectOf(
      wall(CHANNEL, ", gap beside framing: 2 mm, taped: onto the framing 20 mm, bonded: true"),
    ).buildUps;
    expect(buildUp!.layers[1]).toMatchObject({
      gapBesideFraming: 0.002, taped: { kind: "onto the framing", reach: 0.02 }, bonded: true,
      framing: { share: 0.002, origin: { kind: "channel", spacing: 0.6, channel: { sheet: 0.0012, flange: 0.05, lip: 0.012 } } },
    }); // biome-ignore format: one layer
  });

  it.each([
    ["taped: yes", { taped: { kind: "over the framing" } }],
    ["taped: true", { taped: { kind: "over the framing" } }],
    ["taped: no", { taped: { kind: "no" } }],
    ["gap beside framing: 0 mm", { gapBesideFraming: 0, taped: null, bonded: false }],
  ])("%s", (written, told) => {
    const [buildUp] = projectOf(wall(CHANNEL, `, ${written}`)).buildUps;
    expect(buildUp!.layers[1]).toMatchObject(told);
  });
});

describe("rain", () => {
  it.each([
    ["true", "yes"], ["yes", "yes"], ["false", "no"], ["no", "no"], ["sheltered", "sheltered"],
  ])("wetted by rain: %s", (written, told) => {
    const text = fileWith("outer corner: Studio wall").replace("element: wall,", `element: wall, wetted by rain: ${written},`);
    expect(projectOf(text).buildUps[0]!.wettedByRain).toBe(told);
  }); // biome-ignore format: one line

  it("of the heating season is read in metres of water a second", () => {
    const text = `rain of the heating season: 2.5 mm/day\n${fileWith("outer corner: Studio wall")}`;
    expect(projectOf(text).rainOfHeatingSeason).toBeCloseTo(0.0025 / 86_400, 15);
  });
});
