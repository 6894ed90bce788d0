import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dewPoint } from "../../packages/core/src/air/dew-point.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import type {
  JudgementWord,
  PlacementCell,
  PlacementOfBuildUp,
  PlacementPosition,
  PlacementRow,
  WarmSide,
} from "../../packages/core/src/result/types.ts";
import { gridInWords } from "../../packages/core/src/studies/placement/grid-in-words.ts";
import { placements } from "../../packages/core/src/studies/placement/positions.ts";
import { studyPlacement } from "../../packages/core/src/studies/placement.ts";
import { textOfCase } from "../practice/cases.ts";
import { air, buildUp } from "../published/build-up-by-hand.ts";
import { layerOf, studs } from "./build-ups.ts";
import { assessText } from "./corpus.ts";

const demo = readProjectOrThrow(readFileSync("shared/alder-row-pottery.yaml", "utf8"));
const study = studyPlacement(demo);
const gridOf = (name: string): PlacementOfBuildUp => study.buildUps.find((one) => one.name === name)!;

describe("positions", () => {
  const lining = layerOf("gypsum plasterboard", 12.5);
  const sheet = layerOf("vapour control layer sd 20 m");
  const wool = layerOf("mineral wool slab", 140, { framing: studs });
  const outer = [
    layerOf("oriented strand board", 11),
    air(0.025, { ventilation: "well" }),
    layerOf("softwood timber", 20),
  ];
  const order = (layers: Parameters<typeof buildUp>[0], position: PlacementPosition): string =>
    placements(buildUp(layers))!
      .placed.find((one) => one.position === position)!
      .buildUp.layers.map(({ name }) => name)
      .join(" | ");

  test("the project's own sheet is moved, everything else stays", () => {
    const layers = [lining, sheet, wool, ...outer];
    const after = "oriented strand board | 25 mm of air | softwood timber";
    expect(order(layers, "towards the room")).toBe(
      `gypsum plasterboard | vapour control layer sd 20 m | mineral wool slab | ${after}`,
    );
    expect(order(layers, "within the insulation")).toBe(
      `gypsum plasterboard | mineral wool slab | vapour control layer sd 20 m | mineral wool slab | ${after}`,
    );
    expect(order(layers, "towards the outer side")).toBe(
      `gypsum plasterboard | mineral wool slab | vapour control layer sd 20 m | ${after}`,
    );
    expect(order(layers, "none")).toBe(`gypsum plasterboard | mineral wool slab | ${after}`);
    expect(order(layers, "both faces")).toBe(
      `gypsum plasterboard | vapour control layer sd 20 m | mineral wool slab | vapour control layer sd 20 m | ${after}`,
    );
  });

  test("a polyethylene sheet is added where there is none of its own; a board is no sheet to move", () => {
    const { layer, added, placed } = placements(buildUp([lining, wool, ...outer]))!;
    expect([layer.name, layer.material.equivalentAirLayerThickness, added]).toEqual([
      "polyethylene sheet 0.15 mm",
      50,
      true,
    ]);
    expect(placed.filter(({ isDrawn }) => isDrawn).map(({ position }) => position)).toEqual(["none"]);
  });

  test("the position that the file draws is marked, wherever it is", () => {
    const drawn = (layers: Parameters<typeof buildUp>[0]): string[] =>
      placements(buildUp(layers))!
        .placed.filter(({ isDrawn }) => isDrawn)
        .map(({ position }) => position);
    expect(drawn([lining, sheet, wool, ...outer])).toEqual(["towards the room"]);
    expect(drawn([lining, wool, sheet, ...outer])).toEqual(["towards the outer side"]);
    expect(drawn([sheet, lining, wool, ...outer])).toEqual([]);
  });

  test("a sheet within splits the insulation in two equal halves; a faced board keeps each facing on its own side", () => {
    const board = layerOf("foil-faced PIR board", 100);
    const within = placements(buildUp([lining, board, ...outer]))!.placed[1]!;
    const [inner, , after] = within.buildUp.layers.slice(1, 4);
    expect([inner!.thickness, after!.thickness]).toEqual([0.05, 0.05]);
    expect(inner).toMatchObject({ facingInner: 1500, facingOuter: 0 });
    expect(after).toMatchObject({ facingInner: 0, facingOuter: 1500 });
    expect(within.at).toEqual([2]);
  });

  test("a membrane that must stay is not moved about", () => {
    const tanked = buildUp([lining, { ...sheet, purpose: "tanking" }, wool, ...outer]);
    expect(placements(tanked)!.added).toBe(true);
    expect(placements(buildUp([layerOf("concrete 2200", 200)]))).toBeNull();
  });
});

describe("the grid of the demo", () => {
  test("the project's own climate first, then a cold, a hot humid and a hot dry one", () => {
    expect(study.climates.map(({ name, kind }) => [name, kind])).toEqual([
      ["de-bilt", "the project's own"],
      ["oslo", "cold"],
      ["melbourne-florida", "hot and humid"],
      ["albuquerque-new-mexico", "hot and dry in summer"],
    ]);
  });

  test("every build-up has a grid of five positions by four climates, heated and cooled, or a reason", () => {
    for (const { leftOut, rows, positions, message } of study.buildUps) {
      if (leftOut !== null) {
        expect([rows, positions, message]).toEqual([[], [], null]);
        continue;
      }
      expect(rows.map(({ climate, use }) => `${climate} ${use}`)).toEqual(
        study.climates.flatMap(({ name }) => [`${name} heated`, `${name} cooled`]),
      );
      for (const { cells } of rows)
        expect(cells.map(({ position }) => position)).toEqual(positions.map(({ position }) => position));
    }
    expect(gridOf("Partition to the damp room").leftOut).toBe(
      "It lies between two heated rooms: outdoor air hardly reaches it.",
    );
  });

  test("the lesson: towards the room under heating, towards outdoors under cooling in damp heat", () => {
    const { rows } = gridOf("Studio wall");
    const word = (climate: string, use: string, position: PlacementPosition): JudgementWord =>
      cellIn(rows, climate, use, position).judgement;
    expect(word("oslo", "heated", "towards the room")).toBe("sound");
    expect(word("oslo", "heated", "towards the outer side")).toBe("change it");
    expect(word("melbourne-florida", "cooled", "towards the room")).toBe("change it");
    expect(word("melbourne-florida", "cooled", "towards the outer side")).toBe("sound");
    expect(rows.map(({ warmSide }) => warmSide)).toEqual([
      ...new Array(5).fill("inside"),
      "outside",
      "inside",
      "inside",
    ]);
  });

  test("wording never says inside where it means the warm side", () => {
    const words = JSON.stringify(study, (key, value) => (key === "warmSide" ? undefined : value));
    expect(words).not.toMatch(/\binside\b/i);
  });

  test("a cooled room is capped at 24 °C and held at 55 % where the project states neither", () => {
    const rows = gridOf("Studio wall").rows.filter(({ use }) => use === "cooled");
    for (const { temperatureRule, humidityRule } of rows) {
      expect(temperatureRule).toContain("cooled to at most 24 °C");
      expect(humidityRule).toBe("relative humidity 55 % all year");
    }
  });
});

describe("a cell is what assessing the same project file gives", () => {
  const text = textOfCase("01-stud-wall-as-taught.yaml");
  const own = "      - { material: polyethylene sheet 0.15 mm }\n";
  const wool = "      - { material: mineral wool slab, thickness: 140 mm, framing: studs }\n";
  const half = wool.replace("140 mm", "70 mm");
  const bare = text.replace(own, "");
  const grid = studyPlacement(readProjectOrThrow(text)).buildUps[0]!;
  const written: [PlacementPosition, string][] = [
    ["towards the room", text],
    ["within the insulation", bare.replace(wool, half + own + half)],
    ["towards the outer side", bare.replace(wool, wool + own)],
    ["none", bare],
    ["both faces", text.replace(wool, wool + own)],
  ];
  const places: [string, string, (file: string) => string][] = [
    ["de-bilt", "heated", (file) => file],
    ["oslo", "heated", (file) => file.replace("climate: de-bilt", "climate: oslo")],
    [
      "melbourne-florida",
      "cooled",
      (file) =>
        file
          .replace("climate: de-bilt", "climate: melbourne-florida")
          .replace(/indoor: .*/, "indoor: { heating: 20 °C, cooling: 24 °C, humidity: 55 % }"),
    ],
  ];
  test.each(
    places.flatMap(([climate, use, edit]) =>
      written.map(([position, file]) => ({ climate, use, position, file: edit(file) })),
    ),
  )("$climate, $use, $position", ({ climate, use, position, file }) => {
    expect(text).toContain(own);
    expect(text).toContain(wool);
    const cell = cellIn(grid.rows, climate, use, position);
    const result = assessText(file);
    expect(cell.judgement).toBe(result.judgement.word);
    expect(cell.verdict).toBe(result.moisture!.verdict);
    expect(cell.peak!.amount).toBeCloseTo(result.moisture!.peak.amount, 12);
    expect(cell.peak!.month).toBe(result.moisture!.peak.month);
    expect(cell.carriedOver).toBeCloseTo(result.moisture!.carriedOver, 12);
    if (position.startsWith("towards") && use === "heated") {
      expect(cell.dewPointMargin).toBeCloseTo(result.vapourLayer!.dewPointMargin!, 9);
      expect(cell.dewPointMarginMonth).toBe(result.vapourLayer!.dewPointMarginMonth);
    }
    expect(cell.dewPointMargin === null).toBe(position === "none");
  });
});

describe("the margin to the dew point is one rule", () => {
  const roof = `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Roof
    element: flat roof
    clear sky: true
    layers:
      - { material: oriented strand board, thickness: 18 mm }
      - { material: vapour control layer sd 100 m }
      - { material: expanded polystyrene, thickness: 60 mm }
      - { material: { name: roof sheet, sd: 300 m }, purpose: weather skin }
`;
  test("under a clear sky too: grid and vapour layer say the same, and it is that of the section's own temperatures", () => {
    const result = assessText(roof);
    const cell = cellIn(
      studyPlacement(readProjectOrThrow(roof)).buildUps[0]!.rows,
      "de-bilt",
      "heated",
      "towards the room",
    );
    const { dewPointMargin, dewPointMarginMonth } = result.vapourLayer!;
    expect(cell.dewPointMargin).toBeCloseTo(dewPointMargin!, 12);
    const month = result.moisture!.sections[0]!.months.find((one) => one.month === dewPointMarginMonth)!;
    const sheet = month.nodes.find(({ after }) => after === "vapour control layer sd 100 m")!;
    expect(dewPointMargin).toBeCloseTo(sheet.temperature - dewPoint(month.indoor.vapourPressure), 12);
    const underCloud = assessText(roof.replace("clear sky: true", "clear sky: false")).vapourLayer!;
    expect(dewPointMargin).toBeLessThan(underCloud.dewPointMargin!);
  });
});

describe("why a partition has no grid is told by the kind of its rooms", () => {
  test.each([
    ["indoor", "store", null],
    [
      "store",
      "indoor",
      "It begins in the store, which is unheated, and faces the indoor room: the grids heat and cool the room in which the layers begin. Written from the other side it has one.",
    ],
    ["indoor", "shop", "It lies between two heated rooms: outdoor air hardly reaches it."],
    [
      "indoor",
      "cold room",
      "It lies between two rooms with a temperature of their own: outdoor air hardly reaches it.",
    ],
  ])("%s to %s", (room, faces, reason) => {
    const project = readProjectOrThrow(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms:
  store: { unheated: true }
  shop: { heating: 18 °C, humidity: class 2 }
  cold room: { temperature: 5 °C, humidity: 80 % }
build-ups:
  - name: Partition
    element: partition
    room: ${room}
    faces: ${faces}
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 100 mm }
      - { material: gypsum plasterboard, thickness: 12.5 mm }
`);
    expect(studyPlacement(project, []).buildUps[0]!.leftOut).toBe(reason);
  });
});

describe("which climates and rooms", () => {
  test("`climates for place` takes the place of the three", () => {
    const text = textOfCase("01-stud-wall-as-taught.yaml").replace(
      "climate: de-bilt",
      "climate: de-bilt\nclimates for place: [rome, munich]",
    );
    expect(studyPlacement(readProjectOrThrow(text)).climates.map(({ name }) => name)).toEqual([
      "de-bilt",
      "rome",
      "munich",
    ]);
  });

  test("a climate is not run twice, and the project's severity is laid on the others", () => {
    const text = textOfCase("10-nordic-wall.yaml").replace(
      "climate: oslo",
      "climate: oslo\nseverity: one in ten colder",
    );
    const { climates, buildUps } = studyPlacement(readProjectOrThrow(text));
    expect(climates.map(({ name }) => name)).toEqual(["oslo", "melbourne-florida", "albuquerque-new-mexico"]);
    const mean = studyPlacement(readProjectOrThrow(textOfCase("10-nordic-wall.yaml"))).buildUps[0]!;
    const margin = (grid: PlacementOfBuildUp): number =>
      cellIn(grid.rows, "melbourne-florida", "heated", "towards the room").dewPointMargin!;
    expect(margin(buildUps[0]!)).not.toBeCloseTo(margin(mean), 2);
  });

  test("a stated cap and humidity are kept", () => {
    const { rows } = studyPlacement(readProjectOrThrow(textOfCase("06-cooled-shop-sheet-inside.yaml"))).buildUps[0]!;
    const cooled = rows.find(({ use }) => use === "cooled")!;
    expect(cooled.temperatureRule).toContain("to at most 22 °C");
    expect(cooled.humidityRule).toBe("relative humidity 50 % all year");
  });

  test("where the cap is never reached the cooled room is the heated one, and its row is left out with the reason", () => {
    const text = textOfCase("01-stud-wall-as-taught.yaml").replace(
      /indoor: .*/,
      "indoor: { heating: 20 °C, cooling: 25 °C, humidity: 50 % }",
    );
    const { rows, message } = studyPlacement(readProjectOrThrow(text)).buildUps[0]!;
    const leftOut = rows.filter((row) => row.leftOut !== null);
    expect(leftOut.map(({ climate, use }) => `${climate} ${use}`)).toEqual(["de-bilt cooled", "oslo cooled"]);
    for (const row of leftOut) {
      expect(row.cells).toEqual([]);
      expect(row.leftOut).toBe("The cooling never runs there: the row would repeat that of the room heated.");
    }
    expect(message).not.toContain("8 cases");
  });

  test("a room that cannot exist somewhere leaves its row empty, with the reason", () => {
    const text = textOfCase("01-stud-wall-as-taught.yaml")
      .replace(/indoor: .*/, "indoor: { temperature: 12 °C, humidity: class 1 }")
      .replace("climate: de-bilt", "climate: oslo\nseverity: -8 K");
    const { rows, message } = studyPlacement(readProjectOrThrow(text)).buildUps[0]!;
    const florida = rows.find(({ climate, use }) => climate === "melbourne-florida" && use === "heated")!;
    expect(florida).toMatchObject({
      cells: [],
      warmSide: null,
      leftOut: "The room as stated would be wetter than air can be.",
    });
    expect(message).not.toContain("melbourne-florida heated");
  });

  test("on the ground, and beyond the method, a build-up is left out with the reason", () => {
    const reasons = ["42-slab-with-membrane.yaml", "52-steam-room.yaml"].map(
      (file) => studyPlacement(readProjectOrThrow(textOfCase(file))).buildUps[0]!.leftOut,
    );
    expect(reasons[0]).toBe("It lies on the ground, whatever the climate: its membrane stays where it is.");
    expect(reasons[1]).toMatch(/^It is beyond this method: The room has short hot bursts of steam/);
  });
});

describe("the sentence is computed from the grid", () => {
  const positions: PlacementPosition[] = [
    "towards the room",
    "within the insulation",
    "towards the outer side",
    "none",
    "both faces",
  ];
  /** A row by one letter a cell: s sound, c conditions, x change it, b beyond. */
  const row = (climate: string, use: PlacementRow["use"], warmSide: WarmSide, letters: string): PlacementRow => ({
    climate,
    use,
    temperatureRule: "",
    humidityRule: "",
    warmSide,
    warmSideName: warmSide === "neither" ? null : warmSide === "inside" ? "indoor" : "outdoors",
    leftOut: null,
    cells: [...letters].map((letter, index) => ({
      position: positions[index]!,
      judgement: ({ s: "sound", c: "sound with conditions", x: "change it", b: "beyond this method" } as const)[
        letter as "s"
      ],
      verdict: null,
      peak: null,
      carriedOver: null,
      dewPointMargin: null,
      dewPointMarginMonth: null,
    })),
  });
  const says = (...rows: PlacementRow[]): string => gridInWords(rows, "outdoors");

  test.each([
    {
      rows: [
        row("a", "heated", "inside", "scxxx"),
        row("a", "cooled", "inside", "sxxxx"),
        row("b", "cooled", "outside", "xxssx"),
      ],
      sentence:
        "Where the warm side is the room (a) it may lie towards the room; where the warm side is outdoors (b cooled) it may lie towards outdoors, or be left out; no position suits all 3 cases.",
    },
    {
      rows: [row("a", "heated", "inside", "sxxcs"), row("b", "cooled", "outside", "xxssc")],
      sentence:
        "Where the warm side is the room (a heated) it may lie towards the room, and left out it is acceptable with conditions; where the warm side is outdoors (b cooled) it may lie towards outdoors, or be left out; in all 2 cases it is acceptable with conditions left out.",
    },
    {
      rows: [row("a", "heated", "inside", "ssssx"), row("a", "cooled", "outside", "sssss")],
      sentence:
        "Its position does not matter: in all 2 cases it may lie in any one position, or be left out, since other layers hold the vapour back.",
    },
    {
      rows: [row("a", "heated", "inside", "ssscs"), row("a", "cooled", "outside", "sssss")],
      sentence:
        "Its position does not matter: in all 2 cases it may lie towards the room, within the insulation or towards outdoors, and left out it is acceptable with conditions, since other layers hold the vapour back.",
    },
    {
      rows: [row("a", "heated", "inside", "sxxxs"), row("b", "cooled", "outside", "xxsxs")],
      sentence:
        "Where the warm side is the room (a heated) it may lie towards the room; where the warm side is outdoors (b cooled) it may lie towards outdoors; no position suits all 2 cases (on both faces no condensation is predicted, but water that gets between them can hardly dry).",
    },
    {
      rows: [row("a", "heated", "inside", "ccxxs")],
      sentence:
        "Where the warm side is the room (a heated) it is acceptable with conditions towards the room or within the insulation.",
    },
    {
      rows: [row("a", "heated", "inside", "xxxxs")],
      sentence:
        "Where the warm side is the room (a heated) no position holds (on both faces no condensation is predicted, but water that gets between them can hardly dry).",
    },
    {
      rows: [row("a", "heated", "inside", "sssss"), row("b", "heated", "outside", "xssss")],
      sentence:
        "Where the warm side is the room (a heated) it may lie in any one position, or be left out; where the warm side is outdoors (b heated) it may lie within the insulation or towards outdoors, or be left out; in all 2 cases it may lie within the insulation or towards outdoors, or be left out.",
    },
    {
      rows: [row("a", "heated", "inside", "xxxsx")],
      sentence: "Where the warm side is the room (a heated) it must be left out.",
    },
    {
      rows: [row("a", "heated", "inside", "xxbxx")],
      sentence: "Where the warm side is the room (a heated) no position holds.",
    },
    {
      rows: [
        row("a", "heated", "inside", "xxsxx"),
        row("b", "heated", "inside", "sxxxx"),
        row("c", "heated", "inside", "sxxxx"),
      ],
      sentence:
        "Where the warm side is the room (a heated, b heated, c heated) no position suits every case; the most frequent is towards the room (2 of 3).",
    },
    {
      rows: [row("a", "unheated", "neither", "xxxsx")],
      sentence: "Where nothing drives vapour (a unheated) it must be left out.",
    },
    { rows: [], sentence: "The room as stated cannot exist in any of these climates." },
  ])("$sentence", ({ rows, sentence }) => {
    expect(says(...rows)).toBe(sentence);
  });
});

function cellIn(
  rows: readonly PlacementRow[],
  climate: string,
  use: string,
  position: PlacementPosition,
): PlacementCell {
  const found = rows.find((row) => row.climate === climate && row.use === use)!;
  return found.cells.find((cell) => cell.position === position)!;
}
