import { describe, expect, test } from "vitest";
import { assessProject } from "../../packages/core/src/assess-project.ts";
import type { BuildUp, HumidityRule, Layer, Project } from "../../packages/core/src/project/types.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { changesOf } from "../../packages/core/src/remedies/kinds.ts";
import type { ChangeStep, Situation } from "../../packages/core/src/remedies/types.ts";
import { leavesAloneWhatMustStay } from "../../packages/core/src/remedies/what-must-stay.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { SHIPPED_CLIMATES } from "../../packages/core/src/shipped-tables.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { layerSd } from "../../packages/core/src/vapour/layer-sd.ts";
import { buildUp } from "../published/build-up-by-hand.ts";
import { heatedRoom, layerOf, studs } from "./build-ups.ts";

/**
 * Changes that calculate well and harm the building (METHOD.md, Remedies): none is tried in any size, by any kind of
 * change, and no advice asks for it.
 */
const HUMID: HumidityRule = { kind: "class", class: 3 };

function situation(built: BuildUp, warmSide: Situation["warmSide"] = "room"): Situation {
  const rooms: Project["rooms"] = new Map([["indoor", heatedRoom(HUMID)]]);
  const climate = SHIPPED_CLIMATES.heathrow!;
  return { buildUp: built, surroundings: surroundingsOf({ climate, rooms, humidityMargin: 1 }), warmSide };
}

/** The whole answer, remedies included. */
const answerTo = (text: string): BuildUpResult => assessProject(readProjectOrThrow(text)).buildUps[0]!;
const stepsOf = (one: Situation): ChangeStep[] => changesOf(one).flatMap(({ steps }) => steps);
const vapourSheets = ({ layers }: BuildUp): Layer[] =>
  layers.filter((layer) => layer.type === "sheet" && layerSd(layer, "dry") >= 0.5);
const adviceOf = ({ findings, judgement, remedies }: BuildUpResult): string =>
  [
    ...findings.map(({ advice }) => advice ?? ""),
    ...judgement.conditions,
    ...remedies.map(({ change }) => change),
  ].join("\n");

const lining = layerOf("gypsum plasterboard", 12.5);
const wool = layerOf("mineral wool slab", 90, { framing: studs });
const brick = layerOf("facing brick", 215);
const steel = layerOf("steel", 1);
const sprayed = layerOf("polyurethane foam sprayed closed cell", 25);

describe("a vapour layer on masonry or logs that rain may wet", () => {
  const head = (rain: string): string => `project: Alder Row kiln room
climate: heathrow
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Lined
    element: wall
${rain}    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 90 mm, framing: studs }
`;
  const brickwork = "      - { material: facing brick, thickness: 215 mm }\n";
  test.each([null, "yes"] as const)("wetted by rain %s: no size of any change adds one", (wettedByRain) => {
    for (const outer of [brick, layerOf("softwood timber", 80)]) {
      const built = buildUp([lining, wool, outer], { wettedByRain });
      for (const { buildUp: after } of stepsOf(situation(built)))
        if (after.layers.at(-1) === outer) expect(vapourSheets(after)).toEqual([]);
    }
  });
  test("a sheet that is there is not moved to the room side or made tighter, whatever would do it", () => {
    const built = buildUp([lining, layerOf("vapour control layer sd 2 m"), wool, brick]);
    const tighter = buildUp([lining, layerOf("polyethylene sheet 0.15 mm"), wool, brick]);
    expect(leavesAloneWhatMustStay(situation(built))(tighter)).toBe(false);
    const kept = { ...built, wettedByRain: "sheltered" as const };
    expect(leavesAloneWhatMustStay(situation(kept))({ ...tighter, wettedByRain: "sheltered" })).toBe(true);
  });
  test.each(["", "    wetted by rain: true\n"])("nor does any advice ask for one (%j)", (rain) => {
    const answer = answerTo(head(rain) + brickwork);
    expect(answer.findings.map(({ code }) => code)).toContain("no-vapour-layer-warm-side");
    expect(answer.findings.map(({ code }) => code)).toContain("wood-moisture");
    expect(adviceOf(answer)).not.toMatch(/put a vapour layer|tighter vapour layer/i);
    expect(adviceOf(answer)).toContain("would hold the rain in");
  });
  test("behind a drained, ventilated gap it may be asked for as in any wall", () => {
    const veneer = answerTo(`${head("")}      - { material: oriented strand board, thickness: 11 mm }
      - { air: 40 mm, ventilation: well }\n${brickwork}`);
    expect(adviceOf(veneer)).toContain("Put a vapour layer on the warm side");
  });
});

describe("anything between bonded foam and its skin", () => {
  const boarded = { ...layerOf("polyurethane foam unfaced", 30), bonded: true };
  test.each([
    ["wall", undefined],
    ["pitched roof", 15],
    ["flat roof", 2],
  ] as const)("%s: no air, no board and no sheet, and another skin neither", (element, pitch) => {
    for (const foam of [sprayed, boarded]) {
      const built = buildUp([lining, foam, steel], pitch === undefined ? { element } : { element, pitch });
      for (const { buildUp: after } of stepsOf(situation(built))) {
        const at = after.layers.indexOf(foam);
        if (at !== -1) expect(after.layers[at + 1]).toBe(steel);
      }
    }
  });
  test("the rule itself: a board between them is refused", () => {
    const built = buildUp([sprayed, steel], { element: "pitched roof", pitch: 15 });
    const apart = { ...built, layers: [sprayed, layerOf("polyurethane foam unfaced", 50), steel] };
    expect(leavesAloneWhatMustStay(situation(built))(apart)).toBe(false);
  });
});

describe("ventilated air over the insulation of a warm roof", () => {
  const deck = layerOf("plywood", 18);
  const skin = layerOf("bitumen sheet", 5);
  const insulations = [
    layerOf("mineral wool roof board", 150),
    layerOf("PIR core", 120),
    layerOf("wood fibre insulation board", 160),
  ];
  test.each(["flat roof", "pitched roof"] as const)("%s: in no size of any change", (element) => {
    for (const insulation of insulations)
      for (const overlay of [[], [layerOf("plywood", 9)]]) {
        const built = buildUp([lining, deck, insulation, ...overlay, skin], {
          element,
          pitch: element === "flat roof" ? 2 : 30,
        });
        for (const { buildUp: after } of stepsOf(situation(built)))
          expect(after.layers.filter((layer) => layer.type === "air")).toEqual([]);
      }
  });
});

describe("a floor over a void whose water comes from the ground", () => {
  const floor = (layers: Layer[]): BuildUp => buildUp(layers, { element: "floor", faces: "void" });
  const boards = layerOf("particleboard", 22);
  test("no sheet is put between insulation and void, added or moved", () => {
    const open = floor([boards, wool]);
    const above = floor([boards, layerOf("polyethylene sheet 0.15 mm"), wool, layerOf("oriented strand board", 11)]);
    for (const one of [open, above])
      for (const { buildUp: after } of stepsOf(situation(one, "far side"))) {
        const last = after.layers.findLastIndex((layer) => layer.name === wool.name);
        expect(vapourSheets({ ...after, layers: after.layers.slice(last + 1) })).toEqual([]);
      }
  });
  test.each([90, 97, 100])(
    "void at %i %: the advice is to cover its ground, not a tighter layer nor a drier room",
    (percent) => {
      for (const sheathing of ["", "      - { material: oriented strand board, thickness: 11 mm }\n"]) {
        const answer = answerTo(`project: Alder Row shop
climate: heathrow
indoor: { heating: 20 °C, humidity: class 2 }
build-ups:
  - name: Floor over a damp void
    element: floor
    faces: void
    void: { area: 50 m2, perimeter: 30 m, temperature: 12 °C, humidity: ${percent} % }
    framings:
      joists: { material: softwood timber, width: 45 mm, spacing: 400 mm }
    layers:
      - { material: particleboard, thickness: 22 mm }
      - { material: mineral wool slab, thickness: 150 mm, framing: joists }
${sheathing}`);
        const blamed = answer.findings.filter(({ code }) => code === "wood-moisture" || code === "mould-at-interface");
        expect(adviceOf(answer)).not.toMatch(/tighter|vapour (control )?layer|room no damper/i);
        for (const { severity, advice } of blamed)
          if (severity !== "note") expect(advice).toMatch(/ground of the void/);
      }
    },
  );
});

describe("a partition whose own room is damp enough for mould", () => {
  const between = (store: string): BuildUpResult =>
    answerTo(`project: Alder Row drying room
climate: de-bilt
rooms:
  drying room: { temperature: 16 °C, humidity: 85 % }
  store: ${store}
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Drying room partition
    element: partition
    room: drying room
    faces: store
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: acoustic mineral wool, thickness: 70 mm, framing: studs }
      - { material: plywood, thickness: 12 mm }
`);
  test.each(["{ temperature: 20 °C, humidity: 50 % }", "{ temperature: 4 °C, humidity: 70 % }"])(
    "beside %s: the room is named, and no sheet is offered",
    (store) => {
      const answer = between(store);
      expect(answer.findings.map(({ code }) => code)).toContain("room-too-damp");
      for (const { does } of answer.remedies)
        for (const { kind } of does) expect(["sheet added", "sheet exchanged", "sheet moved"]).not.toContain(kind);
      expect(adviceOf(answer)).not.toMatch(/(tighter|put a) vapour layer/i);
    },
  );
});

describe("insulation outside a roof whose only layer is its skin", () => {
  test("lies under a covering of its own", () => {
    for (const does of stepsOf(situation(buildUp([steel], { element: "pitched roof", pitch: 15 }))).flatMap(
      (step) => step.does,
    ))
      if (does.kind === "insulated outside") expect(does.protection).toBe("roof covering");
  });
});
