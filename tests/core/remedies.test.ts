import { describe, expect, test } from "vitest";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import type { BuildUp, HumidityRule, Layer, Project } from "../../packages/core/src/project/types.ts";
import { drierRoom } from "../../packages/core/src/remedies/drier-room.ts";
import { insertLayers, removeLayer, replaceLayer } from "../../packages/core/src/remedies/edit-layers.ts";
import { findRemedies } from "../../packages/core/src/remedies/find-remedies.ts";
import { insulateOutside, thicknesses } from "../../packages/core/src/remedies/insulate-outside.ts";
import { moveInsulation } from "../../packages/core/src/remedies/move-insulation.ts";
import { openColdSide } from "../../packages/core/src/remedies/open-cold-side.ts";
import { remedyInWords } from "../../packages/core/src/remedies/remedy-in-words.ts";
import { sheetOnWarmSide } from "../../packages/core/src/remedies/sheet-on-warm-side.ts";
import { leastSize } from "../../packages/core/src/remedies/size-change.ts";
import {
  BREATHER_SHEETS,
  DECK_SHEET,
  FOAM,
  OPEN_BOARDS,
  ROOF_WOOL,
  WARM_SIDE_SHEETS,
  WOOD_FIBRE,
} from "../../packages/core/src/remedies/stock.ts";
import { takeOutSheet } from "../../packages/core/src/remedies/take-out-sheet.ts";
import { type Change, EFFORT, type Situation } from "../../packages/core/src/remedies/types.ts";
import { ventilate } from "../../packages/core/src/remedies/ventilate.ts";
import { leavesAloneWhatMustStay, mustStay } from "../../packages/core/src/remedies/what-must-stay.ts";
import { SHIPPED_CLIMATES } from "../../packages/core/src/shipped-tables.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { air, buildUp, sheet } from "../published/build-up-by-hand.ts";
import { heatedRoom, layerOf, materialNamed, studs } from "./build-ups.ts";

const climate = SHIPPED_CLIMATES["de-bilt"]!;

function situation(
  built: BuildUp,
  warmSide: Situation["warmSide"] = "room",
  humidity: HumidityRule = { kind: "class", class: 3 },
): Situation {
  const rooms: Project["rooms"] = new Map([["indoor", heatedRoom(humidity)]]);
  return { buildUp: built, surroundings: surroundingsOf({ climate, rooms, humidityMargin: 1 }), warmSide };
}

const lining = layerOf("gypsum plasterboard", 12.5);
const polythene = layerOf("polyethylene sheet 0.15 mm");
const wool = layerOf("mineral wool slab", 140, { framing: studs });
const sheathing = layerOf("oriented strand board", 11);
const breather = layerOf("breather membrane");
const cavity = air(0.025, { ventilation: "well" });
const cladding = layerOf("softwood timber", 20);
const deck = layerOf("plywood", 18);
const skin = layerOf("bitumen sheet", 5, { purpose: "weather skin" });
const wall = (...layers: Layer[]): BuildUp => buildUp(layers);
const roof = (...layers: Layer[]): BuildUp => buildUp(layers, { element: "flat roof", pitch: 2 });
const namesAfter = (changed: BuildUp): string[] => changed.layers.map(({ name }) => name);

describe("what remedies are made of", () => {
  const stock = [...WARM_SIDE_SHEETS, ...BREATHER_SHEETS, ...OPEN_BOARDS, WOOD_FIBRE, FOAM, ROOF_WOOL, DECK_SHEET];
  test.each(stock)("$name is the row of that name in the material table", (material) => {
    const { source: _source, basis: _basis, spread: _spread, ...values } = material;
    expect(materialNamed(material.name)).toMatchObject(values);
  });
});

describe("layers put in and taken out", () => {
  const wet = buildUp([lining, wool, sheathing], {
    trappedWater: [{ layer: 1, amount: 1, reading: null, startMonth: 9 }],
  });
  test("stated water stays with its layer", () => {
    expect(insertLayers(wet, 1, polythene).trappedWater[0]!.layer).toBe(2);
    expect(insertLayers(wet, 2, polythene).trappedWater[0]!.layer).toBe(1);
    expect(removeLayer(wet, 0).trappedWater[0]!.layer).toBe(0);
    expect(replaceLayer(wet, 1, layerOf("cellulose blown", 140)).trappedWater[0]!.layer).toBe(1);
  });
  test("a layer that holds stated water cannot be taken out", () => {
    expect(() => removeLayer(wet, 1)).toThrow("layer 2 holds stated water");
  });
});

describe("the least size", () => {
  const from =
    (least: number): ((index: number) => boolean) =>
    (index) =>
      index >= least;
  test.each([
    [1, 0],
    [8, 5],
    [9, 0],
    [57, 13],
    [57, 56],
  ])("of %i sizes the one with index %i", (sizes, least) => {
    expect(leastSize(sizes, from(least))).toBe(least);
  });
  test.each([1, 8, 9, 57])("none of %i", (sizes) => {
    expect(leastSize(sizes, () => false)).toBeNull();
  });
  test("of 57 sizes at most seven are tried", () => {
    for (let least = 0; least < 57; least += 1) {
      let tried = 0;
      leastSize(57, (index) => {
        tried += 1;
        return index >= least;
      });
      expect(tried).toBeLessThanOrEqual(7);
    }
  });
});

describe("what must stay (METHOD.md, Remedies)", () => {
  const required = ["damp-proof membrane", "radon membrane", "gas membrane", "weather skin", "tanking"] as const;
  test.each(required)("a layer whose purpose is %s", (purpose) => {
    const built = wall(lining, wool, layerOf("polyethylene sheet 0.15 mm", 0, { purpose }));
    expect(mustStay(built, 2)).toBe(true);
    expect(leavesAloneWhatMustStay(situation(built))(removeLayer(built, 2))).toBe(false);
    expect(openColdSide(situation(built)).some(({ key }) => key.includes("polyethylene"))).toBe(false);
    expect(takeOutSheet(situation(built))).toEqual([]);
  });
  test("a metal skin, a roof covering and the tight layer over a roof that names no purpose", () => {
    expect(mustStay(wall(lining, wool, layerOf("painted steel sheet", 1)), 2)).toBe(true);
    expect(mustStay(roof(lining, wool, deck, layerOf("EPDM sheet", 1.2)), 3)).toBe(true);
    expect(mustStay(roof(lining, wool, deck, sheet(250)), 3)).toBe(true);
    expect(mustStay(roof(lining, wool, deck, sheet(250), cavity, cladding), 3)).toBe(false);
  });
  test("a sheet below a slab's insulation", () => {
    const slab = buildUp([layerOf("particleboard", 22), layerOf("expanded polystyrene", 100), polythene], {
      element: "floor",
      faces: "ground",
    });
    expect(mustStay(slab, 2)).toBe(true);
  });
  test("a vapour layer and an outer sheet of a wall do not", () => {
    const built = wall(lining, { ...polythene, purpose: "vapour layer" }, wool, sheathing, polythene);
    expect(mustStay(built, 1)).toBe(false);
    expect(mustStay(built, 4)).toBe(false);
  });
  test("no ventilation opening is closed, thinned or opened at one end only", () => {
    const before = situation(roof(lining, wool, { ...cavity, open: "both ends" }, deck, skin));
    const instead = (layer: Layer): boolean => leavesAloneWhatMustStay(before)(replaceLayer(before.buildUp, 2, layer));
    expect(instead({ ...cavity, open: "both ends", thickness: 0.05 })).toBe(true);
    expect(instead(air(0.025))).toBe(false);
    expect(instead({ ...cavity, open: "one end" })).toBe(false);
    expect(instead({ ...cavity, open: "both ends", thickness: 0.02 })).toBe(false);
    expect(instead({ ...cavity, open: "both ends", ventilation: "slight" })).toBe(false);
    expect(leavesAloneWhatMustStay(before)(removeLayer(before.buildUp, 2))).toBe(false);
  });
  test("no further tight layer on the cold side, whichever that is", () => {
    const built = wall(lining, polythene, wool, sheathing);
    expect(leavesAloneWhatMustStay(situation(built))(insertLayers(built, 3, sheet(9.9)))).toBe(true);
    expect(leavesAloneWhatMustStay(situation(built))(insertLayers(built, 3, sheet(10)))).toBe(false);
    expect(leavesAloneWhatMustStay(situation(built, "far side"))(insertLayers(built, 3, sheet(10)))).toBe(true);
    expect(leavesAloneWhatMustStay(situation(built, "far side"))(insertLayers(built, 1, sheet(10)))).toBe(false);
  });
});

describe("a vapour layer on the warm side", () => {
  test("lies before the insulation, or behind it where vapour comes from outdoors", () => {
    const [inwards] = sheetOnWarmSide(situation(wall(lining, wool, sheathing)));
    expect(namesAfter(inwards!.steps[0]!.buildUp).indexOf("vapour control layer sd 2 m")).toBe(1);
    const [outwards] = sheetOnWarmSide(situation(wall(lining, wool, sheathing), "far side"));
    expect(namesAfter(outwards!.steps[0]!.buildUp).indexOf("vapour control layer sd 2 m")).toBe(2);
  });
  test("takes the place of the sheet that is there, and is always tighter", () => {
    const [change] = sheetOnWarmSide(situation(wall(lining, layerOf("vapour control layer sd 10 m"), wool, sheathing)));
    expect(change!.steps.map(({ buildUp: after }) => after.layers[1]!.name)).toEqual([
      "vapour control layer sd 20 m",
      "polyethylene sheet 0.15 mm",
      "vapour control layer sd 100 m",
      "foil vapour control layer sd 1500 m",
    ]);
    expect(change!.steps.every(({ buildUp: after }) => after.layers.length === 4)).toBe(true);
  });
  test("is never put on masonry that rain may wet, where it would hold the rain in", () => {
    const brick = (wettedByRain: BuildUp["wettedByRain"]): BuildUp =>
      buildUp([lining, wool, layerOf("facing brick", 215)], { wettedByRain });
    for (const said of [null, "yes"] as const) expect(sheetOnWarmSide(situation(brick(said)))).toEqual([]);
    expect(sheetOnWarmSide(situation(brick("sheltered")))).toHaveLength(1);
  });
  test("is never the twin of a tight sheet that could be moved", () => {
    const [change] = sheetOnWarmSide(situation(wall(lining, wool, polythene, sheathing)));
    expect(change!.steps.map(({ buildUp: after }) => after.layers[1]!.name)).toEqual([
      "vapour control layer sd 2 m",
      "vapour control layer sd 5 m",
    ]);
  });
});

describe("insulation outside", () => {
  test("lies inside the breather membrane of a wall and under the skin of a roof", () => {
    const [ofWall] = insulateOutside(situation(wall(lining, polythene, wool, sheathing, breather, cavity, cladding)));
    expect(namesAfter(ofWall!.steps[0]!.buildUp).slice(3, 6)).toEqual([
      "oriented strand board",
      "wood fibre insulation board",
      "breather membrane",
    ]);
    const [ofRoof] = insulateOutside(
      situation(roof(lining, deck, polythene, layerOf("expanded polystyrene", 80), skin)),
    );
    expect(namesAfter(ofRoof!.steps[0]!.buildUp).slice(3)).toEqual([
      "expanded polystyrene",
      "mineral wool roof board",
      "bitumen sheet",
    ]);
  });
  test("comes in steps of 5 mm, from 20 mm to 300 mm, and foam only while its sd stays under 10 m", () => {
    expect(thicknesses(WOOD_FIBRE)).toHaveLength(57);
    expect(thicknesses(WOOD_FIBRE).slice(0, 3)).toEqual([0.02, 0.025, 0.03]);
    expect(Math.max(...thicknesses(FOAM))).toBe(0.165);
  });
});

describe("insulation moved out of the frame", () => {
  test("is not offered where it would close ventilated air", () => {
    expect(moveInsulation(situation(roof(lining, polythene, wool, deck, skin)))).not.toEqual([]);
    expect(moveInsulation(situation(roof(lining, polythene, wool, cavity, deck, skin)))).toEqual([]);
    expect(moveInsulation(situation(wall(lining, polythene, wool, sheathing, breather, cavity, cladding)))).not.toEqual(
      [],
    );
  });
  test("a cold roof becomes a warm one: still air, deck, vapour layer, insulation, skin", () => {
    const [change] = moveInsulation(situation(roof(lining, polythene, wool, deck, skin)));
    expect(namesAfter(change!.steps[0]!.buildUp)).toEqual([
      "gypsum plasterboard",
      "space left by mineral wool slab",
      "plywood",
      "vapour control layer sd 100 m",
      "mineral wool roof board",
      "bitumen sheet",
    ]);
  });
  test("a sheet that it takes out is told, also where another of that name stays", () => {
    const above = layerOf("polyethylene sheet 0.15 mm");
    for (const built of [roof(lining, polythene, wool, deck, skin), roof(lining, polythene, wool, deck, above, skin)]) {
      const [change] = moveInsulation(situation(built));
      expect(remedyInWords(change!.steps[0]!.does)).toContain("and polyethylene sheet 0.15 mm below it taken out");
    }
  });
});

describe("ventilated air", () => {
  test("in a flat roof it lies under the deck, 50 mm, over a breather membrane on open wool", () => {
    const [change] = ventilate(situation(roof(lining, polythene, wool, deck, skin)));
    expect(namesAfter(change!.steps[0]!.buildUp).slice(2, 5)).toEqual([
      "mineral wool slab",
      "breather membrane",
      "ventilated air 50 mm",
    ]);
  });
  test("not under a bare skin that nothing would carry", () => {
    expect(
      ventilate(situation(roof(layerOf("oriented strand board", 18), layerOf("mineral wool slab", 160), skin))),
    ).toEqual([]);
  });
  test("not between bonded foam and its skin, and not over the insulation of a warm roof", () => {
    const steel = layerOf("steel", 2);
    const sprayed = layerOf("polyurethane foam sprayed closed cell", 50);
    expect(ventilate(situation(wall(sprayed, steel)))).toEqual([]);
    const board = layerOf("polyurethane foam unfaced", 80);
    expect(ventilate(situation(wall(lining, { ...board, bonded: true }, steel)))).toEqual([]);
    expect(ventilate(situation(wall(lining, board, steel)))).toHaveLength(1);
    const overlay = layerOf("plywood", 9);
    expect(ventilate(situation(roof(deck, polythene, board, overlay, skin)))).toEqual([]);
  });
  test("not where vapour comes from outdoors", () => {
    expect(ventilate(situation(wall(lining, wool, polythene), "far side"))).toEqual([]);
  });
});

describe("what a change needs beside it is said in its words", () => {
  const wordsOf = (changes: Change[]): string[] => changes.map(({ steps }) => remedyInWords(steps[0]!.does));
  const bare = wall(lining, polythene, wool, layerOf("steel", 2));
  const over = ", behind ventilated cladding (not counted)";
  test("boards outside a wall: ventilated cladding, unless it has some", () => {
    expect(wordsOf(insulateOutside(situation(bare))).every((words) => words.endsWith(over))).toBe(true);
    expect(wordsOf(moveInsulation(situation(bare))).every((words) => words.includes(`outside steel${over}`))).toBe(
      true,
    );
    const clad = situation(wall(lining, polythene, wool, sheathing, breather, cavity, cladding));
    const none = wordsOf([...insulateOutside(clad), ...moveInsulation(clad)]);
    expect(none.filter((words) => words.includes("cladding"))).toEqual([]);
  });
  test("boards in a room: a lining for fire, where they burn", () => {
    const towardsRoom = situation(buildUp([lining, wool, lining], { element: "partition", faces: "indoor" }));
    const words = wordsOf(insulateOutside(towardsRoom));
    expect(words).toHaveLength(2);
    expect(words.every((text) => text.endsWith(", lined for fire (the lining not counted)"))).toBe(true);
  });
  test("none under the skin of a roof or below a floor", () => {
    const underSkin = insulateOutside(situation(roof(lining, deck, layerOf("expanded polystyrene", 80), skin)));
    const below = insulateOutside(situation(buildUp([deck, wool], { element: "floor" })));
    for (const words of wordsOf([...underSkin, ...below])) expect(words).not.toMatch(/cladding|lined/);
  });
  test("air between the frame and the board that braces it: other bracing", () => {
    const bracing = "(the frame then needs other bracing)";
    const plywood = layerOf("plywood", 12);
    expect(wordsOf(ventilate(situation(wall(lining, wool, plywood))))[0]).toContain(bracing);
    const apart = wall(lining, wool, breather, layerOf("oriented strand board", 11), sheet(5));
    expect(wordsOf(ventilate(situation(apart)))[0]).not.toContain(bracing);
    expect(wordsOf(ventilate(situation(roof(lining, polythene, wool, deck, skin))))[0]).not.toContain(bracing);
  });
});

describe("a drier room", () => {
  const rules = (humidity: HumidityRule): string[] =>
    drierRoom(situation(wall(lining, wool), "room", humidity)).flatMap(({ steps }) =>
      steps.map(({ does }) => remedyInWords(does)),
    );
  const only = "the room kept drier: ";
  const noBuildUp = " (a change of use or ventilation, not of the build-up; it must really happen)";
  test("one class down, never under 3 from 4 or 5, and never as dry as a store", () => {
    expect(rules({ kind: "class", class: 5 })).toEqual([`${only}humidity class 4 instead of 5${noBuildUp}`]);
    expect(rules({ kind: "class", class: 4 })).toEqual([`${only}humidity class 3 instead of 4${noBuildUp}`]);
    expect(rules({ kind: "class", class: 3 })).toEqual([`${only}humidity class 2 instead of 3${noBuildUp}`]);
    expect(rules({ kind: "class", class: 2 })).toEqual([]);
  });
  test("relative humidity down to 30 %, more air changed, normal use", () => {
    expect(rules({ kind: "months", relativeHumidity: new Array(12).fill(0.4) })).toEqual([
      `${only}relative humidity 5 points lower${noBuildUp}`,
      `${only}relative humidity 10 points lower${noBuildUp}`,
    ]);
    expect(rules({ kind: "months", relativeHumidity: new Array(12).fill(0.6) })).toHaveLength(2);
    expect(rules({ kind: "balance", production: 6 / 86_400, volume: 90, airChanges: 0.6 / 3600 })[0]).toBe(
      `${only}0.75 air changes an hour instead of 0.6${noBuildUp}`,
    );
    expect(rules({ kind: "by outdoor temperature", level: "high" })).toEqual([
      `${only}normal instead of high use${noBuildUp}`,
    ]);
  });
  test("comes after everything that is built, two changes together too", () => {
    const { drierRoom: last, ...built } = EFFORT;
    const [most, next] = Object.values(built).sort((a, b) => b - a);
    expect(last).toBeGreaterThan(most! + next!);
  });
  test("changes the room in the reported, the colder and the wetter year", () => {
    const before = situation(wall(lining, wool), "room", { kind: "class", class: 4 });
    const after = drierRoom(before)[0]!.steps[0]!.surroundings!;
    for (const year of ["reported", "colder", "wetter"] as const) {
      const drier = after.sites[year].rooms.get("indoor")!.vapourPressure[0]!;
      expect(drier).toBeLessThan(before.surroundings.sites[year].rooms.get("indoor")!.vapourPressure[0]!);
    }
  });
});

describe("how the search went", () => {
  const search = (built: BuildUp, humidity?: HumidityRule) => {
    const { surroundings } = situation(built, "room", humidity);
    return findRemedies(built, surroundings, assessBuildUp(built, surroundings));
  };
  test("nothing is looked for beyond the method, and it says why", () => {
    const brick = buildUp([lining, wool, layerOf("facing brick", 215)], { wettedByRain: "yes" });
    expect(search(brick)).toEqual({
      remedies: [],
      search:
        "No change was tried: the monthly method cannot judge this build-up, changed or not. Ask for a transient assessment to EN 15026. Insulate masonry outside, or inside only where rain is kept off: about R 1.0, bonded over its whole face, under plaster that is open to vapour.",
      calculations: 0,
    });
  });
  test("no remedy found is said so: wet fill between two layers that must stay", () => {
    const tanking = layerOf("polyethylene sheet 0.25 mm", 0, { purpose: "tanking" });
    const shut = buildUp([lining, tanking, layerOf("cellulose blown", 140, { framing: studs }), tanking, lining], {
      element: "partition",
      faces: "indoor",
      trappedWater: [{ layer: 2, amount: 2, reading: null, startMonth: 9 }],
    });
    const { remedies, search: words } = search(shut);
    expect(remedies).toEqual([]);
    expect(words).toMatch(
      /^No single change of the \d+ tried puts the build-up right, nor does any of the \d+ pairs of changes: it needs another design, or an adviser\.$/,
    );
  });
  test("insulation outside is looked for where only the target is missed: one remedy, the least", () => {
    const sound = wall(lining, polythene, wool, sheathing, breather, cavity, cladding);
    const { remedies, search: words } = search({ ...sound, target: 0.2 });
    expect(remedies).toHaveLength(1);
    expect(remedies[0]!.judgement).toBe("sound");
    expect(Math.round(remedies[0]!.transmittance * 100)).toBe(20);
    expect(words).toBe(
      "Only the target is missed. Of the 2 kinds of insulation tried outside, this is the least that meets the target of 0.20 W/(m²·K) without a worse judgement.",
    );
    const { remedies: none, search: tooMuch } = search({ ...sound, target: 0.05 });
    expect(none).toEqual([]);
    expect(tooMuch).toBe(
      "Only the target is missed. None of the 2 kinds of insulation tried outside meets the target of 0.05 W/(m²·K) without a worse judgement.",
    );
    expect(search({ ...sound, target: 0.4 })).toEqual({ remedies: [], search: null, calculations: 0 });
  });
  test("a floor on the ground that only misses its target gets its own insulation thicker, the least that does", () => {
    const slab = (foam: Layer): BuildUp =>
      buildUp([layerOf("plywood", 18), foam, layerOf("polyethylene sheet 0.25 mm", 0), layerOf("concrete 2400", 100)], {
        element: "floor",
        faces: "ground",
        target: 0.2,
        ground: {
          area: 24,
          perimeter: 20,
          wallThickness: 0.3,
          soil: "clay or silt",
          edgeInsulation: null,
          membrane: true,
        },
      });
    const { remedies, search: words } = search(slab(layerOf("extruded polystyrene", 52)));
    expect(remedies.map(({ change, changes, thicknessOutside }) => [change, changes, thicknessOutside])).toEqual([
      [
        "Extruded polystyrene 120 mm thick instead of 52 mm",
        [{ at: 1, to: null, change: { set: "extruded polystyrene", thickness: "120 mm" } }],
        expect.closeTo(0.068, 12),
      ],
    ]);
    expect(Math.round(remedies[0]!.transmittance * 100)).toBe(20);
    expect(words).toBe(
      "Only the target is missed. Of the thicknesses of its insulation, this is the least that meets the target of 0.20 W/(m²·K) without a worse judgement.",
    );
    const one = search({ ...slab(layerOf("extruded polystyrene", 115)) });
    expect(one.remedies[0]!.change).toBe("Extruded polystyrene 120 mm thick instead of 115 mm");
    expect(search({ ...slab(layerOf("extruded polystyrene", 50)), target: 0.05 }).search).toBe(
      "Only the target is missed. None of the thicknesses of its insulation up to 300 mm meets the target of 0.05 W/(m²·K) without a worse judgement.",
    );
    const between = layerOf("mineral wool slab", 100, { framing: studs });
    const kinds = search(slab(between)).remedies.flatMap(({ does }) => does.map(({ kind }) => kind));
    expect(kinds).not.toContain("insulation thickened");
  });
  test("nothing is looked for where nothing is wrong", () => {
    expect(search(wall(lining, polythene, wool, sheathing, breather, cavity, cladding))).toEqual({
      remedies: [],
      search: null,
      calculations: 0,
    });
  });
});
